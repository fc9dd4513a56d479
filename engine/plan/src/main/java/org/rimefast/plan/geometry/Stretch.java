package org.rimefast.plan.geometry;

/**
 * A stretch of one zone that a part of a face covers. Lengths in millimetres along the direction in
 * which the profile varies.
 *
 * @param zone which zone
 * @param number its number among the stretches of that zone, counted from 1 at the end where the
 *     coordinate is 0, as far as they lie in the face
 * @param from where the zone's stretch starts
 * @param to where it ends
 * @param coveredFrom where the covered part of it starts
 * @param coveredTo where the covered part of it ends
 */
public record Stretch(
    Zone zone, int number, double from, double to, double coveredFrom, double coveredTo) {}
