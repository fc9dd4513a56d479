package org.rimefast.units;

/**
 * A unit: {@code SI value = number * factor + offset}, exactly.
 *
 * @param symbol the spelling that is printed, such as {@code mm} or {@code W/(m2 K)}
 * @param dimension what it measures
 * @param factor how many SI units one of it is
 * @param offset the SI value at its zero; zero but for temperatures
 */
public record Unit(String symbol, Dimension dimension, Rational factor, Rational offset) {
  /** The exact SI value of {@code number} of this unit. */
  public Rational toSi(Rational number) {
    return number.times(factor).plus(offset);
  }

  /** The exact number of this unit that makes the SI value {@code si}. */
  public Rational fromSi(Rational si) {
    return si.minus(offset).dividedBy(factor);
  }

  /** The number of this unit that makes the SI value {@code si}, for printing. */
  public double fromSi(double si) {
    return (si - offset.toDouble()) / factor.toDouble();
  }

  @Override
  public String toString() {
    return symbol;
  }
}
