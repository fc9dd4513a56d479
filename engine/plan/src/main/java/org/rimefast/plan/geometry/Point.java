package org.rimefast.plan.geometry;

/**
 * A point in module coordinates, in millimetres from the crests of the inward ribs.
 *
 * @param x from the rear end to the front
 * @param y from the left wall to the right
 * @param z from the floor to the roof
 */
public record Point(double x, double y, double z) {
  /** The straight distance to another point. */
  public double distanceTo(Point other) {
    return Distances.norm(x - other.x, y - other.y, z - other.z);
  }
}
