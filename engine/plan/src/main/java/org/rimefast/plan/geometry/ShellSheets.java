package org.rimefast.plan.geometry;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Plan;

/**
 * The six sheets of the shell, as far as their profiles are known. A face whose sheet is not known
 * still bounds it: no sheet reaches inside the plane of its inward ribs. So it spoils a distance
 * only if that plane is nearer than the nearest known steel.
 */
final class ShellSheets {
  private static final Face[] FACES = Face.values();

  /** In millimetres: rounding of places and distances never comes near this. */
  private static final double ROUNDING = 1e-6;

  private final Map<Face, FaceArea> areas = new EnumMap<>(Face.class);
  private final Map<Face, CorrugatedSheet> sheets = new EnumMap<>(Face.class);
  private final Map<Face, List<String>> missing = new EnumMap<>(Face.class);

  ShellSheets(Plan plan) {
    for (Face face : FACES) {
      FaceBuild build = plan.face(face);
      FaceArea area = FaceArea.of(build, plan.shell(), plan.openings());
      areas.put(face, area);
      CorrugatedSheet sheet = CorrugatedSheet.of(build, area);
      if (sheet != null) {
        sheets.put(face, sheet);
      } else {
        String absent = build.profile() == null ? "/profile" : "/phase";
        missing.put(face, List.of(build.pointer() + absent));
      }
    }
  }

  @Nullable CorrugatedSheet sheet(Face face) {
    return sheets.get(face);
  }

  FaceArea area(Face face) {
    return Objects.requireNonNull(areas.get(face), "all six faces have an area");
  }

  List<String> missing(Face face) {
    return missing.getOrDefault(face, List.of());
  }

  /** Distance from a cuboid to the steel of the faces whose sheets are known. */
  double distance(
      double minX, double minY, double minZ, double maxX, double maxY, double maxZ, Face first) {
    double best = Double.POSITIVE_INFINITY;
    best = faceDistance(first, minX, minY, minZ, maxX, maxY, maxZ, best);
    for (Face face : FACES) {
      if (face != first) {
        best = faceDistance(face, minX, minY, minZ, maxX, maxY, maxZ, best);
      }
    }
    return best;
  }

  /** Distance from a cuboid to one sheet, or the limit if it is not less or not known. */
  double faceDistance(
      Face face,
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ,
      double limit) {
    CorrugatedSheet sheet = sheets.get(face);
    if (sheet == null) {
      return limit;
    }
    FaceFrame frame = sheet.frame();
    double outA = frame.out(minX, minY, minZ);
    double outB = frame.out(maxX, maxY, maxZ);
    if (-Math.max(outA, outB) >= limit) {
      return limit;
    }
    double alongA = frame.along(minX, minY);
    double alongB = frame.along(maxX, maxY);
    return sheet.distance(
        Math.min(alongA, alongB),
        frame.up(minY, minZ),
        Math.min(outA, outB),
        Math.max(alongA, alongB),
        frame.up(maxY, maxZ),
        Math.max(outA, outB),
        limit);
  }

  /** No sheet of this face can be nearer to a cuboid than this. */
  double leastDistance(
      Face face, double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
    FaceArea area = area(face);
    FaceFrame frame = area.frame();
    double alongA = frame.along(minX, minY);
    double alongB = frame.along(maxX, maxY);
    double minAlong = Math.min(alongA, alongB);
    double maxAlong = Math.max(alongA, alongB);
    double minUp = frame.up(minY, minZ);
    double maxUp = frame.up(maxY, maxZ);
    double maxOut = Math.max(frame.out(minX, minY, minZ), frame.out(maxX, maxY, maxZ));
    return area.upright()
        ? area.leastDistance(minAlong, minUp, maxAlong, maxUp, maxOut)
        : area.leastDistance(minUp, minAlong, maxUp, maxAlong, maxOut);
  }

  /** True if a face whose sheet is not known could be nearer to a cuboid than {@code found}. */
  boolean isSpoilt(
      double minX, double minY, double minZ, double maxX, double maxY, double maxZ, double found) {
    for (Face face : FACES) {
      if (couldBeNearer(face, minX, minY, minZ, maxX, maxY, maxZ, found)) {
        return true;
      }
    }
    return false;
  }

  /** Pointers of what is missing of the faces that could be nearer to a cuboid. */
  List<String> spoilers(Cuboid box, double found) {
    Set<String> pointers = new LinkedHashSet<>();
    for (Face face : FACES) {
      if (couldBeNearer(
          face, box.minX(), box.minY(), box.minZ(), box.maxX(), box.maxY(), box.maxZ(), found)) {
        pointers.addAll(missing(face));
      }
    }
    return List.copyOf(pointers);
  }

  private boolean couldBeNearer(
      Face face,
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ,
      double found) {
    return sheets.get(face) == null
        && isNearer(leastDistance(face, minX, minY, minZ, maxX, maxY, maxZ), found);
  }

  /**
   * True if a distance is less by more than rounding: of framing that stands off two faces alike,
   * which of them is farther would otherwise hang on which way the module is drawn.
   */
  static boolean isNearer(double distance, double found) {
    return distance < found - ROUNDING;
  }

  /** Which face is nearest to a cuboid and where; null if there is no steel. */
  @Nullable ShellNearest nearest(Cuboid box) {
    double best = Double.POSITIVE_INFINITY;
    Face nearest = null;
    for (Face face : FACES) {
      double distance =
          faceDistance(
              face, box.minX(), box.minY(), box.minZ(), box.maxX(), box.maxY(), box.maxZ(), best);
      if (distance < best) {
        best = distance;
        nearest = face;
      }
    }
    CorrugatedSheet sheet = nearest == null ? null : sheets.get(nearest);
    if (nearest == null || sheet == null) {
      return null;
    }
    FaceFrame frame = sheet.frame();
    double alongA = frame.along(box.minX(), box.minY());
    double alongB = frame.along(box.maxX(), box.maxY());
    double outA = frame.out(box.minX(), box.minY(), box.minZ());
    double outB = frame.out(box.maxX(), box.maxY(), box.maxZ());
    Nearest place =
        sheet.nearest(
            Math.min(alongA, alongB),
            frame.up(box.minY(), box.minZ()),
            Math.min(outA, outB),
            Math.max(alongA, alongB),
            frame.up(box.maxY(), box.maxZ()),
            Math.max(outA, outB));
    return place == null ? null : new ShellNearest(nearest, place);
  }
}
