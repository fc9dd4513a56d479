package org.rimefast.plan.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.geometry.StudPass.Range;

/** Where the service holes of studs are: in the middle of the web's depth, each at its level. */
final class HolesOfStuds {
  private static final double[] NONE = {};
  private static final int FIELDS = 5;

  private final double[][] holes; // level, its tolerance, height, width, and how both may be off

  HolesOfStuds(Plan plan) {
    List<Part> parts = plan.parts();
    @Nullable Amount framing = plan.tolerances().framing();
    this.holes = new double[parts.size()][];
    for (int part = 0; part < holes.length; part++) {
      holes[part] = parts.get(part) instanceof Part.Stud stud ? of(stud.holes(), framing) : NONE;
    }
  }

  private static double[] of(List<Part.ServiceHole> given, @Nullable Amount framing) {
    double[] all = given.isEmpty() ? NONE : new double[FIELDS * given.size()];
    for (int i = 0; i < given.size(); i++) {
      Part.ServiceHole hole = given.get(i);
      all[FIELDS * i] = Lengths.millimetres(hole.up());
      all[FIELDS * i + 1] = Lengths.tolerance(hole.up(), framing);
      all[FIELDS * i + 2] = Lengths.millimetres(hole.height());
      all[FIELDS * i + 3] = Lengths.millimetres(hole.width());
      all[FIELDS * i + 4] =
          Math.max(Lengths.ownTolerance(hole.height()), Lengths.ownTolerance(hole.width())) / 2;
    }
    return all;
  }

  int count(int stud) {
    return holes[stud].length / FIELDS;
  }

  private double level(int stud, int hole) {
    return holes[stud][FIELDS * hole];
  }

  private double tolerance(int stud, int hole) {
    return holes[stud][FIELDS * hole + 1];
  }

  /** The hole whose middle is nearest to a level; -1 if there is none. */
  int nearest(int stud, double up) {
    int best = -1;
    for (int hole = 0; hole < count(stud); hole++) {
      if (best < 0 || Math.abs(level(stud, hole) - up) < Math.abs(level(stud, best) - up)) {
        best = hole;
      }
    }
    return best;
  }

  private double leastOffset(int stud, int hole, Range up) {
    double level = level(stud, hole);
    double apart = Distances.gap(up.least(), up.most(), level, level);
    return Math.max(0, apart - tolerance(stud, hole));
  }

  private double mostOffset(int stud, int hole, Range up) {
    double level = level(stud, hole);
    return Math.max(level - up.least(), up.most() - level) + tolerance(stud, hole);
  }

  /** From a level to the nearest hole. */
  Range offset(int stud, Range up) {
    int nearest = nearest(stud, up.drawn());
    if (nearest < 0) {
      return Range.UNKNOWN;
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    for (int hole = 0; hole < count(stud); hole++) {
      least = Math.min(least, leastOffset(stud, hole, up));
      most = Math.min(most, mostOffset(stud, hole, up));
    }
    return new Range(Math.abs(level(stud, nearest) - up.drawn()), least, most);
  }

  /** The level of the hole that is nearest to a level, whichever it is within the tolerance. */
  Range level(int stud, Range up) {
    int nearest = nearest(stud, up.drawn());
    if (nearest < 0) {
      return Range.UNKNOWN;
    }
    double limit = offset(stud, up).most();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int hole = 0; hole < count(stud); hole++) {
      if (leastOffset(stud, hole, up) <= limit) {
        least = Math.min(least, level(stud, hole) - tolerance(stud, hole));
        most = Math.max(most, level(stud, hole) + tolerance(stud, hole));
      }
    }
    return new Range(level(stud, nearest), least, most);
  }

  /**
   * Whether what reaches this far from a middle lies wholly within one hole.
   *
   * @param up where its middle is along the stud
   * @param across where its middle is, from the middle of the web's depth
   * @param leastUp the least that it reaches along the stud; {@code mostUp} the most
   */
  Certainty holds(
      int stud,
      Range up,
      Range across,
      double leastUp,
      double mostUp,
      double leastAcross,
      double mostAcross) {
    Certainty any = Certainty.NO;
    double near = Distances.gap(across.least(), across.most(), 0, 0);
    double far = Math.max(-across.least(), across.most());
    for (int hole = 0; hole < count(stud); hole++) {
      double halfHeight = holes[stud][FIELDS * hole + 2] / 2;
      double halfWidth = holes[stud][FIELDS * hole + 3] / 2;
      double own = holes[stud][FIELDS * hole + 4];
      double worst =
          Math.min(
              halfHeight - own - mostOffset(stud, hole, up) - mostUp,
              halfWidth - own - far - mostAcross);
      double best =
          Math.min(
              halfHeight + own - leastOffset(stud, hole, up) - leastUp,
              halfWidth + own - near - leastAcross);
      Certainty one =
          worst >= -Distances.ROUNDING
              ? Certainty.YES
              : best >= -Distances.ROUNDING ? Certainty.POSSIBLE : Certainty.NO;
      any = any.or(one);
    }
    return any;
  }

  /** The least difference of level between a hole of one stud and one of another, at least. */
  double leastDifference(int studA, int studB) {
    return difference(studA, studB, -1);
  }

  /** The same at most. */
  double mostDifference(int studA, int studB) {
    return difference(studA, studB, 1);
  }

  private double difference(int studA, int studB, int sign) {
    double least = Double.NaN;
    for (int a = 0; a < count(studA); a++) {
      for (int b = 0; b < count(studB); b++) {
        double apart = Math.abs(level(studA, a) - level(studB, b));
        double one = Math.max(0, apart + sign * (tolerance(studA, a) + tolerance(studB, b)));
        least = one < least || Double.isNaN(least) ? one : least;
      }
    }
    return least;
  }
}
