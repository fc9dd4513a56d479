package org.rimefast.check.internal;

import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Comparison;

/**
 * Comparing numbers that are known only to lie between two ends.
 *
 * <p>Two numbers nearer than a guard count as equal, since a distance that is 50.8 mm on paper may
 * come out of the arithmetic as 50.799999999999. The guard is 1e-9 of the numbers themselves, and
 * 1e-12 SI units where they are small: less than a thousandth of a cubic centimetre, which matters
 * where boxes are filled to the last of them.
 */
public final class Intervals {
  private static final double GUARD = 1e-9;
  private static final double SMALL = 1e-3;

  private Intervals() {}

  /** How near two numbers must be to count as equal. */
  public static double guard(double a, double b) {
    double guard = GUARD * Math.max(SMALL, Math.max(Math.abs(a), Math.abs(b)));
    return guard < Double.POSITIVE_INFINITY ? guard : 0;
  }

  /** What is known of {@code left comparison right}. */
  public static Truth compare(
      Comparison comparison,
      double leftLeast,
      double leftMost,
      double rightLeast,
      double rightMost) {
    return switch (comparison) {
      case AT_LEAST -> atLeast(leftLeast, leftMost, rightLeast, rightMost);
      case AT_MOST -> atLeast(rightLeast, rightMost, leftLeast, leftMost);
      case LESS_THAN -> atLeast(leftLeast, leftMost, rightLeast, rightMost).not();
      case MORE_THAN -> atLeast(rightLeast, rightMost, leftLeast, leftMost).not();
      case EQUAL -> equal(leftLeast, leftMost, rightLeast, rightMost);
      case NOT_EQUAL -> equal(leftLeast, leftMost, rightLeast, rightMost).not();
    };
  }

  private static Truth atLeast(
      double leftLeast, double leftMost, double rightLeast, double rightMost) {
    if (leftLeast >= rightMost - guard(leftLeast, rightMost)) {
      return Truth.TRUE;
    }
    return leftMost < rightLeast - guard(leftMost, rightLeast) ? Truth.FALSE : Truth.UNKNOWN;
  }

  private static Truth equal(
      double leftLeast, double leftMost, double rightLeast, double rightMost) {
    if (leftMost < rightLeast - guard(leftMost, rightLeast)
        || rightMost < leftLeast - guard(rightMost, leftLeast)) {
      return Truth.FALSE;
    }
    double widest = Math.max(leftMost, rightMost) - Math.min(leftLeast, rightLeast);
    return widest <= guard(leftMost, rightMost) ? Truth.TRUE : Truth.UNKNOWN;
  }
}
