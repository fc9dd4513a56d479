package org.rimefast.lang;

import java.util.List;
import java.util.Random;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Makes sentences in the forms that the language has. */
final class SentenceMaker {
  private static final Vocabulary VOCABULARY = Words.vocabulary();

  /** Terms that sentences may use; they stand before the rules. */
  static final String TERMS =
      """
      let damp room be a room where its humidity >= 50 %
      let deep box be a box where its depth > 2 in and its room is a damp room
      let held stud be a stud where it touches a deep box
      let sound metal part be a metal part where it is a held stud or it is a bracket

      """;

  private final Random random;

  /** True within "must not", where some words are refused as unclear. */
  private boolean denied;

  SentenceMaker(long seed) {
    this.random = new Random(seed);
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  String sentence() {
    Noun noun = any(VOCABULARY.nouns().stream().filter(n -> !relations(n).isEmpty()).toList());
    String guard =
        random.nextInt(3) == 0
            ? (random.nextBoolean() ? " if " : " unless ") + condition(noun, 1)
            : "";
    String where = random.nextInt(3) == 0 ? " where " + condition(noun, 1) : "";
    if (random.nextInt(4) == 0) {
      String comparison = comparison(noun, "its ", " must be at least ", 0);
      return "for each " + noun + where + ", " + comparison + guard;
    }
    String must = random.nextBoolean() ? " must " + predicate(noun, 1) : mustNot(noun);
    return (random.nextBoolean() ? "each " : "") + called(noun) + where + must + guard;
  }

  private String mustNot(Noun noun) {
    denied = true;
    String leaf = leaf(noun, 1);
    denied = false;
    return " must not " + leaf;
  }

  private List<Relation> relations(Noun noun) {
    return VOCABULARY.relations().stream().filter(r -> noun.isA(r.subject())).toList();
  }

  private String predicate(Noun noun, int depth) {
    if (depth > 2 || random.nextInt(3) > 0) {
      return leaf(noun, depth);
    }
    String word = random.nextBoolean() ? " and " : " or ";
    return "(" + predicate(noun, depth + 1) + word + leaf(noun, depth + 1) + ")";
  }

  private String leaf(Noun noun, int depth) {
    Relation relation = any(relations(noun));
    String filled = filled(relation.pattern(), relation.slots(), depth);
    return relation.form() == Relation.Form.BE ? "be " + filled : filled;
  }

  /** The noun, or a term of it. */
  private String called(Noun noun) {
    String term = terms(noun);
    return term.isEmpty() || random.nextBoolean() ? noun.singular() : term;
  }

  private static String terms(Noun noun) {
    return switch (noun.id()) {
      case "room" -> "damp room";
      case "box" -> "deep box";
      case "stud" -> "held stud";
      case "metal-part" -> "sound metal part";
      default -> "";
    };
  }

  private static String plural(String called) {
    return called.endsWith("box") ? called + "es" : called + "s";
  }

  /** Of what kind it is: a narrower one, or a term of its own noun. */
  private String kind(Noun noun) {
    String not = random.nextBoolean() ? "" : "not ";
    return noun.id().equals("metal-part") && random.nextBoolean()
        ? "it is " + not + any(List.of("a stud", "a bracket", "a held stud"))
        : "it is " + not + "a " + terms(noun);
  }

  private String condition(Noun noun, int depth) {
    if (!terms(noun).isEmpty() && random.nextInt(4) == 0) {
      return kind(noun);
    }
    if (noun.id().equals("box") && random.nextInt(5) == 0) {
      return random.nextBoolean()
          ? "distance to the nearest "
              + any(List.of("stud", "held stud"))
              + " >= "
              + random.nextInt(9)
              + " in"
          : any(List.of("number of", "total volume of", "largest depth of"))
              .transform(
                  words ->
                      words
                          + " boxes per room >= "
                          + (words.startsWith("n")
                              ? "3"
                              : words.startsWith("t") ? "2 in3" : "1 in"));
    }
    return switch (random.nextInt(depth > 2 ? 2 : 4)) {
      case 0 -> hasNumber(noun) ? comparison(noun, "", " >= ", depth) : third(noun, depth);
      case 1 -> third(noun, depth);
      case 2 ->
          "("
              + condition(noun, depth + 1)
              + (random.nextBoolean() ? " and " : " or ")
              + condition(noun, depth + 1)
              + ")";
      default -> "not (" + condition(noun, depth + 1) + ")";
    };
  }

  private String third(Noun noun, int depth) {
    Relation relation = any(relations(noun));
    String filled = filled(relation.third(), relation.slots(), depth);
    return relation.form() == Relation.Form.BE ? "it is " + filled : "it " + filled;
  }

  private boolean hasNumber(Noun noun) {
    return !numbers(noun).isEmpty();
  }

  private List<Property> numbers(Noun noun) {
    return VOCABULARY.properties().stream()
        .filter(p -> noun.isA(p.owner()) && p.type() instanceof ValueType.Number)
        .filter(p -> p.slots().isEmpty())
        .toList();
  }

  private String comparison(Noun noun, String before, String between, int depth) {
    List<Property> numbers = numbers(noun);
    if (numbers.isEmpty()) {
      return "number of " + any(VOCABULARY.nouns()).plural() + between + random.nextInt(50);
    }
    Property property = any(numbers);
    ValueType.Number type = (ValueType.Number) property.type();
    return before + property + between + value(type, depth);
  }

  private String value(ValueType.Number type, int depth) {
    List<Unit> units =
        Units.all().stream().filter(u -> u.dimension().equals(type.dimension())).toList();
    String quantity = (random.nextInt(900) + 1) + " " + any(units);
    if (depth > 0 && depth < 3 && random.nextInt(5) == 0) {
      String chain = random.nextBoolean() ? " otherwise if 1 > 2 then " + value(type, 3) : "";
      return "(if "
          + random.nextInt(9)
          + " >= 3 then "
          + quantity.strip()
          + chain
          + " otherwise "
          + value(type, depth + 1)
          + ")";
    }
    if (depth > 0 && random.nextInt(8) == 0 && !type.dimension().isPoint()) {
      return "80 % of " + quantity.strip();
    }
    if (depth > 0 && random.nextInt(4) == 0 && !type.dimension().isPoint()) {
      return "(" + quantity.strip() + " + " + value(type, depth + 1) + ")";
    }
    return quantity.strip();
  }

  private String filled(String pattern, List<Slot> slots, int depth) {
    StringBuilder words = new StringBuilder();
    int slot = 0;
    for (String part : List.of(pattern.split(" "))) {
      words.append(words.isEmpty() ? "" : " ");
      words.append(part.equals("_") ? argument(slots.get(slot++), depth) : part);
    }
    return words.toString();
  }

  private String argument(Slot slot, int depth) {
    if (slot instanceof Slot.Of of) {
      return of.type() instanceof ValueType.Choice choice
          ? any(choice.words())
          : value((ValueType.Number) of.type(), depth);
    }
    Noun wanted = ((Slot.Element) slot).noun();
    Noun noun = any(VOCABULARY.nouns().stream().filter(n -> n.isA(wanted)).toList());
    String where =
        depth < 3 && random.nextInt(5) == 0 && !relations(noun).isEmpty()
            ? " (where " + condition(noun, depth + 1) + ")"
            : "";
    return switch (random.nextInt(4)) {
      case 3 ->
          denied
              ? "some " + called(noun) + where
              : "all but " + (random.nextInt(5) + 2) + " " + plural(called(noun)) + where;
      case 0 -> "a " + called(noun) + where;
      case 1 -> "at least " + (random.nextInt(5) + 2) + " " + plural(called(noun)) + where;
      default -> "exactly 1 " + called(noun) + where;
    };
  }
}
