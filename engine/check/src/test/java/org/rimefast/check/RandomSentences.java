package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Makes random sentences of rules, well typed by construction, as text. */
final class RandomSentences {
  private static final List<String> SUBJECTS =
      List.of("box", "panel", "luminaire", "bar", "bracket", "stud", "track", "part", "cable");
  private static final List<String> OTHERS =
      List.of("stud", "track", "bar", "bracket", "box", "part", "item");

  private static final String ROOM_TERM = "damp room";

  private final Random random;
  private final List<String> terms = new ArrayList<>();

  RandomSentences(Random random) {
    this.random = random;
  }

  /** Definitions, each of them free to use those before it; sentences use those made last. */
  String terms() {
    terms.clear();
    StringBuilder text = new StringBuilder(tables());
    text.append("let damp room be a room where its humidity > ")
        .append(pick(List.of("30 %", "35 %", "40 %")))
        .append(" and number of parts (where it is on a wall) >= ")
        .append(random.nextInt(4))
        .append('\n');
    for (String noun : List.of("box", "part", "cable", "stud")) {
      String term = "special " + noun;
      text.append("let ").append(term).append(" be a ").append(noun).append(" where ");
      text.append(condition(noun, 1)).append('\n');
      terms.add(term);
    }
    return text.toString();
  }

  /** Tables that leave no gap, made of the cases of each column. */
  private String tables() {
    List<String> materials =
        pick(
            List.of(
                List.of("steel or aluminium", "plastic or wood"),
                List.of("steel", "aluminium or wood or plastic"),
                List.of("any")));
    String low = pick(List.of("20 mm", "1 in", "35 mm"));
    List<String> depths =
        pick(
            List.of(
                List.of("< " + low, low, "> " + low + " and < 50 mm", ">= 50 mm"),
                List.of("<= " + low, "> " + low),
                List.of("< 10 mm or > 50 mm", ">= 10 mm and <= 50 mm")));
    List<String> counts = List.of("0", "1 or 2", ">= 3");
    StringBuilder text = new StringBuilder("table cover needed of a part by its material, ");
    text.append(pick(List.of("its clearance", "its depth", "smallest clearance of boxes")))
        .append(", number of boxes per face\n");
    boolean left = false;
    for (String material : materials) {
      for (String depth : depths) {
        for (String count : counts) {
          boolean out = random.nextInt(6) == 0;
          left |= out;
          text.append(
              out
                  ? ""
                  : "| " + material + " | " + depth + " | " + count + " | " + length() + " |\n");
        }
      }
    }
    text.append(left ? "otherwise 2 in\n" : "");
    text.append("table fit material of a part by its width\n| < 40 mm | steel |\n");
    text.append("| >= 40 mm and < 70 mm | ").append(pick(List.of("steel", "wood")));
    text.append(" |\notherwise plastic\n");
    text.append("table stud cover of a stud by its cover needed + 5 mm\n| < 30 mm | 1 in |\n");
    return text.append("otherwise 10 mm\n").toString();
  }

  String sentence() {
    String noun = pick(SUBJECTS);
    String own = "special " + noun;
    if (terms.contains(own) && maybe()) {
      noun = own;
    }
    String subject = "each " + noun + (maybe() ? " where " + condition(noun, 2) : "");
    String tail =
        random.nextInt(4) == 0 ? pick(List.of(" if ", " unless ")) + condition(noun, 1) : "";
    if (random.nextInt(4) == 0) {
      String other = pick(others());
      String quantified =
          switch (random.nextInt(6)) {
            case 0 -> "some " + other;
            case 1 -> pick(List.of("all but 1 " + other, "all but 2 " + plural(other)));
            case 2 -> "no " + other;
            case 3 -> "at least 2 " + plural(other);
            case 4 -> "at most 1 " + other;
            default -> "exactly 1 " + other;
          };
      return "for " + subject + ", " + quantified + " must touch it" + tail;
    }
    if (random.nextInt(10) == 0 && isPart(noun)) {
      String other = pick(List.of("run", "conduit"));
      String room =
          " (where its room is " + pick(List.of("", "not ")) + "room of the " + noun + ")";
      return "for " + subject + ", some " + other + room + " must touch it" + tail;
    }
    boolean not = random.nextInt(3) == 0;
    return subject + (not ? " must not " : " must ") + predicate(noun, 2, not) + tail;
  }

  /**
   * A predicate.
   *
   * @param not true right behind "not", where "no" and "each" are refused as unclear
   */
  private String predicate(String noun, int depth, boolean not) {
    if (depth > 0 && random.nextInt(3) == 0) {
      String word = pick(List.of(" and ", " or "));
      return "("
          + predicate(noun, depth - 1, false)
          + word
          + predicate(noun, depth - 1, false)
          + ")";
    }
    return switch (random.nextInt(5)) {
      case 0 -> "have " + comparison(noun, "");
      case 1 -> "touch " + quantified(others(), depth, not);
      case 2 ->
          isPart(noun) ? pick(List.of("sit in ", "face ", "face only ")) + zone() : "be armoured";
      case 3 ->
          isPart(noun)
              ? "pass behind " + quantified(List.of("box", "part"), depth, not)
              : "touch the shell";
      default -> "touch the shell";
    };
  }

  private String condition(String noun, int depth) {
    if (depth > 0 && random.nextInt(3) == 0) {
      String word = pick(List.of(" and ", " or "));
      return pick(List.of("", "not "))
          + "("
          + condition(noun, depth - 1)
          + word
          + condition(noun, depth - 1)
          + ")";
    }
    return switch (random.nextInt(14)) {
      case 10 -> {
        String near = pick(among(List.of("stud", "box", "item", "cable")));
        yield "distance to the nearest "
            + near
            + nested(near, depth)
            + pick(List.of(" >= ", " < "))
            + pick(List.of("100 mm", "250 mm", "4 in", "1 m"));
      }
      case 11 -> {
        String counted = pick(among(List.of("box", "stud", "part")));
        String link = isPart(noun) ? pick(List.of("face", "face", "room")) : "room";
        String per = plural(counted) + " per " + link + nested(counted, depth);
        yield maybe()
            ? "number of " + per + pick(List.of(" >= ", " <= ")) + random.nextInt(4)
            : pick(List.of("largest depth of ", "total width of "))
                + per
                + pick(List.of(" >= ", " <= "))
                + pick(List.of("50 mm", "4 in"));
      }
      case 12 ->
          isPart(noun)
              ? "its material is "
                  + pick(List.of("", "not "))
                  + (maybe()
                      ? "its fit material"
                      : choice(noun, List.of("steel", "plastic", "its fit material")))
              : "it touches a stud";
      case 0 -> comparison(noun, "its ");
      case 1 ->
          random.nextBoolean()
              ? "it touches " + quantified(others(), depth, false)
              : "it does not touch " + quantified(others(), depth, true);
      case 2 -> isPart(noun) ? "it sits in " + zone() : "it is armoured";
      case 3 ->
          isPart(noun)
              ? "its material "
                  + pick(List.of("is ", "is not "))
                  + pick(List.of("steel", "plastic", "wood"))
              : "it touches the shell";
      case 4 -> {
        String counted = pick(among(List.of("box", "stud", "part")));
        yield "number of "
            + plural(counted)
            + nested(counted, depth)
            + pick(List.of(" >= ", " <= ", " = "))
            + random.nextInt(4);
      }
      case 5 -> {
        String measured = pick(among(List.of("box", "bar")));
        yield pick(List.of("smallest ", "largest ", "average ", "total "))
            + "clearance of "
            + plural(measured)
            + nested(measured, depth)
            + " >= "
            + length();
      }
      case 6 -> pick(List.of("some ", "no ")) + pick(List.of("stud", "bracket")) + " touches it";
      case 7 -> kindTest(noun);
      case 8 -> pick(List.of("its room is ", "its room is not ")) + "a " + ROOM_TERM;
      case 9 ->
          "humidity of its room "
              + pick(List.of("> ", "<= "))
              + pick(List.of("30 %", "35 %", "40 %"));
      default ->
          isPart(noun)
              ? "its width divided by "
                  + pick(List.of("its depth", "(its depth - its depth)", "(its depth - 20 mm)"))
                  + " >= "
                  + random.nextInt(3)
              : "its diameter times 2 > 1 in";
    };
  }

  /**
   * Whether an element is of a narrower kind, of a term that can be said of it, or has such a face.
   */
  private String kindTest(String noun) {
    List<String> kinds = new ArrayList<>(terms.stream().filter(term -> canBe(noun, term)).toList());
    if (noun.endsWith("part")) {
      kinds.addAll(List.of("stud", "electrical part"));
    }
    if (isPart(noun) && (kinds.isEmpty() || random.nextInt(3) == 0)) {
      return "its face " + pick(List.of("is ", "is not ")) + "a " + pick(List.of("wall", "roof"));
    }
    if (kinds.isEmpty()) {
      return "it touches the shell";
    }
    String kind = pick(kinds);
    return pick(List.of("it is ", "it is not ")) + (kind.startsWith("e") ? "an " : "a ") + kind;
  }

  /** True if some element can be both. */
  private static boolean canBe(String noun, String term) {
    String a = noun.replace("special ", "");
    String b = term.replace("special ", "");
    return a.equals(b)
        || (a.equals("part") && !b.equals("cable"))
        || (b.equals("part") && !a.equals("cable"));
  }

  private List<String> others() {
    return among(OTHERS);
  }

  /** These, and the terms for parts. */
  private List<String> among(List<String> nouns) {
    List<String> all = new ArrayList<>(nouns);
    terms.stream().filter(RandomSentences::isPart).forEach(all::add);
    return all;
  }

  private String comparison(String noun, String its) {
    String property =
        isPart(noun)
            ? pick(List.of("clearance", "width", "height", "depth", "foam cover"))
            : pick(List.of("clearance", "diameter"));
    String limit =
        switch (random.nextInt(8)) {
          case 2 -> choice(noun, List.of("10 mm", "1 in", "50 mm", "its clearance"));
          case 3 -> pick(List.of("80", "110", "12-1/2")) + " % of its clearance";
          case 4 ->
              isPart(noun)
                  ? choice(noun, List.of("(20 mm divided by (1 - 1))", "20 mm", "its depth"))
                  : length();
          case 5 ->
              noun.endsWith("stud")
                  ? "its stud cover"
                  : isPart(noun) ? "its cover needed" : length();
          case 0 -> "its " + (isPart(noun) ? "width" : "diameter") + " - 10 mm";
          case 1 -> length() + " + 1/2 in";
          default -> length();
        };
    return its + property + pick(List.of(" >= ", " > ", " <= ", " < ", " = ", " != ")) + limit;
  }

  private String choice(String noun, List<String> values) {
    return "(if "
        + condition(noun, 0)
        + " then "
        + pick(values)
        + (maybe() ? " otherwise if " + condition(noun, 0) + " then " + pick(values) : "")
        + " otherwise "
        + pick(values)
        + ")";
  }

  private String quantified(List<String> nouns, int depth, boolean not) {
    String noun = pick(nouns);
    return switch (not ? 2 + random.nextInt(3) : random.nextInt(6)) {
      case 5 ->
          random.nextBoolean()
              ? "all but 1 " + noun + nested(noun, depth)
              : "all but 2 " + plural(noun) + nested(noun, depth);
      case 0 -> "each " + noun + nested(noun, depth);
      case 1 -> "no " + noun + nested(noun, depth);
      case 2 -> "at least 2 " + plural(noun) + nested(noun, depth);
      case 3 -> noun.equals("item") ? "another item" : "a " + noun;
      default -> (noun.equals("item") ? "an " : "a ") + noun + nested(noun, depth);
    };
  }

  private String nested(String noun, int depth) {
    return depth > 0 && random.nextInt(3) == 0 && !noun.equals("item")
        ? " (where " + condition(noun, depth - 1) + ")"
        : "";
  }

  private static boolean isPart(String noun) {
    return !noun.endsWith("cable");
  }

  private String zone() {
    return pick(List.of("inward rib", "web", "outer bay"));
  }

  private String length() {
    return pick(List.of("10 mm", "25 mm", "1 in", "50 mm", "2 in", "0 mm", "3-1/2 in", "6.4 mm"));
  }

  private static String plural(String noun) {
    return noun.endsWith("box") ? noun + "es" : noun + "s";
  }

  private boolean maybe() {
    return random.nextBoolean();
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
