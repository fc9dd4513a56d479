package org.rimefast.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Prints measured values in the unit their reader uses, with the digits that matter on site.
 *
 * <p>Decimals only, a full stop as the decimal sign, no grouping, no trailing zeros, never {@code
 * -0}. The same number gives the same text everywhere.
 */
public final class QuantityFormat {
  private static final int SIGNIFICANT = 4;

  private QuantityFormat() {}

  /**
   * The value {@code si} in {@code unit}: {@code 6.4 mm}, {@code 0.252 in}, {@code -38 degC}.
   *
   * <p>Places after the point are fixed where a trade reads to a fixed step (0.1 mm, 0.001 in, 0.1
   * degC, 0.1 %); other units get four significant digits, and whole digits are never cut.
   *
   * @param si the value in SI units
   * @param unit the unit to print in
   * @throws IllegalArgumentException if {@code si} is not finite
   */
  public static String format(double si, Unit unit) {
    if (Double.isNaN(si) || Double.isInfinite(si)) {
      throw new IllegalArgumentException("not a finite number: " + si);
    }
    // The exact value of the double, divided exactly: 0.3 / 0.001 in doubles would be 299.99...
    BigDecimal number = decimal(unit.fromSi(Rational.of(new BigDecimal(si))));
    String text = rounded(number, unit).stripTrailingZeros().toPlainString();
    if (text.equals("0") || text.equals("-0")) {
      text = "0";
    }
    if (unit.symbol().isEmpty()) {
      return text;
    }
    return text + " " + unit.symbol();
  }

  private static BigDecimal decimal(Rational exact) {
    return new BigDecimal(exact.numerator())
        .divide(new BigDecimal(exact.denominator()), new MathContext(30, RoundingMode.HALF_EVEN));
  }

  private static BigDecimal rounded(BigDecimal number, Unit unit) {
    int places =
        switch (unit.symbol()) {
          case "mm", "degC", "degF", "%", "deg" -> 1;
          case "K", "degF-difference", "cm", "money", "min" -> 2;
          case "in" -> 3;
          case "m", "ft" -> 4;
          default -> significantPlaces(number);
        };
    // A double carries some 16 digits; what stands beyond the fourteenth is noise of earlier
    // arithmetic and must not decide a tie.
    return number
        .round(new MathContext(14, RoundingMode.HALF_EVEN))
        .setScale(places, RoundingMode.HALF_UP);
  }

  private static int significantPlaces(BigDecimal number) {
    if (number.signum() == 0) {
      return 0;
    }
    int magnitude = number.precision() - number.scale();
    return Math.max(0, SIGNIFICANT - magnitude);
  }
}
