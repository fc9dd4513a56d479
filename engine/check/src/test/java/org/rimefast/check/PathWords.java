package org.rimefast.check;

import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;

/** What the words of a test work out from the points of a run, in millimetres. */
final class PathWords {
  private PathWords() {}

  /** The point at which a run enters a part; null if it does not, or the plan does not say. */
  private static Run.@Nullable PathPoint entry(Run run, Part part) {
    if (part.id().equals(run.to())) {
      return run.path().get(run.path().size() - 1);
    }
    return part.id().equals(run.from()) ? run.path().get(0) : null;
  }

  /** Whether a run comes to a part from higher up. */
  static Truth comesFromAbove(Run run, Part part) {
    Run.PathPoint entry = entry(run, part);
    if (entry == null) {
      return Truth.FALSE;
    }
    Truth any = Truth.FALSE;
    for (Run.PathPoint point : run.path()) {
      double above = up(point) - up(entry);
      any = any.or(Double.isNaN(above) ? Truth.UNKNOWN : Truth.of(above > 0));
    }
    return any;
  }

  /** The points of a run whose height the plan does not give. */
  static void explainHeights(PlanFacts facts, int element, Explanation out) {
    for (Run.PathPoint point : facts.run(element).path()) {
      if (point.up() == null) {
        out.missing(facts.missing(point.pointer() + "/up"));
      }
    }
  }

  /** How far a run hangs lower than its entry into a part, at most; 0 if it does not. */
  static double drip(Run run, Part part) {
    Run.PathPoint entry = entry(run, part);
    double lowest = Double.POSITIVE_INFINITY;
    for (Run.PathPoint point : run.path()) {
      // Math.min hands NaN on: a point of unknown height may be the lowest.
      lowest = point == entry ? lowest : Math.min(lowest, up(point));
    }
    return entry == null ? Double.NaN : Math.max(0, up(entry) - lowest);
  }

  /** All turns of a run that stays on one face, in degrees. */
  static double turns(Run run) {
    double sum = 0;
    for (int i = 1; i + 1 < run.path().size(); i++) {
      double[] before = way(run.path().get(i - 1), run.path().get(i));
      double[] after = way(run.path().get(i), run.path().get(i + 1));
      double along = before[0] * after[0] + before[1] * after[1] + before[2] * after[2];
      double cosine = along / (length(before) * length(after));
      sum += Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }
    return sum;
  }

  /** Whether a run goes past the middle of a stud on the stud's face. */
  static Truth passes(Run run, Part stud) {
    if (run.path().stream().noneMatch(point -> point.face() == stud.face())) {
      return Truth.FALSE;
    }
    Amount at = stud.along();
    if (at == null) {
      return Truth.UNKNOWN;
    }
    for (int i = 1; i < run.path().size(); i++) {
      double from = millimetres(run.path().get(i - 1).along());
      double to = millimetres(run.path().get(i).along());
      if (Math.min(from, to) < at.millimetres() && at.millimetres() < Math.max(from, to)) {
        return Truth.TRUE;
      }
    }
    return Truth.FALSE;
  }

  private static double[] way(Run.PathPoint from, Run.PathPoint to) {
    return new double[] {
      millimetres(to.along()) - millimetres(from.along()),
      up(to) - up(from),
      millimetres(to.depth()) - millimetres(from.depth())
    };
  }

  private static double length(double[] way) {
    return Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
  }

  private static double up(Run.PathPoint point) {
    return millimetres(point.up());
  }

  static double millimetres(@Nullable Amount amount) {
    return amount == null ? Double.NaN : amount.millimetres();
  }
}
