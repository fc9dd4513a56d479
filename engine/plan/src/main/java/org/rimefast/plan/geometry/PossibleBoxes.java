package org.rimefast.plan.geometry;

import java.util.function.IntConsumer;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;

/**
 * A box around everywhere a part or a straight piece of a run can be, within the plan's tolerances;
 * as wide as can be in a direction in which a value is missing. Bodies are numbered: parts first,
 * then runs.
 */
final class PossibleBoxes {
  private final double[] boxes;
  private final int[] bodies; // what each box is of
  private final int[] firsts; // the first box of each body; one more than there are bodies
  private final BoxTree tree;

  PossibleBoxes(ModuleGeometry geometry) {
    Plan plan = geometry.plan();
    int parts = plan.parts().size();
    int count = parts;
    for (int run = 0; run < plan.runs().size(); run++) {
      count += plan.runs().get(run).path().size() - 1;
    }
    boxes = new double[6 * count];
    bodies = new int[count];
    firsts = new int[parts + plan.runs().size() + 1];
    int[] items = new int[count];
    int at = 0;
    for (int part = 0; part < parts; part++) {
      firsts[part] = at;
      bodies[at] = part;
      put(geometry, plan.parts().get(part), part, at++);
    }
    for (int run = 0; run < plan.runs().size(); run++) {
      firsts[parts + run] = at;
      PlacedRun placed = geometry.placedRun(run);
      for (int i = 0; i + 5 < placed.line().length; i += 3) {
        bodies[at] = parts + run;
        put(placed, i, at++);
      }
    }
    firsts[parts + plan.runs().size()] = at;
    for (int i = 0; i < count; i++) {
      items[i] = i;
    }
    tree = new BoxTree(boxes, items);
  }

  private void put(ModuleGeometry geometry, Part given, int part, int at) {
    PlacedPart placed = geometry.placed(part);
    FaceFrame frame = geometry.frame(given.face());
    Point a = frame.toModule(placed.alongMin(), placed.upMin(), placed.outMin());
    Point b = frame.toModule(placed.alongMax(), placed.upMax(), placed.outMax());
    for (int axis = 0; axis < 3; axis++) {
      double off = geometry.parts().motion(part, axis) + geometry.parts().standoff(part, axis);
      put(at, axis, coordinate(a, axis), coordinate(b, axis), off);
    }
  }

  private void put(PlacedRun placed, int i, int at) {
    double[] line = placed.line();
    for (int axis = 0; axis < 3; axis++) {
      double off = placed.radius() + placed.radiusTolerance();
      off += placed.motion(axis) + placed.standoff(axis);
      put(at, axis, line[i + axis], line[i + 3 + axis], off);
    }
  }

  private void put(int at, int axis, double a, double b, double off) {
    boolean known = !Double.isNaN(a) && !Double.isNaN(b) && !Double.isNaN(off);
    boxes[6 * at + axis] = known ? Math.min(a, b) - off : -OnFace.FAR;
    boxes[6 * at + 3 + axis] = known ? Math.max(a, b) + off : OnFace.FAR;
  }

  private static double coordinate(Point point, int axis) {
    return axis == 0 ? point.x() : axis == 1 ? point.y() : point.z();
  }

  /** What a box is of. */
  int body(int box) {
    return bodies[box];
  }

  /** The first box of a body; those of the next follow. */
  int first(int body) {
    return firsts[body];
  }

  double least(int box, int axis) {
    return boxes[6 * box + axis];
  }

  double most(int box, int axis) {
    return boxes[6 * box + 3 + axis];
  }

  /** Reports each box that comes within a distance of a box, in no certain order. */
  void near(int box, double distance, IntConsumer found) {
    int b = 6 * box;
    within(
        boxes[b],
        boxes[b + 1],
        boxes[b + 2],
        boxes[b + 3],
        boxes[b + 4],
        boxes[b + 5],
        distance,
        found);
  }

  /** The same for a box of which are given least, then greatest x, y and z. */
  void within(
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ,
      double distance,
      IntConsumer found) {
    tree.within(minX, minY, minZ, maxX, maxY, maxZ, distance, found);
  }
}
