/**
 * The geometry of a module: exact distances to the corrugated sheet, what an element faces, and
 * what touches what. Lengths in millimetres.
 *
 * <p>What enters: a {@link org.rimefast.plan.Plan}. What leaves: positions, distances with the
 * points that they are taken between, bounds on how far each may be off, and the JSON pointers of
 * what is missing. What may never be in it: limits, verdicts, or a guess for a missing value.
 *
 * <p>Three kinds of coordinates: of the module ({@link org.rimefast.plan.geometry.Point}), of a
 * face ({@link org.rimefast.plan.geometry.FaceFrame}) and, inside only, of a sheet: s across its
 * ribs, t along them, o outward. A sheet does not change along t, so a distance to a piece of it
 * splits into an interval in t and a section in the plane of s and o.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.plan.geometry;
