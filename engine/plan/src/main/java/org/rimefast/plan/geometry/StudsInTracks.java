package org.rimefast.plan.geometry;

import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;

/**
 * Which studs stand with an end in a track: a C section between the legs of a U section. Both are
 * boxes here, drawn in one place, and yet neither is in the other's way.
 *
 * <p>The end of a stud is in a track that it meets if the stud does not reach past the track at
 * both its ends, and lies between the track's legs, of which one is on its room side and one on its
 * shell side: a stud that is deeper than the track does not go in. As with all that is drawn to
 * touch, what reaches past by no more than the contact tolerance is fitted on site.
 */
final class StudsInTracks {
  private static final int AXES = 3;

  private final Plan plan;
  private final PartGeometry parts;
  private final double contact;

  StudsInTracks(Plan plan, PartGeometry parts, double contact) {
    this.plan = plan;
    this.parts = parts;
    this.contact = contact;
  }

  private boolean isPair(int stud, int track) {
    return plan.parts().get(stud) instanceof Part.Stud
        && plan.parts().get(track) instanceof Part.Track;
  }

  /**
   * How far the stud of a stud and a track reaches out of the track, past it at both ends or past a
   * leg; 0 or less if it does not, NaN if that is not known or they are no such pair.
   */
  double out(int partA, int partB) {
    if (isPair(partA, partB)) {
      return Math.max(pastAtBothEnds(partA, partB), pastALeg(partA, partB));
    }
    return isPair(partB, partA) ? out(partB, partA) : Double.NaN;
  }

  /** NO for a stud and a track, if the stud does not reach out of it; YES for any other parts. */
  Certainty reachesOut(int partA, int partB) {
    if (!isPair(partA, partB)) {
      return isPair(partB, partA) ? reachesOut(partB, partA) : Certainty.YES;
    }
    FaceFrame frame = parts.part(partA).frame();
    double ends = parts.gapMotion(partA, partB, frame.upAxis());
    double legs = parts.gapMotion(partA, partB, frame.outAxis());
    return Overlaps.more(pastAtBothEnds(partA, partB) - contact, ends)
        .or(Overlaps.more(pastALeg(partA, partB) - contact, legs));
  }

  /** Whether two parts are a stud and a track in which an end of it stands. */
  Certainty standsIn(int partA, int partB) {
    Certainty reachesOut = reachesOut(partA, partB);
    if (reachesOut == Certainty.YES) {
      return Certainty.NO;
    }
    Certainty stands = reachesOut == Certainty.NO ? Certainty.YES : Certainty.POSSIBLE;
    for (int axis = 0; axis < AXES; axis++) {
      double common = Math.min(most(partA, axis), most(partB, axis));
      common -= Math.max(least(partA, axis), least(partB, axis));
      stands = stands.and(Certainty.more(common, parts.gapMotion(partA, partB, axis)));
    }
    return stands;
  }

  private double pastAtBothEnds(int stud, int track) {
    int axis = parts.part(stud).frame().upAxis();
    return Math.min(least(track, axis) - least(stud, axis), most(stud, axis) - most(track, axis));
  }

  private double pastALeg(int stud, int track) {
    int axis = parts.part(stud).frame().outAxis();
    return Math.max(least(track, axis) - least(stud, axis), most(stud, axis) - most(track, axis));
  }

  private double least(int part, int axis) {
    return parts.boxes()[6 * part + axis];
  }

  private double most(int part, int axis) {
    return parts.boxes()[6 * part + 3 + axis];
  }
}
