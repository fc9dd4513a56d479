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
import org.rimefast.plan.geometry.ModuleGeometry;

/** Words for what stands between a part and the room. */
final class CoverWords {
  private static final PlanFacts.Key<Spread> SPREAD =
      new PlanFacts.Key<>("spread of depths", Spread.class);

  private CoverWords() {}

  /**
   * What a search for parts before others must allow for.
   *
   * @param depth the most that one part of a face may stand before another
   */
  private record Spread(double depth) {
    static Spread of(PlanFacts facts) {
      int faces = Face.values().length;
      double[] least = new double[faces];
      double[] most = new double[faces];
      double tolerance = 0;
      for (int handle : facts.members(Nouns.PART)) {
        Cuboid cuboid = facts.geometry().cuboid(handle);
        if (cuboid != null) {
          Face face = facts.part(handle).face();
          double roomSide = roomSide(facts.geometry().frame(face), cuboid);
          least[face.ordinal()] = Math.min(least[face.ordinal()], roomSide);
          most[face.ordinal()] = Math.max(most[face.ordinal()], roomSide);
          tolerance = Math.max(tolerance, facts.geometry().positionTolerance(handle));
        }
      }
      double depth = 0;
      for (int face = 0; face < faces; face++) {
        depth = Math.max(depth, most[face] - least[face]);
      }
      return new Spread(depth + 2 * tolerance + Touch.ROUNDING);
    }
  }

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.being(Nouns.PART, "covered by _", Kinds.element(Nouns.PART)),
        CoverWords::isCovered,
        CoverWords::candidates,
        CoverWords::candidates,
        CoverWords::explain);
  }

  /**
   * A part is covered by another of the same face if, seen from the room, all of it lies within the
   * other, whose room side is nearer to the room.
   */
  private static Truth isCovered(PlanFacts facts, int element, Arguments arguments) {
    int other = arguments.element(0);
    Face face = facts.part(element).face();
    if (element == other || face != facts.part(other).face()) {
      return Truth.FALSE;
    }
    ModuleGeometry geometry = facts.geometry();
    Cuboid a = geometry.cuboid(element);
    Cuboid b = geometry.cuboid(other);
    if (a == null || b == null) {
      return Extents.apart(facts, element, other, 0) ? Truth.FALSE : Truth.UNKNOWN;
    }
    FaceFrame frame = geometry.frame(face);
    double tolerance = geometry.gapTolerance(element, other);
    double along =
        beyond(
            frame.along(a.minX(), a.minY()),
            frame.along(a.maxX(), a.maxY()),
            frame.along(b.minX(), b.minY()),
            frame.along(b.maxX(), b.maxY()));
    double up =
        beyond(
            frame.up(a.minY(), a.minZ()),
            frame.up(a.maxY(), a.maxZ()),
            frame.up(b.minY(), b.minZ()),
            frame.up(b.maxY(), b.maxZ()));
    double before = roomSide(frame, a) - roomSide(frame, b);
    return Touch.more(Math.max(along, up), tolerance).not().and(Touch.more(before, tolerance));
  }

  /** How far one stretch reaches beyond another; not more than 0 if it lies within. */
  private static double beyond(double a1, double a2, double b1, double b2) {
    return Math.max(Math.min(b1, b2) - Math.min(a1, a2), Math.max(a1, a2) - Math.max(b1, b2));
  }

  private static double roomSide(FaceFrame frame, Cuboid cuboid) {
    return Math.min(
        frame.out(cuboid.minX(), cuboid.minY(), cuboid.minZ()),
        frame.out(cuboid.maxX(), cuboid.maxY(), cuboid.maxZ()));
  }

  private static void candidates(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    if (facts.geometry().cuboid(element) == null) {
      PossibleParts.of(facts).near(element, 0, candidates);
      return;
    }
    Spread spread = facts.keep(SPREAD, Spread::of);
    facts.geometry().partsWithinInAnyOrder(element, spread.depth, candidates);
    PossibleParts.of(facts).unplacedNear(element, 0, candidates);
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    for (int handle : new int[] {element, arguments.element(0)}) {
      facts.geometry().missing(handle).forEach(pointer -> out.missing(facts.missing(pointer)));
    }
  }
}
