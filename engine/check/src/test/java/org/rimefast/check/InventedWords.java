package org.rimefast.check;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Unit;

/**
 * The steel vocabulary and more words over small tables of invented values, by the ids of elements.
 * What is not in its table is missing.
 */
final class InventedWords {
  private final Dictionary.Builder words = Given.DICTIONARY.toBuilder();

  Dictionary build() {
    return words.build();
  }

  /** A number with its unit; {@code values} are in that unit. */
  InventedWords number(Noun owner, String phrase, Unit unit, Map<String, Double> values) {
    return measured(
        owner,
        phrase,
        unit,
        (facts, element) -> {
          Double value = values.get(id(facts, element));
          return value == null ? Double.NaN : value * unit.factor().toDouble();
        });
  }

  /** A number that is worked out, in SI units; NaN if it is missing. */
  InventedWords measured(Noun owner, String phrase, Unit unit, Measured value) {
    words.number(
        property(owner, phrase, new ValueType.Number(unit.dimension(), unit)),
        (facts, element, arguments, out) -> out.exactly(value.of(facts, element)),
        (facts, element, arguments, out) -> {
          if (Double.isNaN(value.of(facts, element))) {
            out.missing(facts.missing(element, phrase));
          }
        });
    return this;
  }

  /** One of a list of words. */
  InventedWords choice(Noun owner, String phrase, List<String> list, Map<String, String> values) {
    words.choice(
        property(owner, phrase, new ValueType.Choice(phrase, list)),
        (facts, element, arguments) ->
            list.indexOf(values.getOrDefault(id(facts, element), "not in the list")),
        (facts, element, arguments, out) -> {
          if (!values.containsKey(id(facts, element))) {
            out.missing(facts.missing(element, phrase));
          }
        });
    return this;
  }

  /** A verb between two elements; {@code pairs} are written {@code A>B}. */
  InventedWords verb(Noun subject, String base, String third, Noun object, Set<String> pairs) {
    return verb(
        subject,
        base,
        third,
        List.of(new Slot.Element(object)),
        (facts, element, arguments) ->
            Truth.of(pairs.contains(id(facts, element) + ">" + id(facts, arguments.element(0)))),
        Word.Explainer.NONE);
  }

  /** A verb that is worked out. */
  InventedWords verb(
      Noun subject,
      String base,
      String third,
      List<Slot> slots,
      Word.TruthFunction function,
      Word.Explainer explainer) {
    words.relation(
        new Relation(subject.id() + "." + base, Relation.Form.VERB, base, third, subject, slots),
        function,
        explainer);
    return this;
  }

  /** What stands after {@code be} and {@code is}. */
  InventedWords being(Noun subject, String pattern, List<Slot> slots, Word.TruthFunction function) {
    words.relation(
        new Relation(
            subject.id() + ".be " + pattern, Relation.Form.BE, pattern, pattern, subject, slots),
        function,
        Word.Explainer.NONE);
    return this;
  }

  /** The element that belongs to another. */
  InventedWords link(Noun owner, String phrase, Noun target, Map<String, String> values) {
    words.link(
        new Link(owner.id() + "." + phrase, phrase, owner, target),
        (facts, element) -> {
          String to = values.get(id(facts, element));
          return to == null ? -1 : facts.handleOf(to);
        },
        (facts, element, arguments, out) -> {
          if (!values.containsKey(id(facts, element))) {
            out.missing(facts.missing(element, phrase));
          }
        });
    return this;
  }

  /** A narrower kind of element: those whose ids begin so. */
  InventedWords noun(Noun noun, String start) {
    Noun broader = noun.broader().get(0);
    words.noun(
        noun,
        (facts, handle) -> facts.isMember(broader, handle) && id(facts, handle).startsWith(start));
    return this;
  }

  /** For what has no short way here. */
  Dictionary.Builder words() {
    return words;
  }

  /** Works a number out. */
  @FunctionalInterface
  interface Measured {
    double of(PlanFacts facts, int element);
  }

  static String id(PlanFacts facts, int element) {
    return facts.name(element).id();
  }

  private static Property property(Noun owner, String phrase, ValueType type) {
    return new Property(owner.id() + "." + phrase, phrase, owner, List.of(), type);
  }
}
