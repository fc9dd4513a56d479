package org.rimefast.units;

/**
 * An exact amount of a unit, and how its author wrote it.
 *
 * <p>{@code 2 in} and {@code 50 mm} are different quantities; {@code 2 in} and {@code 50.8 mm} have
 * the same {@link #si()} and differ in how they print.
 *
 * @param number how many of the unit
 * @param unit the unit; for {@code 5 ft 6 in} the first one written
 * @param text as written, with single spaces: {@code 5 ft 6-1/2 in}
 */
public record Quantity(Rational number, Unit unit, String text) {
  /** The exact value in SI units. */
  public Rational si() {
    return unit.toSi(number);
  }

  /** The value in SI units, rounded to the nearest double. */
  public double siDouble() {
    return si().toDouble();
  }

  /** What it measures. */
  public Dimension dimension() {
    return unit.dimension();
  }

  @Override
  public String toString() {
    return text;
  }
}
