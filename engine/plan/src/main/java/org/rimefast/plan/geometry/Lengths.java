package org.rimefast.plan.geometry;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Amounts of a plan as millimetres. */
final class Lengths {
  private static final Rational THOUSAND = Rational.of(1000);

  private Lengths() {}

  /** Exact value in millimetres, rounded to the nearest double; NaN if not given. */
  static double millimetres(@Nullable Amount amount) {
    return amount == null ? Double.NaN : millimetres(amount.value());
  }

  /** How far the value may be off by its own statement; NaN if it states nothing. */
  static double plusMinus(@Nullable Amount amount) {
    return amount == null || amount.plusMinus() == null
        ? Double.NaN
        : millimetres(amount.plusMinus());
  }

  /** How far the value may be off: by its own statement, else its trade's, else not at all. */
  static double tolerance(@Nullable Amount amount, @Nullable Amount trade) {
    double own = plusMinus(amount);
    return !Double.isNaN(own) ? own : trade == null ? 0 : millimetres(trade);
  }

  /** How far the value may be off by its own statement; none if it states nothing. */
  static double ownTolerance(@Nullable Amount amount) {
    return tolerance(amount, null);
  }

  private static double millimetres(Quantity quantity) {
    // Most plans count in millimetres, and this way spares the exact arithmetic.
    return quantity.unit().equals(Units.MILLIMETRE)
        ? toDouble(quantity.number())
        : toDouble(quantity.si().times(THOUSAND));
  }

  /**
   * The nearest double. Both terms of an everyday fraction are whole numbers that a double holds
   * exactly, and dividing those rounds correctly (IEEE 754), at a hundredth of the cost.
   */
  private static double toDouble(Rational value) {
    BigInteger numerator = value.numerator();
    BigInteger denominator = value.denominator();
    return numerator.bitLength() <= 53 && denominator.bitLength() <= 53
        ? (double) numerator.longValue() / denominator.longValue()
        : value.toDouble();
  }
}
