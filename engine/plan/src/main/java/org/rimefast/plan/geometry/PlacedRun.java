package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;
import org.rimefast.plan.Run.PathPoint;

/** Where a run's middle line is, in module coordinates, and how far off that may be. */
final class PlacedRun {
  private final double[] line; // x, y, z of each point; NaN where a value is missing
  private final double radius;
  private final double radiusTolerance;
  private final double depthTolerance;
  private final double[] tolerance = new double[3];
  private final double[] standoffTolerance = new double[3];
  private final @Nullable Face onlyFace;
  private final List<String> missing;
  private final List<String> missingForProud;
  private final double proud;
  private final String diameterPointer;

  PlacedRun(Run run, Plan plan, Map<String, Part> electrical) {
    List<PathPoint> path = run.path();
    this.line = new double[3 * path.size()];
    this.radius = Lengths.millimetres(run.diameter()) / 2;
    this.radiusTolerance = Lengths.ownTolerance(run.diameter()) / 2;
    this.diameterPointer = run.pointer() + "/diameter";
    this.onlyFace =
        path.stream().allMatch(point -> point.face() == path.get(0).face())
            ? path.get(0).face()
            : null;
    Set<String> missing = new LinkedHashSet<>();
    double depthTolerance = 0;
    for (int i = 0; i < path.size(); i++) {
      PathPoint point = path.get(i);
      FaceBuild build = plan.face(point.face());
      FaceFrame frame = FaceFrame.of(point.face(), plan.shell());
      List<String> absent = new ArrayList<>();
      double along = PlacedPart.require(point.along(), point.pointer() + "/along", absent);
      double up = PlacedPart.require(point.up(), point.pointer() + "/up", absent);
      double depth = PlacedPart.require(point.depth(), point.pointer() + "/depth", absent);
      Point at = frame.toModule(along, up, depth - PlacedPart.warmFace(build, absent));
      missing.addAll(absent);
      line[3 * i] = at.x();
      line[3 * i + 1] = at.y();
      line[3 * i + 2] = at.z();
      Amount trade = plan.tolerances().electrical();
      raise(tolerance, frame.alongAxis(), Lengths.tolerance(point.along(), trade));
      raise(tolerance, frame.upAxis(), Lengths.tolerance(point.up(), trade));
      raise(tolerance, frame.outAxis(), Lengths.tolerance(point.depth(), trade));
      depthTolerance = Math.max(depthTolerance, Lengths.tolerance(point.depth(), trade));
      raise(
          standoffTolerance,
          frame.outAxis(),
          Lengths.tolerance(build.standoff(), plan.tolerances().shell()));
    }
    this.depthTolerance = depthTolerance;
    this.missing = List.copyOf(missing);
    ProudRun search = new ProudRun(run, plan, electrical, line);
    this.missingForProud = search.missing();
    this.proud = search.proud();
  }

  private static void raise(double[] axes, int axis, double value) {
    axes[axis] = Math.max(axes[axis], value);
  }

  /** Coordinates of the middle line, three for each point. */
  double[] line() {
    return line;
  }

  double radius() {
    return radius;
  }

  /** JSON pointers of the values that its middle line needs and that are missing. */
  List<String> missing() {
    return missing;
  }

  /** As {@link #missing}, and that of its diameter. */
  List<String> missingWithDiameter() {
    if (!Double.isNaN(radius)) {
      return missing;
    }
    List<String> all = new ArrayList<>(missing);
    all.add(diameterPointer);
    return List.copyOf(all);
  }

  boolean isComplete() {
    return missing.isEmpty() && !Double.isNaN(radius);
  }

  double proud() {
    return proud;
  }

  List<String> missingForProud() {
    return missingForProud;
  }

  double proudTolerance() {
    double place = depthTolerance;
    if (onlyFace == null) {
      // Around a corner a point placed from one face is measured against the studs of another.
      for (int axis = 0; axis < 3; axis++) {
        place = Math.max(place, tolerance[axis] + standoffTolerance[axis]);
      }
    }
    return place + radiusTolerance;
  }

  double radiusTolerance() {
    return radiusTolerance;
  }

  /** True if every point of its path is on this face. */
  boolean isOnlyOn(Face face) {
    return onlyFace == face;
  }

  @Nullable Face onlyFace() {
    return onlyFace;
  }

  /** Adds how far its middle line may be off, the studs' own distance from the ribs apart. */
  double motion(int axis) {
    return tolerance[axis];
  }

  /** How far the studs along it may be off the ribs, along an axis of the module. */
  double standoff(int axis) {
    return standoffTolerance[axis];
  }

  /** How far any point of its middle line may be off in space, the studs' own place included. */
  double motion() {
    return Distances.norm(
        tolerance[0] + standoffTolerance[0],
        tolerance[1] + standoffTolerance[1],
        tolerance[2] + standoffTolerance[2]);
  }

  /** The least (0, 1, 2) and greatest (3, 4, 5) coordinates of its outside. */
  double[] bounds() {
    double[] bounds = new double[6];
    for (int axis = 0; axis < 3; axis++) {
      bounds[axis] = Double.POSITIVE_INFINITY;
      bounds[3 + axis] = Double.NEGATIVE_INFINITY;
      for (int i = axis; i < line.length; i += 3) {
        bounds[axis] = Math.min(bounds[axis], line[i] - radius);
        bounds[3 + axis] = Math.max(bounds[3 + axis], line[i] + radius);
      }
    }
    return bounds;
  }
}
