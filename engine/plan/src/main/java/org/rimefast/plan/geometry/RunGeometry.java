package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;

/** What {@link ModuleGeometry} tells about runs. */
final class RunGeometry {
  private final Plan plan;
  private final ShellSheets shell;
  private final ShellLines lines;
  private final ToleranceBounds bounds;
  private final PartGeometry parts;
  private final PlacedRun[] runs;
  private volatile double @Nullable [] tolerances; // worked out when first needed

  RunGeometry(Plan plan, ShellSheets shell, ToleranceBounds bounds, PartGeometry parts) {
    this.plan = plan;
    this.shell = shell;
    this.lines = new ShellLines(shell);
    this.bounds = bounds;
    this.parts = parts;
    Map<String, Part> electrical = new HashMap<>();
    for (Part part : plan.parts()) {
      if (part instanceof Part.Electrical) {
        electrical.put(part.id(), part);
      }
    }
    this.runs =
        plan.runs().stream()
            .map(run -> new PlacedRun(run, plan, electrical))
            .toArray(PlacedRun[]::new);
  }

  PlacedRun run(int run) {
    return runs[run];
  }

  /** How many runs there are. */
  int count() {
    return runs.length;
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
    double[] known = tolerances;
    if (known == null) {
      known = new double[runs.length];
      for (int i = 0; i < runs.length; i++) {
        known[i] = workOutTolerance(i);
      }
      tolerances = known;
    }
    return known[run];
  }

  private double workOutTolerance(int run) {
    PlacedRun placed = runs[run];
    double[] motion = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      motion[axis] = placed.motion(axis) + placed.standoff(axis);
    }
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
    Cuboid box = parts.cuboid(part);
    return placed.isComplete() && box != null
        ? Lines.outside(Lines.nearestToBox(placed.line(), box), placed.radius())
        : null;
  }

  double gapTolerance(int run, int part) {
    boolean apart = !runs[run].isOnlyOn(parts.face(part));
    return norm(
            gapMotion(run, part, 0, apart),
            gapMotion(run, part, 1, apart),
            gapMotion(run, part, 2, apart))
        + runs[run].radiusTolerance();
  }

  /** How far a run and a part may be off against each other along an axis of the module. */
  double gapMotion(int run, int part, int axis, boolean apart) {
    double motion = runs[run].motion(axis) + parts.motion(part, axis);
    return apart ? motion + runs[run].standoff(axis) + parts.standoff(part, axis) : motion;
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
    Face face = a.onlyFace();
    boolean apart = face == null || !b.isOnlyOn(face);
    return norm(gapMotion(a, b, 0, apart), gapMotion(a, b, 1, apart), gapMotion(a, b, 2, apart))
        + a.radiusTolerance()
        + b.radiusTolerance();
  }

  /** The same for two runs. */
  static double gapMotion(PlacedRun a, PlacedRun b, int axis, boolean apart) {
    double motion = a.motion(axis) + b.motion(axis);
    return apart ? motion + a.standoff(axis) + b.standoff(axis) : motion;
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
