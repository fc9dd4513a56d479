package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

/**
 * How much of a middle line lies near another one. Allocates nothing.
 *
 * <p>The distance from a point to a straight stretch is convex as the point moves along a line, so
 * what lies near one stretch is one interval; those of all stretches are joined.
 */
final class LinesSideBySide {
  /** Halving an interval so often leaves less of it than a double can tell. */
  private static final int HALVINGS = 55;

  private LinesSideBySide() {}

  /** The length of what lies within {@code reach} of the other line: three numbers a point. */
  static double length(double[] line, double[] other, double reach) {
    double length = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      double share = share(line, i, other, reach);
      length +=
          share * norm(line[i + 3] - line[i], line[i + 4] - line[i + 1], line[i + 5] - line[i + 2]);
    }
    return length;
  }

  /** The share of one straight stretch that lies near any of the other line. */
  private static double share(double[] line, int i, double[] other, double reach) {
    double covered = 0;
    double done = 0;
    while (done < 1) {
      double from = Double.POSITIVE_INFINITY;
      double to = done;
      for (int j = 0; j + 5 < other.length; j += 3) {
        double start = start(line, i, i + 3, other, j, reach);
        double end = Double.isNaN(start) ? start : 1 - start(line, i + 3, i, other, j, reach);
        // No comparison holds for the NaN of a stretch that is nowhere near.
        if (end > done) {
          start = Math.max(start, done);
          if (start < from || (start == from && end > to)) {
            from = start;
            to = end;
          }
        }
      }
      if (to <= done) {
        return covered;
      }
      covered += to - from;
      done = to;
    }
    return covered;
  }

  /**
   * From where on, as a share of the way from point a to point b, a line lies near the stretch of
   * the other line from c on; NaN if nowhere.
   */
  private static double start(double[] line, int a, int b, double[] other, int c, double reach) {
    if (distance(line, a, b, 0, other, c) <= reach) {
      return 0;
    }
    double near =
        SegmentPair.nearestAt(
            line[a],
            line[a + 1],
            line[a + 2],
            line[b],
            line[b + 1],
            line[b + 2],
            other[c],
            other[c + 1],
            other[c + 2],
            other[c + 3],
            other[c + 4],
            other[c + 5]);
    if (distance(line, a, b, near, other, c) > reach) {
      return Double.NaN;
    }
    double far = 0;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (far + near) / 2;
      if (distance(line, a, b, middle, other, c) <= reach) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return near;
  }

  private static double distance(double[] line, int a, int b, double t, double[] other, int c) {
    double x = line[a] + t * (line[b] - line[a]);
    double y = line[a + 1] + t * (line[b + 1] - line[a + 1]);
    double z = line[a + 2] + t * (line[b + 2] - line[a + 2]);
    double u =
        SegmentPair.nearestAt(
            other[c],
            other[c + 1],
            other[c + 2],
            other[c + 3],
            other[c + 4],
            other[c + 5],
            x,
            y,
            z);
    return norm(
        other[c] + u * (other[c + 3] - other[c]) - x,
        other[c + 1] + u * (other[c + 4] - other[c + 1]) - y,
        other[c + 2] + u * (other[c + 5] - other[c + 2]) - z);
  }
}
