package org.rimefast.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Objects;

/**
 * An exact fraction in lowest terms with a positive denominator.
 *
 * <p>Use: {@code Rational.of("25.4").times(Rational.of(13, 8))}.
 */
public final class Rational implements Comparable<Rational> {
  /** Zero. */
  public static final Rational ZERO = of(0);

  /** One. */
  public static final Rational ONE = of(1);

  private static final int DOUBLE_BITS = 53;

  private final BigInteger numerator;
  private final BigInteger denominator;

  private Rational(BigInteger numerator, BigInteger denominator) {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("division by zero");
    }
    BigInteger divisor = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      divisor = divisor.negate();
    }
    this.numerator = numerator.divide(divisor);
    this.denominator = denominator.divide(divisor);
  }

  /** The whole number {@code value}. */
  public static Rational of(long value) {
    return new Rational(BigInteger.valueOf(value), BigInteger.ONE);
  }

  /**
   * The fraction {@code numerator / denominator}.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /** The exact value of a decimal. */
  public static Rational of(BigDecimal decimal) {
    return decimal.scale() <= 0
        ? new Rational(decimal.toBigIntegerExact(), BigInteger.ONE)
        : new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  /**
   * The exact value of a decimal written with digits, such as {@code 25.4}.
   *
   * @throws NumberFormatException if the text is no decimal
   */
  public static Rational of(String decimal) {
    return of(new BigDecimal(decimal));
  }

  /** The sum. */
  public Rational plus(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  /** The difference. */
  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  /** The product. */
  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if {@code other} is zero
   */
  public Rational dividedBy(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /** The value with its sign turned. */
  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  /** -1, 0 or 1. */
  public int signum() {
    return numerator.signum();
  }

  /** True if the denominator is one. */
  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  /** The nearest {@code double}. */
  public double toDouble() {
    if (numerator.bitLength() <= DOUBLE_BITS && denominator.bitLength() <= DOUBLE_BITS) {
      // Both are exact as doubles, so the division rounds once.
      return numerator.doubleValue() / denominator.doubleValue();
    }
    // 40 digits hold any double's neighbourhood, so the second rounding cannot move the result
    // except in ties that a plan's decimals do not reach.
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), new MathContext(40))
        .doubleValue();
  }

  /** The numerator in lowest terms; carries the sign. */
  public BigInteger numerator() {
    return numerator;
  }

  /** The denominator in lowest terms; positive. */
  public BigInteger denominator() {
    return denominator;
  }

  /** The decimal rounded half-even to {@code digits} places after the point. */
  public BigDecimal toDecimal(int digits) {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), digits, java.math.RoundingMode.HALF_EVEN);
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rational that
        && numerator.equals(that.numerator)
        && denominator.equals(that.denominator);
  }

  @Override
  public int hashCode() {
    return Objects.hash(numerator, denominator);
  }

  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
