package org.rimefast.plan.geometry;

import java.util.List;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;

/** What stands in the room, as boxes and as straight pieces of runs. */
final class RoomObstacles {
  private static final double ROUNDING = 1e-6;

  private final ModuleGeometry geometry;
  private final Plan plan;
  private final PossibleBoxes boxes;
  private final boolean[] inRoom; // by box

  RoomObstacles(ModuleGeometry geometry) {
    this.geometry = geometry;
    this.plan = geometry.plan();
    this.boxes = new PossibleBoxes(geometry);
    int parts = plan.parts().size();
    int bodies = parts + plan.runs().size();
    inRoom = new boolean[boxes.first(bodies)];
    for (int body = 0; body < bodies; body++) {
      for (int box = boxes.first(body); box < boxes.first(body + 1); box++) {
        inRoom[box] =
            body < parts
                ? standsInRoom(plan.parts().get(body))
                : standsInRoom(body - parts, box - boxes.first(body));
      }
    }
  }

  PossibleBoxes boxes() {
    return boxes;
  }

  boolean isInRoom(int box) {
    return inRoom[box];
  }

  boolean isPart(int box) {
    return boxes.body(box) < plan.parts().size();
  }

  /** The part that a box is of. */
  PlacedPart part(int box) {
    return geometry.placed(boxes.body(box));
  }

  /** How far a part may be off along an axis of the module. */
  double motion(int box, int axis) {
    int part = boxes.body(box);
    return geometry.parts().motion(part, axis) + geometry.parts().standoff(part, axis);
  }

  @org.jspecify.annotations.Nullable
  Cuboid cuboid(int box) {
    return geometry.cuboid(boxes.body(box));
  }

  /** The run that a box is of a piece of. */
  PlacedRun run(int box) {
    return geometry.placedRun(boxes.body(box) - plan.parts().size());
  }

  /** Where the piece starts in the coordinates of its run's line. */
  int piece(int box) {
    return 3 * (box - boxes.first(boxes.body(box)));
  }

  /** What is drawn behind the lining's room side is in the wall, whatever its tolerance. */
  private boolean standsInRoom(Part part) {
    double lining = lining(part.face());
    Amount front = part.front();
    if (front != null) {
      double depth = Lengths.millimetres(front);
      return Double.isNaN(lining) ? depth < 0 : depth < -lining - ROUNDING;
    }
    if (part instanceof Part.Electrical electrical) {
      return electrical.mount() == null || electrical.mount() == Mount.SURFACE;
    }
    return !PlacedPart.standsAtWarmFace(part);
  }

  private boolean standsInRoom(int run, int piece) {
    List<Run.PathPoint> path = plan.runs().get(run).path();
    Run.PathPoint a = path.get(piece);
    Run.PathPoint b = path.get(piece + 1);
    if (a.face() != b.face() || a.depth() == null || b.depth() == null) {
      return true;
    }
    double least = Math.min(a.depth().millimetres(), b.depth().millimetres());
    double radius = geometry.placedRun(run).radius();
    double lining = lining(a.face());
    return Double.isNaN(radius) || Double.isNaN(lining)
        ? least < 0
        : least - radius < -lining - ROUNDING;
  }

  private double lining(Face face) {
    return Lengths.millimetres(plan.face(face).lining());
  }
}
