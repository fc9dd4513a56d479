package org.rimefast.check.internal.steel;

import org.rimefast.check.Truth;
import org.rimefast.plan.geometry.Certainty;

/** When two bodies touch. */
final class Touch {
  /** Millimetres that the arithmetic may be off; far less than anything that can be built. */
  static final double ROUNDING = 1e-6;

  private Touch() {}

  /**
   * Bodies that are drawn in contact touch; bodies that the tolerance keeps apart do not. Between,
   * it is unknown.
   *
   * @param gap the gap as drawn; NaN if data is missing
   * @param tolerance how much the gap may differ from what is drawn
   * @param contact the gap up to which bodies touch
   */
  static Truth decide(double gap, double tolerance, double contact) {
    if (Double.isNaN(gap)) {
      return Truth.UNKNOWN;
    }
    if (gap <= contact + ROUNDING) {
      return Truth.TRUE;
    }
    return gap - tolerance > contact + ROUNDING ? Truth.FALSE : Truth.UNKNOWN;
  }

  /** What is certain is true, what is possible is unknown. */
  static Truth truth(Certainty certainty) {
    return switch (certainty) {
      case NO -> Truth.FALSE;
      case POSSIBLE -> Truth.UNKNOWN;
      case YES -> Truth.TRUE;
    };
  }

  /** Whether a number that may be off by a tolerance is more than 0. */
  static Truth more(double value, double tolerance) {
    if (value > tolerance + ROUNDING) {
      return Truth.TRUE;
    }
    return value <= ROUNDING - tolerance ? Truth.FALSE : Truth.UNKNOWN;
  }
}
