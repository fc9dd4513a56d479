package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.clamp;

/** Distances of middle lines of runs to boxes and to each other: three numbers a point. */
final class Lines {
  private Lines() {}

  /** Distance from a line to the box at {@code 6 * box}: least, then greatest x, y, z. */
  static double distanceToBox(double[] line, double[] boxes, int box) {
    int b = 6 * box;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 5 < line.length; i += 3) {
      best =
          Math.min(
              best,
              SegmentBox.distance(
                  line[i],
                  line[i + 1],
                  line[i + 2],
                  line[i + 3],
                  line[i + 4],
                  line[i + 5],
                  boxes[b],
                  boxes[b + 1],
                  boxes[b + 2],
                  boxes[b + 3],
                  boxes[b + 4],
                  boxes[b + 5]));
    }
    return best;
  }

  static double distance(double[] a, double[] b) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 5 < a.length; i += 3) {
      for (int j = 0; j + 5 < b.length; j += 3) {
        best =
            Math.min(
                best,
                SegmentPair.distance(
                    a[i], a[i + 1], a[i + 2], a[i + 3], a[i + 4], a[i + 5], b[j], b[j + 1],
                    b[j + 2], b[j + 3], b[j + 4], b[j + 5]));
      }
    }
    return best;
  }

  /** Where a line is nearest to a box. */
  static Nearest nearestToBox(double[] line, Cuboid box) {
    Nearest best = new Nearest(Double.POSITIVE_INFINITY, new Point(0, 0, 0), new Point(0, 0, 0));
    for (int i = 0; i + 5 < line.length; i += 3) {
      double t =
          SegmentBox.nearestAt(
              line[i],
              line[i + 1],
              line[i + 2],
              line[i + 3],
              line[i + 4],
              line[i + 5],
              box.minX(),
              box.minY(),
              box.minZ(),
              box.maxX(),
              box.maxY(),
              box.maxZ());
      Point on = at(line, i, t);
      Point other =
          new Point(
              clamp(on.x(), box.minX(), box.maxX()),
              clamp(on.y(), box.minY(), box.maxY()),
              clamp(on.z(), box.minZ(), box.maxZ()));
      double distance = on.distanceTo(other);
      if (distance < best.distance()) {
        best = new Nearest(distance, on, other);
      }
    }
    return best;
  }

  /** Where two lines are nearest. */
  static Nearest nearest(double[] a, double[] b) {
    Nearest best = new Nearest(Double.POSITIVE_INFINITY, new Point(0, 0, 0), new Point(0, 0, 0));
    for (int i = 0; i + 5 < a.length; i += 3) {
      for (int j = 0; j + 5 < b.length; j += 3) {
        double t =
            SegmentPair.nearestAt(
                a[i], a[i + 1], a[i + 2], a[i + 3], a[i + 4], a[i + 5], b[j], b[j + 1], b[j + 2],
                b[j + 3], b[j + 4], b[j + 5]);
        Point on = at(a, i, t);
        double u =
            SegmentPair.nearestAt(
                b[j], b[j + 1], b[j + 2], b[j + 3], b[j + 4], b[j + 5], on.x(), on.y(), on.z());
        Point other = at(b, j, u);
        double distance = on.distanceTo(other);
        if (distance < best.distance()) {
          best = new Nearest(distance, on, other);
        }
      }
    }
    return best;
  }

  private static Point at(double[] line, int i, double t) {
    return new Point(
        line[i] + t * (line[i + 3] - line[i]),
        line[i + 1] + t * (line[i + 4] - line[i + 1]),
        line[i + 2] + t * (line[i + 5] - line[i + 2]));
  }

  /** The same for a bar of this radius around the first body; both points are one if they meet. */
  static Nearest outside(Nearest middle, double radius) {
    if (middle.distance() <= radius) {
      return new Nearest(0, middle.onOther(), middle.onOther());
    }
    return new Nearest(
        middle.distance() - radius,
        toward(middle.onElement(), middle.onOther(), radius / middle.distance()),
        middle.onOther());
  }

  /** The same with the two bodies exchanged. */
  static Nearest exchanged(Nearest nearest) {
    return new Nearest(
        nearest.distance(), /* onElement= */ nearest.onOther(), /* onOther= */ nearest.onElement());
  }

  private static Point toward(Point from, Point to, double share) {
    return new Point(
        from.x() + share * (to.x() - from.x()),
        from.y() + share * (to.y() - from.y()),
        from.z() + share * (to.z() - from.z()));
  }
}
