package org.rimefast.testkit.internal;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An exact length that can be written in any unit of a plan.
 *
 * @param value ten-thousandths of a millimetre
 * @param tolerance the same, for how far it may be off; null if the plan does not say
 * @param author the unit its author thinks in; null for the plan's
 */
record Length(long value, @Nullable Long tolerance, @Nullable String author) {
  static final long MILLIMETRE = 10_000;
  static final long INCH = 254_000;
  static final long FOOT = 12 * INCH;

  /** Five to an inch's thousandth: multiples are finite decimals in all metric units and inches. */
  static final long GRID = 1_270;

  private static final Map<String, BigDecimal> MILLIMETRES =
      Map.of(
          "mm", new BigDecimal("1"),
          "cm", new BigDecimal("10"),
          "m", new BigDecimal("1000"),
          "in", new BigDecimal("25.4"),
          "ft", new BigDecimal("304.8"));

  static Length of(long value) {
    return new Length(value, null, null);
  }

  static boolean isUnit(String unit) {
    return MILLIMETRES.containsKey(unit);
  }

  /** A number in the plan's unit, or a text with a unit. */
  Object in(String unit) {
    BigDecimal number = number(value, unit);
    if (author == null && tolerance == null && number != null) {
      return number;
    }
    String text = text(value, author == null ? unit : author);
    return tolerance == null ? text : text + " +- " + text(tolerance, unit);
  }

  private static String text(long value, String first) {
    for (String unit : List.of(first, "in", "mm")) {
      BigDecimal number = number(value, unit);
      if (number != null) {
        return number.toPlainString() + " " + unit;
      }
    }
    throw new IllegalStateException("every length is a finite decimal of millimetres");
  }

  /** How many of a unit, if that is a finite decimal. */
  private static @Nullable BigDecimal number(long value, String unit) {
    BigDecimal millimetres = MILLIMETRES.get(unit);
    if (millimetres == null) {
      throw new IllegalArgumentException("a plan has no unit " + unit);
    }
    try {
      return BigDecimal.valueOf(value, 4).divide(millimetres).stripTrailingZeros();
    } catch (ArithmeticException endless) {
      return null;
    }
  }
}
