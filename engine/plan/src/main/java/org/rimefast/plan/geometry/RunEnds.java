package org.rimefast.plan.geometry;

import org.jspecify.annotations.Nullable;
import org.rimefast.plan.RunBuild.Side;

/** How runs come to what is at their ends: from where, by which side, and with what drip loop. */
final class RunEnds {
  private static final Side[] SIDES = Side.values();

  private final RunGeometry runs;
  private final PartGeometry parts;
  private final double contact;

  RunEnds(RunGeometry runs, PartGeometry parts, double contact) {
    this.runs = runs;
    this.parts = parts;
    this.contact = contact;
  }

  private double[] line(int run) {
    return runs.run(run).line();
  }

  /** Where the coordinates of the point stand that is this many points from an end. */
  private int at(int run, boolean last, int steps) {
    return last ? line(run).length - 3 - 3 * steps : 3 * steps;
  }

  private double height(int run, boolean last, int steps) {
    return line(run)[at(run, last, steps) + 2];
  }

  private int points(int run) {
    return line(run).length / 3;
  }

  /** How much the difference of height between two points of a run may differ. */
  double heightTolerance(int run) {
    PlacedRun placed = runs.run(run);
    return 2 * (placed.motion(2) + (placed.onlyFace() == null ? placed.standoff(2) : 0));
  }

  /** Whether some point of a run is higher than one of its ends. */
  Certainty isHigherThan(int run, boolean last) {
    double entry = height(run, last, 0);
    double tolerance = heightTolerance(run);
    Certainty any = Certainty.NO;
    for (int i = 1; i < points(run); i++) {
      any = any.or(Certainty.more(height(run, last, i) - entry, tolerance));
    }
    return any;
  }

  /** The highest point, in steps from an end; points of unknown height do not count. */
  int highest(int run, boolean last) {
    int best = 0;
    for (int i = 1; i < points(run); i++) {
      best = height(run, last, i) > height(run, last, best) ? i : best;
    }
    return best;
  }

  /**
   * How far a run, followed from an end, hangs below that end before it first climbs above it.
   *
   * <p>It is straight between its points, so it is lowest at one of them. Each may be off by the
   * tolerance on its own: at the least it climbs as soon as a point may be above the end, at the
   * most it climbs only where a point certainly is.
   *
   * @param most true for the most that it can be, false for the least; NaN if not known
   */
  double dripLoop(int run, boolean last, boolean most) {
    double entry = height(run, last, 0);
    double tolerance = heightTolerance(run);
    double deepest = 0;
    for (int i = 1; i < points(run); i++) {
      double below = entry - height(run, last, i);
      if (Double.isNaN(below)) {
        return Double.NaN;
      }
      if (most ? below + tolerance < 0 : below - tolerance < 0) {
        return deepest;
      }
      deepest = Math.max(deepest, most ? below + tolerance : below - tolerance);
    }
    return Double.isNaN(entry) ? Double.NaN : deepest;
  }

  /** The first point that is drawn higher than an end, in steps from it; -1 if none is. */
  int climbs(int run, boolean last) {
    for (int i = 1; i < points(run); i++) {
      if (height(run, last, i) > height(run, last, 0)) {
        return i;
      }
    }
    return -1;
  }

  /** The lowest point before it climbs, as drawn, in steps from the end; 0 if it is the end. */
  int lowest(int run, boolean last) {
    int climbs = climbs(run, last);
    int best = 0;
    for (int i = 1; i < (climbs < 0 ? points(run) : climbs); i++) {
      best = height(run, last, i) < height(run, last, best) ? i : best;
    }
    return best;
  }

  /** The gap between an end, with half a ball around it, and a part; NaN if not known. */
  double gap(int run, boolean last, int part) {
    double[] line = line(run);
    int i = at(run, last, 0);
    double[] boxes = parts.boxes();
    int b = 6 * part;
    double radius = runs.run(run).radius();
    double distance =
        Distances.norm(
            Distances.beyond(line[i], boxes[b], boxes[b + 3]),
            Distances.beyond(line[i + 1], boxes[b + 1], boxes[b + 4]),
            Distances.beyond(line[i + 2], boxes[b + 2], boxes[b + 5]));
    boolean known =
        parts.part(part).isComplete() && !Double.isNaN(line[i] + line[i + 1] + line[i + 2]);
    return known ? Math.max(0, distance - radius) : Double.NaN;
  }

  /** Whether an end is at a part: their gap is no more than the contact tolerance. */
  Certainty isAt(int run, boolean last, int part) {
    double gap = gap(run, last, part);
    return gap <= contact + Distances.ROUNDING
        ? Certainty.YES
        : gap - runs.gapTolerance(run, part) > contact + Distances.ROUNDING
            ? Certainty.NO
            : Certainty.POSSIBLE;
  }

  /**
   * The side of a part that an end lies before or, if it lies within the part, through which the
   * run comes in; {@link Side#ABOVE} is up the part's face. Null if not known, if the end is apart
   * from the part, or if within the tolerances it could be another side.
   */
  @Nullable Side side(int run, boolean last, int part) {
    PlacedRun placed = runs.run(run);
    if (!placed.missing().isEmpty() || isAt(run, last, part) == Certainty.NO) {
      return null;
    }
    double[] line = placed.line();
    int here = at(run, last, 0);
    double x = line[here];
    double y = line[here + 1];
    double z = line[here + 2];
    for (int step = 1; step < points(run) && isWithin(part, x, y, z); step++) {
      int there = at(run, last, step);
      double share = 1; // of the way to the next point, as far as it stays within
      for (Side side : SIDES) {
        double now = beyond(part, side, x, y, z);
        double then = beyond(part, side, line[there], line[there + 1], line[there + 2]);
        if (then >= 0) {
          share = Math.min(share, now / (now - then));
        }
      }
      x += share * (line[there] - x);
      y += share * (line[there + 1] - y);
      z += share * (line[there + 2] - z);
    }
    Side best = Side.ABOVE;
    for (Side side : SIDES) {
      best = beyond(part, side, x, y, z) > beyond(part, best, x, y, z) ? side : best;
    }
    double farthest = beyond(part, best, x, y, z);
    if (!(farthest >= -Distances.ROUNDING)) {
      return null;
    }
    for (Side side : SIDES) {
      double margin = farthest - beyond(part, side, x, y, z);
      double off = motion(run, part, best) + motion(run, part, side);
      if (side != best && !(margin > off + Distances.ROUNDING)) {
        return null;
      }
    }
    return best;
  }

  private boolean isWithin(int part, double x, double y, double z) {
    for (Side side : SIDES) {
      if (!(beyond(part, side, x, y, z) < -Distances.ROUNDING)) {
        return false;
      }
    }
    return true;
  }

  /** How far a point lies beyond the plane of a side of a part; less than 0 on the part's side. */
  private double beyond(int part, Side side, double x, double y, double z) {
    PlacedPart placed = parts.part(part);
    FaceFrame frame = placed.frame();
    return switch (side) {
      case ABOVE -> frame.up(y, z) - placed.upMax();
      case BELOW -> placed.upMin() - frame.up(y, z);
      case LEFT -> placed.alongMin() - frame.along(x, y);
      case RIGHT -> frame.along(x, y) - placed.alongMax();
      case BACK -> frame.out(x, y, z) - placed.outMax();
      case FRONT -> placed.outMin() - frame.out(x, y, z);
    };
  }

  private double motion(int run, int part, Side side) {
    FaceFrame frame = parts.part(part).frame();
    int axis =
        switch (side) {
          case ABOVE, BELOW -> frame.upAxis();
          case LEFT, RIGHT -> frame.alongAxis();
          case BACK, FRONT -> frame.outAxis();
        };
    return runs.gapMotion(run, part, axis, !runs.run(run).isOnlyOn(parts.face(part)));
  }
}
