package org.rimefast.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.units.QuantityParser.Parsed.Problem;

/** What to say about a text that is no quantity. */
final class QuantityProblems {
  private static final List<String[]> REPLACEMENTS =
      List.of(
          new String[] {"\u2212", "-"},
          new String[] {"\u2013", "-"},
          new String[] {"\u2014", "-"},
          new String[] {"\u00b0 C", "degC"},
          new String[] {"\u00b0C", "degC"},
          new String[] {"\u2103", "degC"},
          new String[] {"\u00b0 F", "degF"},
          new String[] {"\u00b0F", "degF"},
          new String[] {"\u2109", "degF"},
          new String[] {"\u00b0", " deg"},
          new String[] {"\u00b2", "2"},
          new String[] {"\u00b3", "3"},
          new String[] {"\u00bd", "-1/2"},
          new String[] {"\u00bc", "-1/4"},
          new String[] {"\u00be", "-3/4"},
          new String[] {"\u215b", "-1/8"},
          new String[] {"\u215c", "-3/8"},
          new String[] {"\u215d", "-5/8"},
          new String[] {"\u215e", "-7/8"},
          new String[] {"\u2032", " ft "},
          new String[] {"\u2033", " in"},
          new String[] {"\u2019", " ft "},
          new String[] {"\u201d", " in"},
          new String[] {"\u00a0", " "},
          new String[] {"\u202f", " "},
          new String[] {"\u2009", " "},
          new String[] {"\u03a9", "ohm"},
          new String[] {"\u00b7", " "});

  /** Words people write for a unit, and the unit's own spelling. */
  private static final List<String[]> NAMES =
      List.of(
          new String[] {"millimetre", "mm"},
          new String[] {"millimeter", "mm"},
          new String[] {"centimetre", "cm"},
          new String[] {"centimeter", "cm"},
          new String[] {"metre", "m"},
          new String[] {"meter", "m"},
          new String[] {"inch", "in"},
          new String[] {"inche", "in"},
          new String[] {"foot", "ft"},
          new String[] {"feet", "ft"},
          new String[] {"\"", "in"},
          new String[] {"'", "ft"},
          new String[] {"c", "degC"},
          new String[] {"celsius", "degC"},
          new String[] {"degree", "deg"},
          new String[] {"f", "degF"},
          new String[] {"fahrenheit", "degF"},
          new String[] {"kelvin", "K"},
          new String[] {"percent", "%"},
          new String[] {"per cent", "%"},
          new String[] {"pct", "%"},
          new String[] {"gram", "g"},
          new String[] {"kilogram", "kg"},
          new String[] {"pound", "lb"},
          new String[] {"lbs", "lb"},
          new String[] {"litre", "L"},
          new String[] {"liter", "L"},
          new String[] {"volt", "V"},
          new String[] {"amp", "A"},
          new String[] {"ampere", "A"},
          new String[] {"watt", "W"},
          new String[] {"second", "s"},
          new String[] {"sec", "s"},
          new String[] {"minute", "min"},
          new String[] {"hour", "h"},
          new String[] {"hr", "h"},
          new String[] {"dollar", "money"});

  private QuantityProblems() {}

  static Problem empty() {
    return new Problem(
        Problem.Kind.NUMBER,
        "There is no quantity here.",
        "Write a number and a unit, such as 50 mm.");
  }

  static Problem tooLong(String text) {
    return new Problem(
        Problem.Kind.NUMBER,
        "\"" + text.substring(0, 20) + "...\" is too long for a quantity.",
        "Write a number and a unit, such as 50 mm.");
  }

  static Problem noNumber(String text) {
    return new Problem(
        Problem.Kind.NUMBER,
        "\"" + text + "\" does not begin with a number.",
        "Write the number first and its unit after it, such as 50 mm or 1-5/8 in.");
  }

  /** Signs that word processors put in place of plain ones. */
  static Optional<Problem> typographic(String text) {
    if (text.chars().allMatch(c -> c < 128)) {
      return Optional.empty();
    }
    String plain = text;
    for (String[] pair : REPLACEMENTS) {
      plain = plain.replace(pair[0], pair[1]);
    }
    plain = plain.replaceAll(" +", " ").replace("degC", " degC").replace("degF", " degF");
    plain = plain.replaceAll(" +", " ").strip();
    if (plain.startsWith("-") && plain.indexOf('/') == 2 && !text.startsWith("\u2212")) {
      plain = plain.substring(1);
    }
    boolean readable =
        plain.chars().allMatch(c -> c < 128)
            && QuantityParser.parse(plain) instanceof QuantityParser.Parsed.Ok;
    return Optional.of(
        new Problem(
            Problem.Kind.NUMBER,
            "\"" + text + "\" has a sign that quantities do not use.",
            readable
                ? "Write " + plain + "."
                : "Write plain signs, such as -38 degC or 1-1/2 in."));
  }

  static Problem badNumber(String number, String unit) {
    String tail = unit.isEmpty() ? "" : " " + unit;
    String message = "\"" + number + "\" is not written as numbers are here.";
    if (number.startsWith(".")) {
      return number(message, "Put a zero before the point: 0" + number + tail + ".");
    }
    if (number.indexOf(',') >= 0 || number.indexOf('\'') >= 0 || number.indexOf('_') >= 0) {
      return number(message, commaHelp(number, tail));
    }
    if (number.indexOf('e') >= 0 || number.indexOf('E') >= 0) {
      return number(message, "Write all digits, such as 0.001 or 20000, without an exponent.");
    }
    if (number.indexOf('/') >= 0) {
      return number(
          message, "Write a fraction as 5/8, and a whole number with a fraction as 1-5/8.");
    }
    if (number.indexOf('-') >= 0) {
      return number(
          message, "Put a space on both sides of a minus sign; a range is two comparisons.");
    }
    if (number.indexOf('.') != number.lastIndexOf('.')) {
      return number(message, "A number has one point: 1000.5.");
    }
    return number(message, "A number has at most 30 digits.");
  }

  private static String commaHelp(String number, String tail) {
    String joined = number.replaceAll("[,'_]", "");
    String pointed = number.replace(',', '.');
    if (number.indexOf(',') < 0 || number.indexOf(',') != number.lastIndexOf(',')) {
      return "Write " + joined + tail + ".";
    }
    return "Write " + joined + tail + ", or " + pointed + tail + " if the comma is a decimal sign.";
  }

  private static Problem number(String message, String help) {
    return new Problem(Problem.Kind.NUMBER, message, help);
  }

  static Problem notInches(String text) {
    return new Problem(
        Problem.Kind.UNIT,
        "In \"" + text + "\" only inches can follow the feet.",
        "Write it as 5 ft 6-1/2 in, or in one unit.");
  }

  static Problem feetAndInches(String text) {
    return new Problem(
        Problem.Kind.NUMBER,
        "In \"" + text + "\" the feet must be a whole number and the inches fewer than 12.",
        "Write it as 5 ft 6-1/2 in, or in one unit.");
  }

  static Problem noUnit(String text, String spelling) {
    String number = text.substring(0, text.length() - spelling.length()).strip();
    if (spelling.matches("[0-9]+/[0-9]+.*")) {
      return new Problem(
          Problem.Kind.NUMBER,
          "\"" + text + "\" has a space inside the number.",
          "Join the whole number and the fraction with a hyphen: " + number + "-" + spelling + ".");
    }
    if (spelling.matches("['\"].*[0-9].*")) {
      return new Problem(
          Problem.Kind.UNIT,
          "\"" + text + "\" uses marks for feet and inches.",
          "Write the units: 5 ft 6-1/2 in.");
    }
    List<String> nearest = nearest(spelling);
    String message = "\"" + spelling + "\" is no unit.";
    if (nearest.isEmpty()) {
      return new Problem(
          Problem.Kind.UNIT, message, "Units are spelt as in 50 mm, 2 in, -38 degC, 60 %.");
    }
    return new Problem(
        Problem.Kind.UNIT,
        message,
        "Write " + number + " " + String.join(" or " + number + " ", nearest) + ".");
  }

  /** The units that a spelling may have meant, likeliest first; at most two. */
  private static List<String> nearest(String spelling) {
    String lower = spelling.toLowerCase(Locale.ROOT);
    String single = lower.length() > 3 && lower.endsWith("s") ? cut(lower) : lower;
    for (String[] name : NAMES) {
      if (name[0].equals(single) || name[0].equals(lower)) {
        return List.of(name[1]);
      }
    }
    List<String> found = new ArrayList<>();
    String packed = pack(lower);
    for (Unit unit : Units.all()) {
      if (!unit.symbol().isEmpty() && pack(unit.symbol().toLowerCase(Locale.ROOT)).equals(packed)) {
        found.add(unit.symbol());
      }
    }
    return found.size() > 2 ? found.subList(0, 2) : found;
  }

  /** Leaves out what people vary in: spaces, parentheses, dots and carets. */
  private static String pack(String spelling) {
    return spelling.replaceAll("[ ()^.*]", "");
  }

  private static String cut(String text) {
    return text.substring(0, text.length() - 1);
  }
}
