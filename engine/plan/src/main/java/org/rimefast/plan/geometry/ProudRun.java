package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.Run.PathPoint;

/**
 * How far a run comes past the studs' warm face toward the room.
 *
 * <p>Between two points on one face the middle line is straight, so one of them is its farthest.
 * Between points on two faces it turns a corner: it is behind the studs as long as it is behind
 * those of either face, so what counts at each of its points is the lesser of both distances. Each
 * changes evenly along the segment, so the greatest lesser one is at an end or where both are
 * equal.
 *
 * <p>What a run does behind a part that stands on the finished lining and that it enters does not
 * count: there it comes out through the lining.
 */
final class ProudRun {
  private final Set<String> missing = new LinkedHashSet<>();
  private final List<String> doubtful = new ArrayList<>();
  private final Map<String, Part> entered;
  private double farthest = Double.NEGATIVE_INFINITY;

  /**
   * Looks at one run.
   *
   * @param entered the electrical parts of the plan, by id
   */
  ProudRun(Run run, Plan plan, Map<String, Part> entered, double[] line) {
    this.entered = entered;
    List<PathPoint> path = run.path();
    int first = 0;
    int last = path.size() - 1;
    while (first < last && isBehindItsPart(run.from(), path.get(first), path.get(first + 1))) {
      first++;
    }
    while (last > first && isBehindItsPart(run.to(), path.get(last), path.get(last - 1))) {
      last--;
    }
    for (int i = first; i < last; i++) {
      PathPoint a = path.get(i);
      PathPoint b = path.get(i + 1);
      if (a.face() == b.face()) {
        offer(-depth(a));
        offer(-depth(b));
      } else {
        FaceBuild buildA = plan.face(a.face());
        FaceBuild buildB = plan.face(b.face());
        notePlace(a, buildA);
        notePlace(b, buildB);
        double startA = past(buildA, plan, line, i);
        double endA = past(buildA, plan, line, i + 1);
        double startB = past(buildB, plan, line, i);
        double endB = past(buildB, plan, line, i + 1);
        offer(Math.min(startA, startB));
        offer(Math.min(endA, endB));
        double equal = (startB - startA) / (endA - startA - (endB - startB));
        if (equal > 0 && equal < 1) {
          offer(startA + equal * (endA - startA));
        }
      }
    }
    if (first == last) {
      offer(-depth(path.get(first)));
    }
    farthest += Lengths.millimetres(run.diameter()) / 2;
    if (farthest > 0 && !doubtful.isEmpty()) {
      farthest = Double.NaN;
      missing.addAll(doubtful);
    }
    if (run.diameter() == null) {
      missing.add(run.pointer() + "/diameter");
    }
  }

  /**
   * True if a piece of the run does not count, at least as far as the edge of the part that the run
   * enters at {@code end}; then its depth at the edge counts.
   */
  private boolean isBehindItsPart(@Nullable String id, PathPoint end, PathPoint next) {
    Part part = id == null ? null : entered.get(id);
    if (part == null || end.face() != part.face() || next.face() != part.face()) {
      return false;
    }
    double leaves = leaves(part, end, next);
    Mount mount = ((Part.Electrical) part).mount();
    // What is not known of the part's place leaves the run as it is drawn.
    if (!(leaves >= 0) || mount == Mount.FLUSH || mount == Mount.COVERED) {
      return false;
    }
    if (mount == null) {
      doubtful.add(part.pointer() + "/mount");
      return false;
    }
    if (leaves < 1) {
      offer(-depth(next));
      offer(-(depth(end) + leaves * (depth(next) - depth(end))));
    }
    return true;
  }

  /**
   * What share of a piece lies behind a part, seen from the room; less than 0 if it does not begin
   * there, NaN if that is not known.
   */
  private double leaves(Part part, PathPoint end, PathPoint next) {
    double along = share(part.along(), part.width(), end.along(), next.along());
    double up = share(part.up(), part.height(), end.up(), next.up());
    return Double.isNaN(along) || Double.isNaN(up) ? Double.NaN : Math.min(along, up);
  }

  private double share(
      @Nullable Amount middle,
      @Nullable Amount extent,
      @Nullable Amount end,
      @Nullable Amount next) {
    if (middle == null || extent == null || end == null || next == null) {
      return Double.NaN;
    }
    double half = extent.millimetres() / 2;
    double from = end.millimetres() - middle.millimetres();
    double to = next.millimetres() - middle.millimetres();
    if (Math.abs(from) > half) {
      return -1;
    }
    return Math.abs(to) <= half ? 1 : (Math.copySign(half, to) - from) / (to - from);
  }

  private void offer(double past) {
    farthest = Math.max(farthest, past); // NaN stays
  }

  private double depth(PathPoint point) {
    List<String> absent = new ArrayList<>();
    double depth = PlacedPart.require(point.depth(), point.pointer() + "/depth", absent);
    missing.addAll(absent);
    return depth;
  }

  private void notePlace(PathPoint point, FaceBuild build) {
    List<String> absent = new ArrayList<>();
    PlacedPart.require(point.along(), point.pointer() + "/along", absent);
    PlacedPart.require(point.up(), point.pointer() + "/up", absent);
    PlacedPart.require(point.depth(), point.pointer() + "/depth", absent);
    PlacedPart.warmFace(build, absent);
    missing.addAll(absent);
  }

  /** How far a point of the middle line lies past the studs of a face, toward the room. */
  private static double past(FaceBuild build, Plan plan, double[] line, int point) {
    double out =
        FaceFrame.of(build.face(), plan.shell())
            .out(line[3 * point], line[3 * point + 1], line[3 * point + 2]);
    return -out - PlacedPart.warmFace(build, new ArrayList<>());
  }

  List<String> missing() {
    return List.copyOf(missing);
  }

  double proud() {
    return farthest;
  }
}
