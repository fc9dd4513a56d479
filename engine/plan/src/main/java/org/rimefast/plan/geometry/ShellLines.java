package org.rimefast.plan.geometry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;

/** Distances from middle lines of runs to the sheets of the shell. */
final class ShellLines {
  private static final Face[] FACES = Face.values();

  private final ShellSheets shell;

  ShellLines(ShellSheets shell) {
    this.shell = shell;
  }

  /** Distance from a line of three numbers a point to the steel whose sheets are known. */
  double distance(double[] line) {
    double best = Double.POSITIVE_INFINITY;
    for (Face face : FACES) {
      best = faceDistance(face, line, best);
    }
    return best;
  }

  /** Distance from a line to one sheet, or the limit if it is not less or not known. */
  double faceDistance(Face face, double[] line, double limit) {
    CorrugatedSheet sheet = shell.sheet(face);
    double best = limit;
    if (sheet != null) {
      FaceFrame frame = sheet.frame();
      for (int i = 0; i + 5 < line.length; i += 3) {
        double out1 = frame.out(line[i], line[i + 1], line[i + 2]);
        double out2 = frame.out(line[i + 3], line[i + 4], line[i + 5]);
        if (-Math.max(out1, out2) < best) {
          best =
              sheet.segmentDistance(
                  frame.along(line[i], line[i + 1]),
                  frame.up(line[i + 1], line[i + 2]),
                  out1,
                  frame.along(line[i + 3], line[i + 4]),
                  frame.up(line[i + 4], line[i + 5]),
                  out2,
                  best);
        }
      }
    }
    return best;
  }

  /** True if a face whose sheet is not known could be nearer to a line than {@code found}. */
  boolean isSpoilt(double[] line, double found) {
    for (Face face : FACES) {
      if (couldBeNearer(face, line, found)) {
        return true;
      }
    }
    return false;
  }

  /** Pointers of what is missing of the faces that could be nearer to a line. */
  List<String> spoilers(double[] line, double found) {
    Set<String> pointers = new LinkedHashSet<>();
    for (Face face : FACES) {
      if (couldBeNearer(face, line, found)) {
        pointers.addAll(shell.missing(face));
      }
    }
    return List.copyOf(pointers);
  }

  private boolean couldBeNearer(Face face, double[] line, double found) {
    if (shell.sheet(face) != null) {
      return false;
    }
    FaceArea area = shell.area(face);
    FaceFrame frame = area.frame();
    for (int i = 0; i + 5 < line.length; i += 3) {
      double along1 = frame.along(line[i], line[i + 1]);
      double along2 = frame.along(line[i + 3], line[i + 4]);
      double up1 = frame.up(line[i + 1], line[i + 2]);
      double up2 = frame.up(line[i + 4], line[i + 5]);
      double out1 = frame.out(line[i], line[i + 1], line[i + 2]);
      double out2 = frame.out(line[i + 3], line[i + 4], line[i + 5]);
      double least =
          area.upright()
              ? area.leastSegmentDistance(along1, up1, out1, along2, up2, out2)
              : area.leastSegmentDistance(up1, along1, out1, up2, along2, out2);
      if (ShellSheets.isNearer(least, found)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Which face is nearest to a line and where, the point on the element at {@code radius} from the
   * line; null if there is no steel.
   */
  @Nullable ShellNearest nearest(double[] line, double radius) {
    double best = Double.POSITIVE_INFINITY;
    Face nearestFace = null;
    Nearest nearest = null;
    for (Face face : FACES) {
      CorrugatedSheet sheet = shell.sheet(face);
      double distance = faceDistance(face, line, best);
      if (sheet != null && distance < best) {
        best = distance;
        nearestFace = face;
        nearest = nearest(sheet, line);
      }
    }
    return nearestFace == null || nearest == null
        ? null
        : new ShellNearest(nearestFace, Lines.outside(nearest, radius));
  }

  private static @Nullable Nearest nearest(CorrugatedSheet sheet, double[] line) {
    FaceFrame frame = sheet.frame();
    Nearest best = null;
    for (int i = 0; i + 5 < line.length; i += 3) {
      Nearest found =
          sheet.segmentNearest(
              frame.along(line[i], line[i + 1]),
              frame.up(line[i + 1], line[i + 2]),
              frame.out(line[i], line[i + 1], line[i + 2]),
              frame.along(line[i + 3], line[i + 4]),
              frame.up(line[i + 4], line[i + 5]),
              frame.out(line[i + 3], line[i + 4], line[i + 5]));
      if (found != null && (best == null || found.distance() < best.distance())) {
        best = found;
      }
    }
    return best;
  }
}
