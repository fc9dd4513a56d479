package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rimefast.plan.Door;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;

/**
 * What room is free before parts and doors: of other parts, of runs, and inside the linings. Parts
 * and runs that do not come past the lining of their face stand in the wall and hinder nothing.
 * Lengths in millimetres. Immutable; the questions that end in "free" allocate nothing once a
 * thread has asked one.
 *
 * <p>What is certainly free is so wherever things are within the plan's tolerances; what may be
 * free is so somewhere. A thing that lacks a value may stand wherever the values that it has allow.
 */
public final class RoomSpace {
  private static final double ROUNDING = 1e-6;
  private static final ThreadLocal<SpaceSearch> SEARCH = ThreadLocal.withInitial(SpaceSearch::new);

  private final ModuleGeometry geometry;
  private final Plan plan;
  private final RoomObstacles obstacles;
  private final double[] insets = new double[Face.values().length];
  private final double[] insetTolerances = new double[insets.length];

  private RoomSpace(ModuleGeometry geometry) {
    this.geometry = geometry;
    this.plan = geometry.plan();
    this.obstacles = new RoomObstacles(geometry);
    for (Face face : Face.values()) {
      FaceBuild build = plan.face(face);
      insets[face.ordinal()] =
          PlacedPart.warmFace(build, new ArrayList<>()) + Lengths.millimetres(build.lining());
      insetTolerances[face.ordinal()] =
          Lengths.tolerance(build.standoff(), plan.tolerances().shell())
              + Lengths.ownTolerance(build.lining());
    }
  }

  /** The room of a module. */
  public static RoomSpace of(ModuleGeometry geometry) {
    return new RoomSpace(geometry);
  }

  /**
   * True if a space before a part on a wall is certainly free: {@code width} along the wall, or as
   * wide as the part if that is more, at whatever place covers the part's width; {@code depth} from
   * the part's room side, or from the lining if the part does not come past it; from the floor to
   * {@code height}.
   */
  public boolean isCertainlyFreeBefore(int part, double width, double depth, double height) {
    return isFreeBefore(part, width, depth, height, true);
  }

  /** True if that space may be free. */
  public boolean mayBeFreeBefore(int part, double width, double depth, double height) {
    return isFreeBefore(part, width, depth, height, false);
  }

  private boolean isFreeBefore(
      int part, double width, double depth, double height, boolean certain) {
    PlacedPart placed = geometry.placed(part);
    Face face = placed.frame().face();
    if (!placed.isComplete() || Double.isNaN(insets[face.ordinal()])) {
      return !certain;
    }
    double off = certain ? placed.alongTolerance() : -placed.alongTolerance();
    double from = placed.alongMin() - off;
    double to = placed.alongMax() + off;
    double wide = Math.max(width, to - from);
    double out = start(placed, certain);
    double end = out + depth + 2 * startTolerance(placed, certain);
    if (isBeyond(end, across(face), opposite(face), certain)
        || isBeyond(height, plan.shell().height(), Face.ROOF, certain)) {
      return false;
    }
    double extent = placed.frame().alongExtent();
    double low = Math.max(to - wide, inset(leftOf(face), certain));
    double high = Math.min(from, extent - inset(rightOf(face), certain) - wide);
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, placed.frame(), part, certain);
    return search.findsPlace(low, high, wide, 0, height, out, end);
  }

  /**
   * True if a door as wide as a part on a wall, in its room side and as high as it, certainly
   * swings through a quarter turn, hung at one of its sides.
   */
  public boolean certainlyOpens(int part) {
    return opens(part, true);
  }

  /** True if such a door may swing. */
  public boolean mayOpen(int part) {
    return opens(part, false);
  }

  private boolean opens(int part, boolean certain) {
    PlacedPart placed = geometry.placed(part);
    Face face = placed.frame().face();
    if (!placed.isComplete()) {
      return !certain;
    }
    int sign = certain ? 1 : -1;
    double off = sign * placed.alongTolerance();
    double upOff = sign * placed.upTolerance();
    double outOff = sign * outTolerance(placed);
    double radius = placed.alongMax() - placed.alongMin();
    double start = -placed.outMin() - outOff;
    double end = -placed.outMin() + radius + 2 * off + outOff;
    if (isBeyond(end, across(face), opposite(face), certain)) {
      return false;
    }
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, placed.frame(), part, certain);
    double low = placed.upMin() - upOff;
    double high = placed.upMax() + upOff;
    // A disc about a hinge that may be off lies in one so much larger about its farthest place.
    double reach = radius + 4 * off + 2 * outOff;
    return search.isQuarterFree(placed.alongMin() - off, 1, reach, low, high, start)
        || search.isQuarterFree(placed.alongMax() + off, -1, reach, low, high, start);
  }

  /**
   * True if nothing stands in the way of the leaf of an opening: always if its door opens outward
   * or if it has none and does not reach the floor. One that opens inward sweeps a quarter disc as
   * wide as the opening about its hinge, which is taken to be at the lining's room side, where the
   * leaf reaches farthest into the room.
   */
  public boolean isSwingCertainlyFree(Opening opening) {
    return isSwingFree(opening, true);
  }

  /** True if that may be so. */
  public boolean maySwingBeFree(Opening opening) {
    return isSwingFree(opening, false);
  }

  private boolean isSwingFree(Opening opening, boolean certain) {
    Door door = opening.door();
    if (door == null) {
      return !certain || !FloorLine.reachesFloor(opening);
    }
    if (door.opens() == Door.Swing.OUTWARD) {
      return true;
    }
    Face face = opening.face();
    if (!face.isWall() || Double.isNaN(insets[face.ordinal()])) {
      return !certain;
    }
    int sign = certain ? 1 : -1;
    double off = sign * Lengths.ownTolerance(opening.from());
    double widthOff = sign * Lengths.ownTolerance(opening.width());
    double upOff = sign * Lengths.ownTolerance(opening.sill());
    double headOff = upOff + sign * Lengths.ownTolerance(opening.height());
    double insetOff = sign * insetTolerances[face.ordinal()];
    double from = opening.from().millimetres();
    double width = opening.width().millimetres();
    boolean left = door.hinge() == Door.Hinge.LEFT;
    double reach = width + 3 * widthOff + 2 * off + 2 * insetOff;
    double hinge = left ? from - off : from + width + off + widthOff;
    double low = opening.sill().millimetres() - upOff;
    double high = opening.sill().millimetres() + opening.height().millimetres() + headOff;
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, geometry.frame(face), -1, certain);
    double start = insets[face.ordinal()] - insetOff;
    return search.isQuarterFree(hinge, left ? 1 : -1, reach, low, high, start);
  }

  /** Where the free space starts, inward of the ribs. */
  private double start(PlacedPart placed, boolean certain) {
    double drawn = Math.max(-placed.outMin(), insets[placed.frame().face().ordinal()]);
    return drawn - startTolerance(placed, certain);
  }

  /** How far its start may be off; less than 0 for the least that it can take. */
  private double startTolerance(PlacedPart placed, boolean certain) {
    double off = Math.max(outTolerance(placed), insetTolerances[placed.frame().face().ordinal()]);
    return certain ? off : -off;
  }

  private static double outTolerance(PlacedPart placed) {
    return placed.outTolerance() + placed.standoffTolerance();
  }

  private boolean isBeyond(double end, double extent, Face limit, boolean certain) {
    double inset = inset(limit, certain);
    return end > extent - inset + ROUNDING;
  }

  /** How far the room side of a face's lining lies inside its ribs; not known is far, or not. */
  private double inset(Face face, boolean certain) {
    double inset = insets[face.ordinal()];
    double tolerance = insetTolerances[face.ordinal()];
    if (Double.isNaN(inset)) {
      return certain ? OnFace.FAR : 0;
    }
    return certain ? inset + tolerance : inset - tolerance;
  }

  private double across(Face face) {
    return face == Face.LEFT || face == Face.RIGHT ? plan.shell().width() : plan.shell().length();
  }

  /** The wall that faces a wall. */
  public static Face opposite(Face wall) {
    return leftOf(leftOf(wall));
  }

  private static Face leftOf(Face wall) {
    return switch (wall) {
      case LEFT -> Face.REAR;
      case FRONT -> Face.LEFT;
      case RIGHT -> Face.FRONT;
      case REAR -> Face.RIGHT;
      case ROOF, FLOOR -> throw new IllegalArgumentException(wall + " is no wall");
    };
  }

  private static Face rightOf(Face wall) {
    return leftOf(opposite(wall));
  }

  /**
   * How deep the room is before a part as drawn, to the lining of the opposite wall; NaN if a value
   * is missing.
   */
  public double depthBefore(int part) {
    PlacedPart placed = geometry.placed(part);
    Face face = placed.frame().face();
    double start = Math.max(-placed.outMin(), insets[face.ordinal()]);
    return across(face) - insets[opposite(face).ordinal()] - start;
  }

  /** How high the room is as drawn, from the floor to the roof's lining; NaN if it is not known. */
  public double height() {
    return plan.shell().height() - insets[Face.ROOF.ordinal()];
  }

  /**
   * What may stand in the space before a part, wherever that is along the wall: indexes of parts,
   * and those of runs counted on from the number of parts.
   */
  public List<Integer> before(int part, double width, double depth, double height) {
    PlacedPart placed = geometry.placed(part);
    if (!placed.isComplete()) {
      return List.of();
    }
    double wide = Math.max(width, placed.alongMax() - placed.alongMin());
    double start = start(placed, true);
    double end = start + depth + 2 * startTolerance(placed, true);
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, placed.frame(), part, true);
    return Double.isNaN(start)
        ? List.of()
        : search.all(placed.alongMax() - wide, placed.alongMin() + wide, 0, height, start, end);
  }

  /** What may stand where the door of a part swings, as {@link #before} counts. */
  public List<Integer> beforeDoor(int part) {
    PlacedPart placed = geometry.placed(part);
    if (!placed.isComplete()) {
      return List.of();
    }
    double start = -placed.outMin() - outTolerance(placed);
    double reach = placed.alongMax() - placed.alongMin() + 2 * outTolerance(placed);
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, placed.frame(), part, true);
    return search.all(
        placed.alongMin() - placed.alongTolerance(),
        placed.alongMax() + placed.alongTolerance(),
        placed.upMin() - placed.upTolerance(),
        placed.upMax() + placed.upTolerance(),
        start,
        start + reach);
  }

  /** What may stand where the leaf of an opening swings, as {@link #before} counts. */
  public List<Integer> beforeOpening(Opening opening) {
    Face face = opening.face();
    double start = insets[face.ordinal()];
    Door door = opening.door();
    if (door == null || door.opens() == Door.Swing.OUTWARD || Double.isNaN(start)) {
      return List.of();
    }
    double from = opening.from().millimetres();
    double sill = opening.sill().millimetres();
    double width = opening.width().millimetres();
    boolean left = door.hinge() == Door.Hinge.LEFT;
    SpaceSearch search = SEARCH.get();
    search.begin(obstacles, geometry.frame(face), -1, true);
    return search.inQuarter(
        left ? from : from + width,
        left ? 1 : -1,
        width,
        sill,
        sill + opening.height().millimetres(),
        start);
  }

  /** JSON pointers of what is missing to be certain of the space before a part. */
  public List<String> missingBefore(int part) {
    PlacedPart placed = geometry.placed(part);
    Face face = placed.frame().face();
    Set<String> pointers = new LinkedHashSet<>(placed.missing());
    if (face.isWall()) {
      for (Face limit : List.of(face, leftOf(face), rightOf(face), opposite(face), Face.ROOF)) {
        addLining(limit, pointers);
      }
    }
    return List.copyOf(pointers);
  }

  /** JSON pointers of what is missing to be certain of the swing of a door of a part. */
  public List<String> missingForDoor(int part) {
    PlacedPart placed = geometry.placed(part);
    Set<String> pointers = new LinkedHashSet<>(placed.missing());
    if (placed.frame().face().isWall()) {
      addLining(opposite(placed.frame().face()), pointers);
    }
    return List.copyOf(pointers);
  }

  /** JSON pointers of what is missing to be certain of the swing of an opening's leaf. */
  public List<String> missingForSwing(Opening opening) {
    Set<String> pointers = new LinkedHashSet<>();
    Door door = opening.door();
    if (door == null) {
      return FloorLine.reachesFloor(opening) ? List.of(opening.pointer() + "/door") : List.of();
    }
    if (door.opens() == Door.Swing.INWARD) {
      addLining(opening.face(), pointers);
    }
    return List.copyOf(pointers);
  }

  private void addLining(Face face, Set<String> pointers) {
    List<String> missing = new ArrayList<>();
    FaceBuild build = plan.face(face);
    PlacedPart.warmFace(build, missing);
    PlacedPart.require(build.lining(), build.pointer() + "/lining", missing);
    pointers.addAll(missing);
  }

  /** JSON pointers of what is missing of a part or run, counted as {@link #before} does. */
  public List<String> missing(int body) {
    List<Part> parts = plan.parts();
    List<String> missing =
        body < parts.size() ? geometry.missing(body) : geometry.runMissing(body - parts.size());
    return Collections.unmodifiableList(missing);
  }
}
