package org.rimefast.plan.geometry;

/**
 * Distance between two straight segments in space. Allocates nothing.
 *
 * <p>The distance from a point of the first segment to the second is convex along the first, so the
 * least one is found either where both middle lines come nearest, or at one of the four ends.
 */
final class SegmentPair {
  private SegmentPair() {}

  /** Where on segment p-q, from 0 to 1, the point nearest to the point r lies. */
  static double nearestAt(
      double px,
      double py,
      double pz,
      double qx,
      double qy,
      double qz,
      double rx,
      double ry,
      double rz) {
    double dx = qx - px;
    double dy = qy - py;
    double dz = qz - pz;
    double square = dx * dx + dy * dy + dz * dz;
    if (square == 0) {
      return 0;
    }
    double along = (rx - px) * dx + (ry - py) * dy + (rz - pz) * dz;
    return Distances.clamp(along / square, 0, 1);
  }

  /** Where on segment a-b, from 0 to 1, a point nearest to segment c-d lies. */
  static double nearestAt(
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz,
      double dx,
      double dy,
      double dz) {
    double best = 0;
    double least = pointSegment(ax, ay, az, cx, cy, cz, dx, dy, dz);
    double distance = pointSegment(bx, by, bz, cx, cy, cz, dx, dy, dz);
    if (distance < least) {
      least = distance;
      best = 1;
    }
    for (int candidate = 0; candidate < 3; candidate++) {
      double t =
          switch (candidate) {
            case 0 -> nearestAt(ax, ay, az, bx, by, bz, cx, cy, cz);
            case 1 -> nearestAt(ax, ay, az, bx, by, bz, dx, dy, dz);
            default -> nearestOnLines(ax, ay, az, bx, by, bz, cx, cy, cz, dx, dy, dz);
          };
      if (t >= 0 && t <= 1) {
        distance =
            pointSegment(
                ax + t * (bx - ax), ay + t * (by - ay), az + t * (bz - az), cx, cy, cz, dx, dy, dz);
        if (distance < least) {
          least = distance;
          best = t;
        }
      }
    }
    return best;
  }

  /** The least distance between the segments a-b and c-d. */
  static double distance(
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz,
      double dx,
      double dy,
      double dz) {
    double t = nearestAt(ax, ay, az, bx, by, bz, cx, cy, cz, dx, dy, dz);
    return pointSegment(
        ax + t * (bx - ax), ay + t * (by - ay), az + t * (bz - az), cx, cy, cz, dx, dy, dz);
  }

  private static double pointSegment(
      double rx,
      double ry,
      double rz,
      double px,
      double py,
      double pz,
      double qx,
      double qy,
      double qz) {
    double t = nearestAt(px, py, pz, qx, qy, qz, rx, ry, rz);
    return Distances.norm(
        px + t * (qx - px) - rx, py + t * (qy - py) - ry, pz + t * (qz - pz) - rz);
  }

  /** Where the line a-b comes nearest to the line c-d; NaN or infinite if they are parallel. */
  private static double nearestOnLines(
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz,
      double dx,
      double dy,
      double dz) {
    double ux = bx - ax;
    double uy = by - ay;
    double uz = bz - az;
    double vx = dx - cx;
    double vy = dy - cy;
    double vz = dz - cz;
    double wx = ax - cx;
    double wy = ay - cy;
    double wz = az - cz;
    double uu = ux * ux + uy * uy + uz * uz;
    double uv = ux * vx + uy * vy + uz * vz;
    double vv = vx * vx + vy * vy + vz * vz;
    double uw = ux * wx + uy * wy + uz * wz;
    double vw = vx * wx + vy * wy + vz * wz;
    return (uv * vw - vv * uw) / (uu * vv - uv * uv);
  }
}
