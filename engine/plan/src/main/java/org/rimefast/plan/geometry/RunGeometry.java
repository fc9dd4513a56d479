package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;

/** What {@link ModuleGeometry} tells about runs. */
final class RunGeometry {
  private final Plan plan;
  private final ShellSheets shell;
  private final ShellLines lines;
  private final ToleranceBounds bounds;
  private final PartGeometry parts;
  private final PlacedRun[] runs;

  RunGeometry(Plan plan, ShellSheets shell, ToleranceBounds bounds, PartGeometry parts) {
    this.plan = plan;
    this.shell = shell;
    this.lines = new ShellLines(shell);
    this.bounds = bounds;
    this.parts = parts;
    this.runs = plan.runs().stream().map(r -> new PlacedRun(r, plan)).toArray(PlacedRun[]::new);
  }

  PlacedRun run(int run) {
    return runs[run];
  }

  double clearance(int run) {
    PlacedRun placed = runs[run];
    if (!placed.isComplete()) {
      return Double.NaN;
    }
    double found = lines.distance(placed.line());
    if (found <= placed.radius()) {
      return 0;
    }
    return lines.isSpoilt(placed.line(), found) ? Double.NaN : found - placed.radius();
  }

  List<String> missingForClearance(int run) {
    PlacedRun placed = runs[run];
    if (placed.isComplete()) {
      double found = lines.distance(placed.line());
      return found <= placed.radius() ? List.of() : lines.spoilers(placed.line(), found);
    }
    Set<String> pointers = new LinkedHashSet<>(placed.missingWithDiameter());
    plan.runs().get(run).path().forEach(point -> pointers.addAll(shell.missing(point.face())));
    return List.copyOf(pointers);
  }

  @Nullable ShellNearest nearestShell(int run) {
    PlacedRun placed = runs[run];
    return Double.isNaN(clearance(run)) ? null : lines.nearest(placed.line(), placed.radius());
  }

  double positionTolerance(int run) {
    PlacedRun placed = runs[run];
    double[] motion = new double[3];
    placed.addTolerance(motion);
    placed.addStandoffTolerance(motion);
    return bounds.bound(motion, placed.bounds(), clearance(run)) + placed.radiusTolerance();
  }

  double gap(int run, int part) {
    PlacedRun placed = runs[run];
    return placed.isComplete() && parts.part(part).isComplete()
        ? Math.max(0, Lines.distanceToBox(placed.line(), parts.boxes(), part) - placed.radius())
        : Double.NaN;
  }

  @Nullable Nearest nearest(int run, int part) {
    PlacedRun placed = runs[run];
    Cuboid box = parts.part(part).cuboid();
    return placed.isComplete() && box != null
        ? Lines.outside(Lines.nearestToBox(placed.line(), box), placed.radius())
        : null;
  }

  double gapTolerance(int run, int part) {
    double[] motion = new double[3];
    runs[run].addTolerance(motion);
    parts.part(part).addTolerance(motion);
    if (!runs[run].isOnlyOn(parts.face(part))) {
      runs[run].addStandoffTolerance(motion);
      parts.part(part).addStandoffTolerance(motion);
    }
    return norm(motion[0], motion[1], motion[2]) + runs[run].radiusTolerance();
  }

  double gapBetween(int runA, int runB) {
    PlacedRun a = runs[runA];
    PlacedRun b = runs[runB];
    return a.isComplete() && b.isComplete()
        ? Math.max(0, Lines.distance(a.line(), b.line()) - a.radius() - b.radius())
        : Double.NaN;
  }

  @Nullable Nearest nearestBetween(int runA, int runB) {
    PlacedRun a = runs[runA];
    PlacedRun b = runs[runB];
    if (!a.isComplete() || !b.isComplete()) {
      return null;
    }
    Nearest middle = Lines.nearest(a.line(), b.line());
    Nearest fromB = Lines.outside(Lines.exchanged(middle), b.radius());
    return Lines.outside(Lines.exchanged(fromB), a.radius());
  }

  double gapToleranceBetween(int runA, int runB) {
    PlacedRun a = runs[runA];
    PlacedRun b = runs[runB];
    double[] motion = new double[3];
    a.addTolerance(motion);
    b.addTolerance(motion);
    Face face = a.onlyFace();
    if (face == null || !b.isOnlyOn(face)) {
      a.addStandoffTolerance(motion);
      b.addStandoffTolerance(motion);
    }
    return norm(motion[0], motion[1], motion[2]) + a.radiusTolerance() + b.radiusTolerance();
  }

  void partsNear(int run, double distance, IntConsumer found) {
    PlacedRun placed = runs[run];
    if (!placed.isComplete()) {
      return;
    }
    IndexList near = new IndexList();
    double[] line = placed.line();
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
              distance + placed.radius(),
              near);
    }
    near.inOrder(
        part -> {
          if (gap(run, part) <= distance) {
            found.accept(part);
          }
        });
  }
}
