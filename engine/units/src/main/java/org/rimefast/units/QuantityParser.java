package org.rimefast.units;

import java.util.Optional;

/**
 * Reads quantities as people write them: {@code 50 mm}, {@code 1-5/8 in}, {@code 5 ft 6-1/2 in},
 * {@code -38 degC}, {@code 60 %}, {@code 0.025 W/(m K)}, {@code 12}.
 *
 * <p>Numbers are whole, decimals with a full stop, fractions ({@code 5/8}) or mixed ({@code
 * 1-5/8}). A space before the unit may be left out. Feet may be followed by inches. Pure and exact:
 * no locale, no rounding.
 */
public final class QuantityParser {
  private QuantityParser() {}

  /** A quantity, or what is wrong with the text. */
  public sealed interface Parsed {
    /** The text is a quantity; one without a unit is a plain number ({@link Units#ONE}). */
    record Ok(Quantity quantity) implements Parsed {}

    /**
     * The text is no quantity.
     *
     * @param kind what is wrong, for programs
     * @param message what is wrong, one sentence
     * @param help what to write instead
     */
    record Problem(Kind kind, String message, String help) implements Parsed {
      /** What is wrong. */
      public enum Kind {
        /** No number as it is written here. */
        NUMBER,
        /** A number, but what follows is no unit. */
        UNIT
      }
    }
  }

  /**
   * Reads a whole text.
   *
   * @param text the text; spaces around it and runs of spaces do not matter
   */
  public static Parsed parse(String text) {
    if (text.length() > MAXIMUM_LENGTH) {
      return QuantityProblems.tooLong(text);
    }
    String folded = fold(text);
    if (folded.isEmpty()) {
      return QuantityProblems.empty();
    }
    Optional<Parsed.Problem> sign = QuantityProblems.typographic(folded);
    if (sign.isPresent()) {
      return sign.get();
    }
    boolean negative = folded.startsWith("-");
    String rest = negative ? folded.substring(1).strip() : folded;
    int end = numberEnd(rest, 0);
    if (end == 0) {
      return QuantityProblems.noNumber(folded);
    }
    Optional<Rational> number = number(rest.substring(0, end));
    if (number.isEmpty()) {
      return QuantityProblems.badNumber(rest.substring(0, end), rest.substring(end).strip());
    }
    String spelling = rest.substring(end).strip();
    return Units.find(spelling)
        .map(unit -> ok(number.get(), unit, negative, folded))
        .orElseGet(() -> feetAndInches(number.get(), spelling, negative, folded));
  }

  private static final int MAXIMUM_LENGTH = 120;
  private static final int MAXIMUM_DIGITS = 30;

  private static Parsed ok(Rational number, Unit unit, boolean negative, String text) {
    return new Parsed.Ok(new Quantity(negative ? number.negated() : number, unit, text));
  }

  private static Parsed feetAndInches(
      Rational feet, String spelling, boolean negative, String text) {
    String rest = spelling.startsWith("ft ") ? spelling.substring(3) : "";
    int end = numberEnd(rest, 0);
    if (end == 0) {
      return QuantityProblems.noUnit(text, spelling);
    }
    Optional<Rational> inches = number(rest.substring(0, end));
    String unit = rest.substring(end).strip();
    if (inches.isEmpty()) {
      return QuantityProblems.badNumber(rest.substring(0, end), unit);
    }
    if (!unit.equals("in")) {
      return QuantityProblems.notInches(text);
    }
    if (!feet.isWhole() || inches.get().compareTo(Rational.of(12)) >= 0) {
      return QuantityProblems.feetAndInches(text);
    }
    return ok(feet.plus(inches.get().dividedBy(Rational.of(12))), Units.FOOT, negative, text);
  }

  /**
   * Where the run of characters that looks like a number ends: digits, and signs and letters such
   * as {@code 1,000} or {@code 1e3} that a person may take for part of one. It starts with a digit
   * or a full stop; 0 if there is none.
   */
  private static int numberEnd(String text, int start) {
    int at = start;
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
    }
    if (at >= text.length() || !isDigit(text.charAt(at))) {
      return 0;
    }
    while (at < text.length()) {
      char c = text.charAt(at);
      boolean inner = c == '.' || c == ',' || c == '/' || c == '-' || c == '_' || c == '\'';
      if (!isDigit(c)
          && !(inner && at + 1 < text.length() && isDigit(text.charAt(at + 1)))
          && !isExponent(text, at)) {
        break;
      }
      at++;
    }
    return at;
  }

  private static boolean isExponent(String text, int at) {
    if (text.charAt(at) != 'e' && text.charAt(at) != 'E') {
      return false;
    }
    int digit = at + 1;
    if (digit < text.length() && (text.charAt(digit) == '-' || text.charAt(digit) == '+')) {
      digit++;
    }
    return digit < text.length() && isDigit(text.charAt(digit));
  }

  private static Optional<Rational> number(String text) {
    if (text.chars().filter(c -> isDigit((char) c)).count() > MAXIMUM_DIGITS) {
      return Optional.empty();
    }
    int slash = text.indexOf('/');
    if (slash < 0) {
      return decimal(text);
    }
    int hyphen = text.indexOf('-');
    Optional<Rational> whole =
        hyphen < 0 ? Optional.of(Rational.ZERO) : whole(text.substring(0, hyphen));
    Optional<Rational> above = whole(text.substring(hyphen + 1, Math.max(slash, hyphen + 1)));
    Optional<Rational> below = whole(text.substring(slash + 1));
    if (whole.isEmpty() || above.isEmpty() || below.isEmpty() || below.get().signum() == 0) {
      return Optional.empty();
    }
    if (hyphen >= 0 && above.get().compareTo(below.get()) >= 0) {
      return Optional.empty();
    }
    return Optional.of(whole.get().plus(above.get().dividedBy(below.get())));
  }

  private static Optional<Rational> whole(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> isDigit((char) c))
        ? Optional.of(Rational.of(text))
        : Optional.empty();
  }

  private static Optional<Rational> decimal(String text) {
    int point = text.indexOf('.');
    if (point < 0) {
      return whole(text);
    }
    String before = text.substring(0, point);
    String after = text.substring(point + 1);
    return whole(before).isPresent() && whole(after).isPresent()
        ? Optional.of(Rational.of(text))
        : Optional.empty();
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static String fold(String text) {
    StringBuilder folded = new StringBuilder(text.length());
    boolean space = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
        space = !folded.isEmpty();
      } else {
        if (space) {
          folded.append(' ');
        }
        space = false;
        folded.append(c);
      }
    }
    return folded.toString();
  }
}
