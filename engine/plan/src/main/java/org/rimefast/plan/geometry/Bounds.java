package org.rimefast.plan.geometry;

/**
 * What a measure lies between, within the tolerances that a plan states. NaN for both if a value is
 * missing.
 *
 * @param least the least that it can be
 * @param most the most that it can be
 */
public record Bounds(double least, double most) {
  /** A value is missing. */
  public static final Bounds MISSING = new Bounds(Double.NaN, Double.NaN);

  /** False if a value is missing. */
  public boolean isKnown() {
    return !Double.isNaN(least);
  }
}
