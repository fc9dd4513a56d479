package org.rimefast.plan.geometry;

/**
 * An upright cuboid in module coordinates (see {@link Point}), in millimetres; every {@code min} is
 * at most its {@code max}.
 */
public record Cuboid(
    double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {}
