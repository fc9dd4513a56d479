package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rimefast.plan.FaceBuild;
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
 */
final class ProudRun {
  private final Set<String> missing = new LinkedHashSet<>();
  private double farthest = Double.NEGATIVE_INFINITY;

  ProudRun(Run run, Plan plan, double[] line) {
    List<PathPoint> path = run.path();
    for (int i = 0; i + 1 < path.size(); i++) {
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
    farthest += Lengths.millimetres(run.diameter()) / 2;
    if (run.diameter() == null) {
      missing.add(run.pointer() + "/diameter");
    }
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
