package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.clamp;

/** Where two cuboids are nearest: in the middle of what they have in common along each axis. */
final class Cuboids {
  private Cuboids() {}

  static Nearest nearest(Cuboid a, Cuboid b) {
    double x = middle(a.minX(), a.maxX(), b.minX(), b.maxX());
    double y = middle(a.minY(), a.maxY(), b.minY(), b.maxY());
    double z = middle(a.minZ(), a.maxZ(), b.minZ(), b.maxZ());
    Point onA = within(x, y, z, a);
    Point onB = within(x, y, z, b);
    return new Nearest(onA.distanceTo(onB), onA, onB);
  }

  private static double middle(double aMin, double aMax, double bMin, double bMax) {
    return (Math.max(aMin, bMin) + Math.min(aMax, bMax)) / 2;
  }

  private static Point within(double x, double y, double z, Cuboid box) {
    return new Point(
        clamp(x, box.minX(), box.maxX()),
        clamp(y, box.minY(), box.maxY()),
        clamp(z, box.minZ(), box.maxZ()));
  }
}
