package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.beyond;

/**
 * Distance between a straight segment and a box whose sides are parallel to the axes. A side of no
 * length makes the box a rectangle, one without end a half-space. Allocates nothing.
 *
 * <p>Half the square of the distance from the segment's point at t (0 at its start, 1 at its end)
 * to the box is convex in t, and its slope is continuous, piecewise linear and bends only where the
 * segment crosses a plane of the box. So those crossings close in on the minimum, and between the
 * two that are left the slope is a straight line whose zero is exact.
 */
final class SegmentBox {
  private SegmentBox() {}

  /** Where on the segment, from 0 to 1, a point nearest to the box lies. */
  static double nearestAt(
      double px,
      double py,
      double pz,
      double qx,
      double qy,
      double qz, // the segment's ends
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ) {
    double dx = qx - px;
    double dy = qy - py;
    double dz = qz - pz;
    double low = 0;
    double high = 1;
    double lowSlope =
        beyond(px, minX, maxX) * dx + beyond(py, minY, maxY) * dy + beyond(pz, minZ, maxZ) * dz;
    if (!(lowSlope < 0)) {
      return 0;
    }
    double highSlope =
        beyond(qx, minX, maxX) * dx + beyond(qy, minY, maxY) * dy + beyond(qz, minZ, maxZ) * dz;
    if (!(highSlope > 0)) {
      return 1;
    }
    for (int plane = 0; plane < 6; plane++) {
      // A segment parallel to the plane divides by zero; no comparison holds for what comes of it.
      double t =
          switch (plane) {
            case 0 -> (minX - px) / dx;
            case 1 -> (maxX - px) / dx;
            case 2 -> (minY - py) / dy;
            case 3 -> (maxY - py) / dy;
            case 4 -> (minZ - pz) / dz;
            default -> (maxZ - pz) / dz;
          };
      if (t > low && t < high) {
        double slope =
            beyond(px + t * dx, minX, maxX) * dx
                + beyond(py + t * dy, minY, maxY) * dy
                + beyond(pz + t * dz, minZ, maxZ) * dz;
        if (slope < 0) {
          low = t;
          lowSlope = slope;
        } else if (slope > 0) {
          high = t;
          highSlope = slope;
        } else {
          return t;
        }
      }
    }
    return low + (high - low) * lowSlope / (lowSlope - highSlope);
  }

  /** The least distance; 0 if they meet. */
  static double distance(
      double px,
      double py,
      double pz,
      double qx,
      double qy,
      double qz, // the segment's ends
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ) {
    double t = nearestAt(px, py, pz, qx, qy, qz, minX, minY, minZ, maxX, maxY, maxZ);
    return Distances.norm(
        beyond(px + t * (qx - px), minX, maxX),
        beyond(py + t * (qy - py), minY, maxY),
        beyond(pz + t * (qz - pz), minZ, maxZ));
  }
}
