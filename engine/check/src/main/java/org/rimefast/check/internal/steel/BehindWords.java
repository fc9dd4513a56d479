package org.rimefast.check.internal.steel;

import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.Face;
import org.rimefast.plan.geometry.Cuboid;
import org.rimefast.plan.geometry.FaceFrame;

/** Words for what stands between a part and the shell. */
final class BehindWords {
  private BehindWords() {}

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.verb(Nouns.PART, "pass behind _", "passes behind _", Kinds.element(Nouns.PART)),
        BehindWords::passesBehind,
        BehindWords::candidates,
        BehindWords::candidates,
        BehindWords::explain);
  }

  /**
   * A part passes behind another on the same face if, seen from the room, they overlap and its
   * middle is nearer to the shell than the other's.
   */
  private static Truth passesBehind(PlanFacts facts, int element, Arguments arguments) {
    int other = arguments.element(0);
    Face face = facts.part(element).face();
    if (element == other || face != facts.part(other).face()) {
      return Truth.FALSE;
    }
    Cuboid a = facts.geometry().cuboid(element);
    Cuboid b = facts.geometry().cuboid(other);
    if (Extents.apart(facts, element, other, 0)) {
      return Truth.FALSE;
    }
    if (a == null || b == null) {
      return Truth.UNKNOWN;
    }
    FaceFrame frame = facts.geometry().frame(face);
    double tolerance = facts.geometry().gapTolerance(element, other);
    double along =
        overlap(
            frame.along(a.minX(), a.minY()),
            frame.along(a.maxX(), a.maxY()),
            frame.along(b.minX(), b.minY()),
            frame.along(b.maxX(), b.maxY()));
    double up =
        overlap(
            frame.up(a.minY(), a.minZ()),
            frame.up(a.maxY(), a.maxZ()),
            frame.up(b.minY(), b.minZ()),
            frame.up(b.maxY(), b.maxZ()));
    double overlap = Math.min(along, up);
    double deeper = middleOut(frame, a) - middleOut(frame, b);
    return Touch.more(overlap, tolerance).and(Touch.more(deeper, tolerance));
  }

  private static void candidates(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    PossibleParts.of(facts).near(element, 0, candidates);
  }

  /** How far two stretches overlap; negative if they do not. */
  private static double overlap(double a1, double a2, double b1, double b2) {
    return Math.min(Math.max(a1, a2), Math.max(b1, b2))
        - Math.max(Math.min(a1, a2), Math.min(b1, b2));
  }

  private static double middleOut(FaceFrame frame, Cuboid c) {
    return (frame.out(c.minX(), c.minY(), c.minZ()) + frame.out(c.maxX(), c.maxY(), c.maxZ())) / 2;
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    for (int handle : new int[] {element, arguments.element(0)}) {
      facts.geometry().missing(handle).forEach(pointer -> out.missing(facts.missing(pointer)));
    }
  }
}
