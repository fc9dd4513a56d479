package org.rimefast.plan.geometry;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;

/** Finds parts of one face by where they are on it; a part that has no place may be anywhere. */
final class OnFace {
  private static final double ROUNDING = 1e-6;

  /** Farther than anything in a module, and no more. */
  static final double FAR = 1e6;

  private final ModuleGeometry geometry;
  private final List<Part> parts;
  private final Map<Face, int[]> unplaced = new EnumMap<>(Face.class);
  private final double greatestTolerance;

  OnFace(ModuleGeometry geometry) {
    this.geometry = geometry;
    this.parts = geometry.plan().parts();
    Map<Face, IndexList> without = new EnumMap<>(Face.class);
    double greatest = 0;
    for (int i = 0; i < parts.size(); i++) {
      PlacedPart placed = geometry.placed(i);
      if (!placed.isComplete()) {
        without.computeIfAbsent(placed.frame().face(), face -> new IndexList()).accept(i);
      }
      greatest = Math.max(greatest, placed.alongTolerance());
      greatest = Math.max(greatest, Math.max(placed.upTolerance(), placed.outTolerance()));
    }
    without.forEach((face, list) -> unplaced.put(face, list.toArray()));
    this.greatestTolerance = greatest;
  }

  /**
   * Reports every part of a face that may stand in a region of it, each once and perhaps others
   * near it; those that have no place come last.
   */
  void within(
      Face face,
      double alongMin,
      double upMin,
      double outMin,
      double alongMax,
      double upMax,
      double outMax,
      IntConsumer found) {
    Cuboid box = geometry.frame(face).toModule(alongMin, upMin, outMin, alongMax, upMax, outMax);
    geometry
        .parts()
        .tree()
        .within(
            box.minX(),
            box.minY(),
            box.minZ(),
            box.maxX(),
            box.maxY(),
            box.maxZ(),
            3 * greatestTolerance,
            part -> {
              if (parts.get(part).face() == face) {
                found.accept(part);
              }
            });
    for (int part : unplaced(face)) {
      found.accept(part);
    }
  }

  /** The most that any extent of a part may be off. */
  double greatestTolerance() {
    return greatestTolerance;
  }

  int[] unplaced(Face face) {
    return unplaced.getOrDefault(face, new int[0]);
  }

  /**
   * True if a part is fixed onto the finished lining, and so is not there when foam is sprayed:
   * mounted on the surface, or with its back no nearer to the shell than the lining's room side.
   */
  boolean comesAfterFoam(int part) {
    Part given = parts.get(part);
    if (given.front() == null) {
      return given instanceof Part.Electrical electrical && electrical.mount() == Mount.SURFACE;
    }
    double lining = Lengths.millimetres(geometry.plan().face(given.face()).lining());
    double back = Lengths.millimetres(given.front()) + Lengths.millimetres(given.depth());
    return back <= ROUNDING - lining;
  }
}
