package org.rimefast.plan.geometry;

/** What is known of a question that tolerances or missing values may leave open. */
public enum Certainty {
  NO,
  POSSIBLE,
  YES;

  /** NO if either is, else POSSIBLE if either is. */
  public Certainty and(Certainty other) {
    return compareTo(other) < 0 ? this : other;
  }

  /** YES if either is, else POSSIBLE if either is. */
  public Certainty or(Certainty other) {
    return compareTo(other) > 0 ? this : other;
  }

  /** Whether a number that may be off by a tolerance is more than 0; POSSIBLE for NaN. */
  static Certainty more(double value, double tolerance) {
    if (value > tolerance + Distances.ROUNDING) {
      return YES;
    }
    return value <= Distances.ROUNDING - tolerance ? NO : POSSIBLE;
  }

  /** Whether a number that may be off by a tolerance is at least 0; POSSIBLE for NaN. */
  static Certainty notNegative(double value, double tolerance) {
    if (value >= tolerance - Distances.ROUNDING) {
      return YES;
    }
    return value < -tolerance - Distances.ROUNDING ? NO : POSSIBLE;
  }
}
