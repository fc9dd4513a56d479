package org.rimefast.plan;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;

/**
 * A value as a plan gives it: {@code 1200}, {@code "4 ft"}, {@code "1200 mm +- 3 mm"}. Exact, with
 * the nearest doubles kept beside it, since checks ask for them again and again.
 */
public final class Amount {
  private static final Rational THOUSAND = Rational.of(1000);

  private final Quantity value;
  private final @Nullable Quantity plusMinus;
  private final double si;
  private final double siTolerance;
  private final double millimetres;

  /**
   * A value.
   *
   * @param value the value
   * @param plusMinus how far the true value may lie from it on either side; null if the plan does
   *     not say for this value (the tolerance of its trade then counts)
   */
  public Amount(Quantity value, @Nullable Quantity plusMinus) {
    this.value = value;
    this.plusMinus = plusMinus;
    si = value.siDouble();
    millimetres = value.si().times(THOUSAND).toDouble();
    // A tolerance is a difference, so the zero of its unit does not enter it.
    siTolerance =
        plusMinus == null ? 0 : plusMinus.number().times(plusMinus.unit().factor()).toDouble();
  }

  /** The value. */
  public Quantity value() {
    return value;
  }

  /** How far the true value may lie from it on either side; null if the plan does not say. */
  public @Nullable Quantity plusMinus() {
    return plusMinus;
  }

  /** A length in millimetres. */
  public double millimetres() {
    return millimetres;
  }

  /** The value in SI units. */
  public double si() {
    return si;
  }

  /** The value's own tolerance in SI units; 0 if the plan does not say. */
  public double siTolerance() {
    return siTolerance;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Amount that
        && value.equals(that.value)
        && Objects.equals(plusMinus, that.plusMinus);
  }

  @Override
  public int hashCode() {
    return Objects.hash(value, plusMinus);
  }

  @Override
  public String toString() {
    return plusMinus == null ? value.text() : value.text() + " +- " + plusMinus.text();
  }
}
