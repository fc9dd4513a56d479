package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;

/**
 * How long runs are, how they turn, what their ends come to and how far they lie side by side. Runs
 * and parts are named by their index in the plan's lists; lengths are in millimetres, angles in
 * degrees. NaN stands for what a missing value leaves unknown.
 *
 * <p>All of it is of the middle line as drawn, with a corner at each of its points: the arc of a
 * bend is a little shorter.
 */
public final class RunPaths {
  /** Points nearer than this are one place, written twice where a path goes round a corner. */
  private static final double SAME_PLACE = 1e-3;

  private static final double ROUNDING = 1e-6;

  /** Half of EMT of trade size 4 in, 4.5 in outside: from memory. No run here is thicker. */
  private static final double THICKEST_RADIUS = 57.15;

  private static final ThreadLocal<IndexList> SCRATCH = ThreadLocal.withInitial(IndexList::new);

  private final RunGeometry runs;
  private final PartGeometry parts;
  private final int count;
  private final double contact;
  private final double[] planes = new double[Face.values().length]; // of the ribs, by face
  private volatile @Nullable RunIndex index; // worked out when first needed
  private volatile double partReach = Double.NaN; // the same

  RunPaths(Plan plan, RunGeometry runs, PartGeometry parts, double contact) {
    this.runs = runs;
    this.parts = parts;
    this.count = plan.runs().size();
    this.contact = contact;
    planes[Face.RIGHT.ordinal()] = plan.shell().width();
    planes[Face.FRONT.ordinal()] = plan.shell().length();
    planes[Face.ROOF.ordinal()] = plan.shell().height();
  }

  /** The length of a run's middle line. */
  public double length(int run) {
    double[] line = runs.run(run).line();
    double length = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      length += norm(line[i + 3] - line[i], line[i + 4] - line[i + 1], line[i + 5] - line[i + 2]);
    }
    return length;
  }

  /**
   * How much {@link #length} may differ: each end of each straight stretch may be off by the
   * tolerance of its place.
   */
  public double lengthTolerance(int run) {
    PlacedRun placed = runs.run(run);
    double motion =
        placed.onlyFace() == null
            ? reach(placed) // the studs of two faces do not move together
            : norm(placed.motion(0), placed.motion(1), placed.motion(2));
    return (placed.line().length / 3 - 1) * 2 * motion;
  }

  /**
   * By how much a path turns at one of its points, from 0 to 180; 0 at its ends. Of points at the
   * same place only the last one turns.
   */
  public double turn(int run, int point) {
    double[] line = runs.run(run).line();
    int at = 3 * point;
    if (at == 0 || at + 3 >= line.length) {
      return 0;
    }
    int before = at - 3;
    while (before > 0 && isSamePlace(line, before, at)) {
      before -= 3;
    }
    if (isSamePlace(line, before, at) || isSamePlace(line, at, at + 3)) {
      return 0;
    }
    double ux = line[at] - line[before];
    double uy = line[at + 1] - line[before + 1];
    double uz = line[at + 2] - line[before + 2];
    double vx = line[at + 3] - line[at];
    double vy = line[at + 4] - line[at + 1];
    double vz = line[at + 5] - line[at + 2];
    double across = norm(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    return Math.toDegrees(Math.atan2(across, ux * vx + uy * vy + uz * vz));
  }

  private static boolean isSamePlace(double[] line, int a, int b) {
    return norm(line[a] - line[b], line[a + 1] - line[b + 1], line[a + 2] - line[b + 2])
        <= SAME_PLACE;
  }

  /** All turns of a path together, as drawn: how far places may be off makes no bends. */
  public double turns(int run) {
    int points = runs.run(run).line().length / 3;
    double sum = 0;
    for (int point = 1; point + 1 < points; point++) {
      sum += turn(run, point);
    }
    return sum;
  }

  /** A coordinate of an end of the middle line along an axis of the module: 0 = x, 1 = y, 2 = z. */
  public double endAt(int run, boolean last, int axis) {
    double[] line = runs.run(run).line();
    return line[last ? line.length - 3 + axis : axis];
  }

  /** How far from the end of its middle line a run that enters a part may be drawn from it. */
  public double endReach(int run, int part) {
    return radius(run) + contact + runs.gapTolerance(run, part) + ROUNDING;
  }

  private double radius(int run) {
    double radius = runs.run(run).radius();
    return Double.isNaN(radius) ? THICKEST_RADIUS : radius;
  }

  /**
   * True if an end of a run is drawn so far from a part, and from the space straight behind it up
   * to the ribs of its face, that it certainly does not enter it: by more than its radius, the
   * contact tolerance and what either may be off. What comes to a part on the lining waits behind
   * it in the wall. What is not known of the end counts as near.
   */
  public boolean isEndApart(int run, boolean last, int part) {
    if (!parts.part(part).isComplete()) {
      return false;
    }
    double[] box = parts.boxes();
    double plane = planes[parts.face(part).ordinal()];
    int out = parts.part(part).frame().outAxis();
    double square = 0;
    for (int axis = 0; axis < 3; axis++) {
      double at = endAt(run, last, axis);
      double least = box[6 * part + axis];
      double most = box[6 * part + 3 + axis];
      double gap =
          axis == out
              ? Distances.gap(at, at, Math.min(least, plane), Math.max(most, plane))
              : Distances.gap(at, at, least, most);
      square += Double.isNaN(gap) ? 0 : gap * gap;
    }
    return Math.sqrt(square) > endReach(run, part);
  }

  /** Reports every part with a known place from which an end of a run is not apart, once each. */
  public void partsAtEnd(int run, boolean last, IntConsumer found) {
    double[] least = new double[3];
    double[] most = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      double at = endAt(run, last, axis);
      least[axis] = Double.isNaN(at) ? Double.NEGATIVE_INFINITY : at;
      most[axis] = Double.isNaN(at) ? Double.POSITIVE_INFINITY : at;
    }
    double distance =
        radius(run) + contact + reach(runs.run(run)) + greatestReachOfParts() + 2 * ROUNDING;
    parts
        .tree()
        .within(
            least[0],
            least[1],
            least[2],
            most[0],
            most[1],
            most[2],
            distance,
            part -> {
              if (!isEndApart(run, last, part)) {
                found.accept(part);
              }
            });
  }

  /**
   * How much of a run's middle line lies so near to another run that the gap between their outsides
   * is at most {@code distance}. NaN if either is not known.
   */
  public double lengthWithin(int run, int other, double distance) {
    PlacedRun a = runs.run(run);
    PlacedRun b = runs.run(other);
    if (!a.isComplete() || !b.isComplete()) {
      return Double.NaN;
    }
    double reach = distance + a.radius() + b.radius();
    return reach < 0 ? 0 : LinesSideBySide.length(a.line(), b.line(), reach + ROUNDING);
  }

  /**
   * Reports every other run whose gap to a run may be at most {@code distance} within the
   * tolerances of both, and perhaps some that are farther, in increasing order. Runs whose place or
   * diameter is not known are not found, and find none. Needs no new memory.
   */
  public void runsWithin(int run, double distance, IntConsumer found) {
    PlacedRun placed = runs.run(run);
    if (!placed.isComplete()) {
      return;
    }
    IndexList near = SCRATCH.get();
    near.clear();
    index().near(run, distance + reach(placed) + placed.radiusTolerance(), near);
    near.inOrder(found);
  }

  /**
   * Reports every run whose gap to a part that has a place may be at most {@code distance} within
   * the tolerances of both, and perhaps some that are farther, in increasing order. Runs whose
   * place or diameter is not known are not found. Needs no new memory.
   */
  public void runsNearPart(int part, double distance, IntConsumer found) {
    IndexList near = SCRATCH.get();
    near.clear();
    double motion =
        norm(
            parts.motion(part, 0) + parts.standoff(part, 0),
            parts.motion(part, 1) + parts.standoff(part, 1),
            parts.motion(part, 2) + parts.standoff(part, 2));
    index().near(parts.boxes(), part, distance + motion + ROUNDING, near);
    near.inOrder(found);
  }

  /**
   * Reports every part that has a place and whose gap to a run may be at most {@code distance}
   * within the run's tolerances, and perhaps some that are farther, each once and in increasing
   * order. A run whose place or diameter is not known finds none. Needs no new memory.
   */
  public void partsNear(int run, double distance, IntConsumer found) {
    PlacedRun placed = runs.run(run);
    if (!placed.isComplete()) {
      return;
    }
    IndexList near = SCRATCH.get();
    near.clear();
    double[] line = placed.line();
    double off = placed.radius() + placed.radiusTolerance() + placed.motion() + ROUNDING;
    for (int i = 0; i + 5 < line.length; i += 3) {
      parts
          .tree()
          .within(
              Math.min(line[i], line[i + 3]),
              Math.min(line[i + 1], line[i + 4]),
              Math.min(line[i + 2], line[i + 5]),
              Math.max(line[i], line[i + 3]),
              Math.max(line[i + 1], line[i + 4]),
              Math.max(line[i + 2], line[i + 5]),
              distance + off,
              near);
    }
    near.inOrder(found);
  }

  private RunIndex index() {
    RunIndex known = index;
    if (known == null) {
      double spread = 0;
      for (int run = 0; run < count; run++) {
        spread = Math.max(spread, reach(runs.run(run)) + runs.run(run).radiusTolerance());
      }
      known = new RunIndex(runs, count, spread);
      index = known;
    }
    return known;
  }

  /** How far points of a run may be off, their studs' place included. */
  private static double reach(PlacedRun run) {
    return norm(
        run.motion(0) + run.standoff(0),
        run.motion(1) + run.standoff(1),
        run.motion(2) + run.standoff(2));
  }

  /** How far a part may be off, and how far it stands before the ribs, at most. */
  private double greatestReachOfParts() {
    double known = partReach;
    if (Double.isNaN(known)) {
      known = 0;
      for (int part = 0; part < parts.count(); part++) {
        double motion =
            norm(
                parts.motion(part, 0) + parts.standoff(part, 0),
                parts.motion(part, 1) + parts.standoff(part, 1),
                parts.motion(part, 2) + parts.standoff(part, 2));
        known = Math.max(known, motion + (isPlaced(part) ? spaceBehind(part) : 0));
      }
      partReach = known;
    }
    return known;
  }

  private boolean isPlaced(int part) {
    return parts.part(part).isComplete();
  }

  private double spaceBehind(int part) {
    double plane = planes[parts.face(part).ordinal()];
    int out = parts.part(part).frame().outAxis();
    double[] box = parts.boxes();
    return Distances.gap(plane, plane, box[6 * part + out], box[6 * part + 3 + out]);
  }
}
