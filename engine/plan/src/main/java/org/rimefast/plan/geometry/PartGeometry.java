package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;

/** What {@link ModuleGeometry} tells about parts. */
final class PartGeometry {
  private final Plan plan;
  private final ShellSheets shell;
  private final ToleranceBounds bounds;
  private final PlacedPart[] parts;
  private final @Nullable Cuboid[] cuboids;
  private final double[] boxes; // least, then greatest x, y, z of each part; NaN if not known
  private final double[] motions; // how far each part may be off along x, y, z, its studs apart
  private final double[] standoffs; // the same of the studs it stands on
  private final double[] prouds; // how far each stands past the studs' warm face; NaN if not known
  private final double[] proudTolerances;
  private volatile @Nullable BoxTree tree; // built when first needed; building twice does no harm
  private volatile double @Nullable [] tolerances; // likewise

  PartGeometry(Plan plan, ShellSheets shell, ToleranceBounds bounds) {
    this.plan = plan;
    this.shell = shell;
    this.bounds = bounds;
    this.parts = plan.parts().stream().map(p -> PlacedPart.of(p, plan)).toArray(PlacedPart[]::new);
    this.cuboids = new Cuboid[parts.length];
    this.boxes = new double[6 * parts.length];
    this.motions = new double[3 * parts.length];
    this.standoffs = new double[3 * parts.length];
    this.prouds = new double[parts.length];
    this.proudTolerances = new double[parts.length];
    Arrays.fill(boxes, Double.NaN);
    for (int i = 0; i < parts.length; i++) {
      parts[i].putTolerance(motions, 3 * i);
      parts[i].putStandoffTolerance(standoffs, 3 * i);
      Part given = plan.parts().get(i);
      prouds[i] = -front(i, new LinkedHashSet<>());
      proudTolerances[i] =
          PlacedPart.frontTolerance(given, plan)
              + (isMeasuredFromBehind(given) ? Lengths.ownTolerance(given.depth()) : 0);
      Cuboid box = parts[i].cuboid();
      cuboids[i] = box;
      if (box != null) {
        boxes[6 * i] = box.minX();
        boxes[6 * i + 1] = box.minY();
        boxes[6 * i + 2] = box.minZ();
        boxes[6 * i + 3] = box.maxX();
        boxes[6 * i + 4] = box.maxY();
        boxes[6 * i + 5] = box.maxZ();
      }
    }
  }

  int count() {
    return parts.length;
  }

  PlacedPart part(int part) {
    return parts[part];
  }

  /** A part's cuboid in module coordinates; null if a value is missing. */
  @Nullable Cuboid cuboid(int part) {
    return cuboids[part];
  }

  Face face(int part) {
    return parts[part].frame().face();
  }

  /** Least, then greatest x, y, z of each part. */
  double[] boxes() {
    return boxes;
  }

  double clearance(int part) {
    if (!parts[part].isComplete()) {
      return Double.NaN;
    }
    double found = knownDistance(part);
    int b = 6 * part;
    boolean spoilt =
        shell.isSpoilt(
            boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3], boxes[b + 4], boxes[b + 5], found);
    return spoilt ? Double.NaN : found;
  }

  private double knownDistance(int part) {
    int b = 6 * part;
    return shell.distance(
        boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3], boxes[b + 4], boxes[b + 5], face(part));
  }

  List<String> missingForClearance(int part) {
    Cuboid box = cuboids[part];
    if (box != null) {
      return shell.spoilers(box, knownDistance(part));
    }
    Set<String> pointers = new LinkedHashSet<>(parts[part].missing());
    pointers.addAll(shell.missing(face(part)));
    return List.copyOf(pointers);
  }

  @Nullable ShellNearest nearestShell(int part) {
    Cuboid box = cuboids[part];
    return box == null || Double.isNaN(clearance(part)) ? null : shell.nearest(box);
  }

  double positionTolerance(int part) {
    double[] known = tolerances;
    if (known == null) {
      known = new double[parts.length];
      for (int i = 0; i < parts.length; i++) {
        known[i] = workOutTolerance(i);
      }
      tolerances = known;
    }
    return known[part];
  }

  private double workOutTolerance(int part) {
    double[] motion = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      motion[axis] = motions[3 * part + axis] + standoffs[3 * part + axis];
    }
    double[] box = Arrays.copyOfRange(boxes, 6 * part, 6 * part + 6);
    return bounds.bound(motion, box, clearance(part));
  }

  /** How far a part may be off along an axis of the module, the studs it stands on apart. */
  double motion(int part, int axis) {
    return motions[3 * part + axis];
  }

  /** How far the studs that a part stands on may be off along an axis of the module. */
  double standoff(int part, int axis) {
    return standoffs[3 * part + axis];
  }

  double gap(int partA, int partB) {
    int a = 6 * partA;
    int b = 6 * partB;
    return norm(
        Distances.gap(boxes[a], boxes[a + 3], boxes[b], boxes[b + 3]),
        Distances.gap(boxes[a + 1], boxes[a + 4], boxes[b + 1], boxes[b + 4]),
        Distances.gap(boxes[a + 2], boxes[a + 5], boxes[b + 2], boxes[b + 5]));
  }

  double gapTolerance(int partA, int partB) {
    return norm(gapMotion(partA, partB, 0), gapMotion(partA, partB, 1), gapMotion(partA, partB, 2));
  }

  /** How far two parts may be off against each other along an axis of the module. */
  double gapMotion(int partA, int partB, int axis) {
    double motion = motion(partA, axis) + motion(partB, axis);
    return face(partA) != face(partB)
        ? motion + standoff(partA, axis) + standoff(partB, axis)
        : motion;
  }

  double facesFrom(int part) {
    return shell.area(face(part)).upright() ? parts[part].alongMin() : parts[part].upMin();
  }

  double facesTo(int part) {
    return shell.area(face(part)).upright() ? parts[part].alongMax() : parts[part].upMax();
  }

  List<String> missingForFacing(int part) {
    Part given = plan.parts().get(part);
    FaceBuild build = plan.face(given.face());
    boolean upright = shell.area(given.face()).upright();
    Set<String> pointers = new LinkedHashSet<>();
    if (Double.isNaN(facesFrom(part))) {
      String place = given.pointer() + (upright ? "/along" : "/up");
      String extent = given.pointer() + (upright ? "/width" : "/height");
      boolean widthOfSection = upright && given instanceof Part.Stud;
      for (String pointer : parts[part].missing()) {
        if (pointer.equals(place)
            || pointer.equals(extent)
            || (widthOfSection && pointer.equals(build.pointer() + "/stud"))) {
          pointers.add(pointer);
        }
      }
    }
    pointers.addAll(shell.missing(given.face()));
    return List.copyOf(pointers);
  }

  double facesTolerance(int part) {
    PlacedPart placed = parts[part];
    boolean upright = shell.area(face(part)).upright();
    return (upright ? placed.alongTolerance() : placed.upTolerance()) + bounds.phase(face(part));
  }

  double proud(int part) {
    return prouds[part];
  }

  List<String> missingForProud(int part) {
    Set<String> pointers = new LinkedHashSet<>();
    front(part, pointers);
    return List.copyOf(pointers);
  }

  /** True if the place of its room side follows from how deep it is. */
  private static boolean isMeasuredFromBehind(Part part) {
    return part.front() == null
        && part instanceof Part.Electrical electrical
        && electrical.mount() == Mount.SURFACE;
  }

  double proudTolerance(int part) {
    return proudTolerances[part];
  }

  private double front(int part, Set<String> pointers) {
    Part given = plan.parts().get(part);
    List<String> absent = new ArrayList<>();
    double depth = Lengths.millimetres(given.depth());
    double front = PlacedPart.front(given, plan.face(given.face()), depth, absent);
    if (Double.isNaN(front) && absent.isEmpty()) {
      absent.add(given.pointer() + "/depth");
    }
    pointers.addAll(absent);
    return front;
  }

  void within(int part, double distance, IntConsumer found) {
    IndexList near = new IndexList();
    withinInAnyOrder(part, distance, near);
    near.inOrder(
        other -> {
          if (other != part) {
            found.accept(other);
          }
        });
  }

  void withinInAnyOrder(int part, double distance, IntConsumer found) {
    int b = 6 * part;
    if (parts[part].isComplete()) {
      tree()
          .within(
              boxes[b],
              boxes[b + 1],
              boxes[b + 2],
              boxes[b + 3],
              boxes[b + 4],
              boxes[b + 5],
              distance,
              found);
    }
  }

  BoxTree tree() {
    BoxTree built = tree;
    if (built == null) {
      IndexList known = new IndexList();
      for (int i = 0; i < parts.length; i++) {
        if (parts[i].isComplete()) {
          known.accept(i);
        }
      }
      built = new BoxTree(boxes, known.toArray());
      tree = built;
    }
    return built;
  }
}
