package org.rimefast.plan.geometry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;

/**
 * Which zones of the sheets runs stand before, with their whole diameter. A stretch between points
 * on two faces counts on both.
 */
final class RunZones {
  private final Plan plan;
  private final ShellSheets shell;
  private final ToleranceBounds bounds;
  private final RunGeometry runs;

  RunZones(Plan plan, ShellSheets shell, ToleranceBounds bounds, RunGeometry runs) {
    this.plan = plan;
    this.shell = shell;
    this.bounds = bounds;
    this.runs = runs;
  }

  /** Whether all of a run stands before a zone. */
  Certainty liesIn(int run, Zone zone) {
    List<Run.PathPoint> path = plan.runs().get(run).path();
    Certainty all = Certainty.YES;
    for (int i = 0; i + 1 < path.size(); i++) {
      Face from = path.get(i).face();
      Face to = path.get(i + 1).face();
      all = all.and(segment(run, i, from, zone, true));
      all = from == to ? all : all.and(segment(run, i, to, zone, true));
    }
    return all;
  }

  /** Whether some of a run stands before a zone. */
  Certainty faces(int run, Zone zone) {
    List<Run.PathPoint> path = plan.runs().get(run).path();
    Certainty any = Certainty.NO;
    for (int i = 0; i + 1 < path.size(); i++) {
      Face from = path.get(i).face();
      Face to = path.get(i + 1).face();
      any = any.or(segment(run, i, from, zone, false));
      any = from == to ? any : any.or(segment(run, i, to, zone, false));
    }
    return any;
  }

  private Certainty segment(int run, int segment, Face face, Zone zone, boolean whole) {
    PlacedRun placed = runs.run(run);
    CorrugatedSheet sheet = shell.sheet(face);
    double a = position(placed.line(), 3 * segment, face);
    double b = position(placed.line(), 3 * segment + 3, face);
    if (sheet == null || Double.isNaN(a + b + placed.radius())) {
      return Certainty.POSSIBLE;
    }
    double from = Math.min(a, b) - placed.radius();
    double to = Math.max(a, b) + placed.radius();
    FaceArea area = shell.area(face);
    int axis = area.upright() ? area.frame().alongAxis() : area.frame().upAxis();
    double tolerance = placed.motion(axis) + placed.radiusTolerance() + bounds.phase(face);
    tolerance += placed.isOnlyOn(face) ? 0 : placed.standoff(axis);
    if (whole) {
      return Certainty.notNegative(sheet.marginInside(zone, from, to), tolerance);
    }
    return Certainty.more(-sheet.gapTo(zone, from, to), tolerance);
  }

  private double position(double[] line, int at, Face face) {
    FaceArea area = shell.area(face);
    return area.upright()
        ? area.frame().along(line[at], line[at + 1])
        : area.frame().up(line[at + 1], line[at + 2]);
  }

  /** JSON pointers of the values that are missing to tell what zones a run stands before. */
  List<String> missing(int run) {
    Set<String> pointers = new LinkedHashSet<>();
    List<Run.PathPoint> path = plan.runs().get(run).path();
    boolean oneFace = runs.run(run).onlyFace() != null;
    for (String pointer : runs.run(run).missingWithDiameter()) {
      // On one face the depth does not matter.
      if (!oneFace || !(pointer.endsWith("/depth") || pointer.startsWith("/faces"))) {
        pointers.add(pointer);
      }
    }
    path.forEach(point -> pointers.addAll(shell.missing(point.face())));
    return List.copyOf(pointers);
  }
}
