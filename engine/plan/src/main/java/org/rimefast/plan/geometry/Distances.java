package org.rimefast.plan.geometry;

/** Distances between intervals, points and boxes. Allocates nothing. */
final class Distances {
  /** Millimetres that the arithmetic may be off; far less than anything that can be built. */
  static final double ROUNDING = 1e-6;

  private Distances() {}

  /** Length of a vector; unlike hypot it is a few additions, and no value here can overflow. */
  static double norm(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  static double norm(double x, double y, double z) {
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Distance between two intervals; 0 if they meet. */
  static double gap(double aMin, double aMax, double bMin, double bMax) {
    return Math.max(0, Math.max(bMin - aMax, aMin - bMax));
  }

  /** How far a value lies beyond an interval: negative below, positive above, 0 inside. */
  static double beyond(double value, double min, double max) {
    return value < min ? value - min : value > max ? value - max : 0;
  }

  static double clamp(double value, double min, double max) {
    return value < min ? min : Math.min(value, max);
  }
}
