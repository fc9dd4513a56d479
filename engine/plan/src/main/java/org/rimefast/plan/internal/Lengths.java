package org.rimefast.plan.internal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import org.rimefast.plan.Amount;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Lengths that follow from others, with a spelling that reads back to exactly the same value. */
public final class Lengths {
  private static final int SHORT = 4;
  private static final BigInteger FIVE = BigInteger.valueOf(5);

  private Lengths() {}

  /** {@code start} moved on by {@code steps} times {@code spacing}; keeps the tolerance. */
  static Amount moved(Amount start, Rational spacingMetres, int steps) {
    if (steps == 0) {
      return start;
    }
    Unit unit = start.value().unit();
    Rational spacing = spacingMetres.dividedBy(unit.factor());
    Rational number = start.value().number().plus(spacing.times(Rational.of(steps)));
    Quantity moved = isShort(number) ? quantity(number, unit) : shortest(unit.toSi(number), unit);
    return new Amount(moved, start.plusMinus());
  }

  private static boolean isShort(Rational number) {
    int places = places(number);
    return places >= 0 && places <= SHORT;
  }

  /** A length in whichever unit needs the fewest decimal places; {@code preferred} wins ties. */
  static Quantity shortest(Rational metres, Unit preferred) {
    Unit best = null;
    int least = Integer.MAX_VALUE;
    for (Unit unit :
        List.of(preferred, Units.MILLIMETRE, Units.INCH, Units.FOOT, Units.CENTIMETRE)) {
      int places = places(unit.fromSi(metres));
      if (places >= 0 && places < least) {
        best = unit;
        least = places;
      }
    }
    return best == null ? fraction(metres, preferred) : quantity(best.fromSi(metres), best);
  }

  /** No unit gives a finite decimal: a fraction in the one with the smallest denominator. */
  private static Quantity fraction(Rational metres, Unit preferred) {
    Unit best = preferred;
    for (Unit unit : List.of(Units.MILLIMETRE, Units.INCH, Units.FOOT)) {
      if (unit.fromSi(metres).denominator().compareTo(best.fromSi(metres).denominator()) < 0) {
        best = unit;
      }
    }
    Rational number = best.fromSi(metres);
    BigInteger[] parts = number.numerator().abs().divideAndRemainder(number.denominator());
    String text =
        (number.signum() < 0 ? "-" : "")
            + (parts[0].signum() == 0 ? "" : parts[0] + "-")
            + parts[1]
            + "/"
            + number.denominator();
    return new Quantity(number, best, text + " " + best.symbol());
  }

  private static Quantity quantity(Rational number, Unit unit) {
    return new Quantity(number, unit, decimal(number) + " " + unit.symbol());
  }

  /** The finite decimal, written out. */
  static String decimal(Rational number) {
    if (number.isWhole()) {
      return number.numerator().toString();
    }
    int places = places(number);
    if (places < 0) {
      throw new IllegalStateException(number + " is no finite decimal");
    }
    return new BigDecimal(number.numerator())
        .divide(new BigDecimal(number.denominator()), places, RoundingMode.UNNECESSARY)
        .toPlainString();
  }

  /** How many decimal places the number has; -1 if they never end. */
  static int places(Rational number) {
    if (number.isWhole()) {
      return 0;
    }
    BigInteger rest = number.denominator();
    int twos = rest.getLowestSetBit();
    rest = rest.shiftRight(twos);
    int fives = 0;
    if (rest.bitLength() < Long.SIZE) {
      long left = rest.longValueExact();
      while (left % 5 == 0) {
        left /= 5;
        fives++;
      }
      return left == 1 ? Math.max(twos, fives) : -1;
    }
    for (BigInteger[] split = rest.divideAndRemainder(FIVE);
        split[1].signum() == 0;
        split = rest.divideAndRemainder(FIVE)) {
      rest = split[0];
      fives++;
    }
    return rest.equals(BigInteger.ONE) ? Math.max(twos, fives) : -1;
  }
}
