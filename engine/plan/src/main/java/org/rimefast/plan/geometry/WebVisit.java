package org.rimefast.plan.geometry;

/**
 * A stretch of a line that stays within the tolerance of the plane of a stud's web. Where the plane
 * is exact it is a point, or a stretch that lies in it.
 *
 * <p>Whatever the line's true place, it meets the plane only at points that are drawn within the
 * stretch. So it certainly goes through the web if the stretch comes in on one side of the plane,
 * leaves on the other, and lies within the web's outline made smaller by the tolerance; and it
 * certainly does not if no point lies within the outline made larger.
 */
final class WebVisit {
  private final double upMin;
  private final double upMax;
  private final double outMin;
  private final double outMax;
  private final double upTolerance;
  private final double outTolerance;

  private int entered; // the side that it comes from: -1, 1, or 0 if the line begins within
  private int left;
  private double nearest; // least distance from the plane, as drawn
  private boolean allInside;
  private boolean anyInside;
  private boolean anyNear;

  double up; // where it is nearest to the plane
  double out;
  double leastUp;
  double mostUp;
  double leastOut;
  double mostOut;
  double upSlope; // the steepest, against the plane's normal
  double outSlope;

  WebVisit(
      double upMin,
      double upMax,
      double outMin,
      double outMax,
      double upTolerance,
      double outTolerance) {
    this.upMin = upMin;
    this.upMax = upMax;
    this.outMin = outMin;
    this.outMax = outMax;
    this.upTolerance = upTolerance;
    this.outTolerance = outTolerance;
  }

  /** Begins a stretch that comes from a side. */
  void enter(int side) {
    entered = side;
    left = 0;
    nearest = Double.POSITIVE_INFINITY;
    allInside = true;
    anyInside = false;
    anyNear = false;
    leastUp = Double.POSITIVE_INFINITY;
    mostUp = Double.NEGATIVE_INFINITY;
    leastOut = Double.POSITIVE_INFINITY;
    mostOut = Double.NEGATIVE_INFINITY;
    upSlope = 0;
    outSlope = 0;
  }

  /** Ends it on a side. */
  void leave(int side) {
    left = side;
  }

  /** Adds a straight piece: distance from the plane, up and out of both its ends. */
  void add(double d1, double u1, double o1, double d2, double u2, double o2) {
    leastUp = Math.min(leastUp, Math.min(u1, u2));
    mostUp = Math.max(mostUp, Math.max(u1, u2));
    leastOut = Math.min(leastOut, Math.min(o1, o2));
    mostOut = Math.max(mostOut, Math.max(o1, o2));
    allInside &= inside(u1, o1, -upTolerance, -outTolerance);
    allInside &= inside(u2, o2, -upTolerance, -outTolerance);
    anyInside |= meets(u1, o1, u2, o2, -upTolerance, -outTolerance);
    anyNear |= meets(u1, o1, u2, o2, upTolerance, outTolerance);
    double t = d1 * d2 < 0 ? d1 / (d1 - d2) : Math.abs(d1) <= Math.abs(d2) ? 0 : 1;
    double distance = Math.abs(d1 + t * (d2 - d1));
    if (distance < nearest) {
      nearest = distance;
      up = u1 + t * (u2 - u1);
      out = o1 + t * (o2 - o1);
    }
  }

  /** How steeply the segment that a piece belongs to goes past the plane. */
  void slope(double along, double alongUp, double alongOut) {
    boolean level = along == 0; // it lies in the plane, and no hole holds it
    upSlope = level ? Double.POSITIVE_INFINITY : Math.max(upSlope, Math.abs(alongUp / along));
    outSlope = level ? Double.POSITIVE_INFINITY : Math.max(outSlope, Math.abs(alongOut / along));
  }

  private boolean inside(double u, double o, double marginAlong, double marginAcross) {
    double marginUp = marginAlong + Distances.ROUNDING;
    double marginOut = marginAcross + Distances.ROUNDING;
    return u >= upMin - marginUp
        && u <= upMax + marginUp
        && o >= outMin - marginOut
        && o <= outMax + marginOut;
  }

  private boolean meets(
      double u1, double o1, double u2, double o2, double marginAlong, double marginAcross) {
    // What lies on an edge lies within, whichever way its place was rounded.
    double marginUp = marginAlong + Distances.ROUNDING;
    double marginOut = marginAcross + Distances.ROUNDING;
    double low = 0;
    double high = 1;
    for (int side = 0; side < 4; side++) {
      // Outside a side where the value is more than 0.
      double v1 =
          switch (side) {
            case 0 -> upMin - marginUp - u1;
            case 1 -> u1 - upMax - marginUp;
            case 2 -> outMin - marginOut - o1;
            default -> o1 - outMax - marginOut;
          };
      double v2 =
          switch (side) {
            case 0 -> upMin - marginUp - u2;
            case 1 -> u2 - upMax - marginUp;
            case 2 -> outMin - marginOut - o2;
            default -> o2 - outMax - marginOut;
          };
      if (v1 > 0 && v2 > 0) {
        return false;
      }
      if (v1 > 0) {
        low = Math.max(low, v1 / (v1 - v2));
      } else if (v2 > 0) {
        high = Math.min(high, v1 / (v1 - v2));
      }
    }
    return low <= high;
  }

  /** Whether the line goes through the web here. */
  Certainty passes(boolean planeIsExact) {
    boolean through = entered * left < 0;
    if (!anyNear || (planeIsExact && !through)) {
      return Certainty.NO;
    }
    return through && (planeIsExact ? anyInside : allInside) ? Certainty.YES : Certainty.POSSIBLE;
  }
}
