package org.rimefast.plan.geometry;

import org.rimefast.plan.Face;

/** Distances from a part of a run's middle line to the shell. Allocates nothing. */
final class StretchClearance {
  private static final Face[] FACES = Face.values();

  private final ShellSheets shell;
  private final RunGeometry runs;

  StretchClearance(ShellSheets shell, RunGeometry runs) {
    this.shell = shell;
    this.runs = runs;
  }

  /** The length of a run's middle line; NaN if a value is missing. */
  static double length(double[] line) {
    double sum = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      sum += segment(line, i);
    }
    return sum;
  }

  private static double segment(double[] line, int i) {
    return Distances.norm(
        line[i + 3] - line[i], line[i + 4] - line[i + 1], line[i + 5] - line[i + 2]);
  }

  /**
   * The least distance from a run's outside to the steel over a stretch of its middle line, given
   * by lengths from its first end; infinite if the stretch lies beyond the run, NaN as for the
   * whole run.
   */
  double clearance(int run, double from, double to) {
    PlacedRun placed = runs.run(run);
    if (!placed.isComplete()) {
      return Double.NaN;
    }
    double[] line = placed.line();
    double best = Double.POSITIVE_INFINITY;
    for (Face face : FACES) {
      best = shell.sheet(face) == null ? best : distance(face, line, from, to, best);
    }
    for (Face face : FACES) {
      if (shell.sheet(face) == null && distance(face, line, from, to, best) < best) {
        return best <= placed.radius() ? 0 : Double.NaN;
      }
    }
    return Math.max(0, best - placed.radius());
  }

  /**
   * The distance from a stretch of a line to one sheet or, if that is not known, the least that it
   * can be; the limit if it is not less.
   */
  private double distance(Face face, double[] line, double from, double to, double limit) {
    CorrugatedSheet sheet = shell.sheet(face);
    FaceArea area = shell.area(face);
    FaceFrame frame = area.frame();
    double best = limit;
    double start = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      double length = segment(line, i);
      double low = Math.max(0, (from - start) / length);
      double high = Math.min(1, (to - start) / length);
      start += length;
      if (!(low <= high)) {
        continue;
      }
      double dx = line[i + 3] - line[i];
      double dy = line[i + 4] - line[i + 1];
      double dz = line[i + 5] - line[i + 2];
      double x1 = line[i] + low * dx;
      double y1 = line[i + 1] + low * dy;
      double z1 = line[i + 2] + low * dz;
      double x2 = line[i] + high * dx;
      double y2 = line[i + 1] + high * dy;
      double z2 = line[i + 2] + high * dz;
      double along1 = frame.along(x1, y1);
      double along2 = frame.along(x2, y2);
      double up1 = frame.up(y1, z1);
      double up2 = frame.up(y2, z2);
      double out1 = frame.out(x1, y1, z1);
      double out2 = frame.out(x2, y2, z2);
      double one =
          sheet != null
              ? sheet.segmentDistance(along1, up1, out1, along2, up2, out2, best)
              : area.upright()
                  ? area.leastSegmentDistance(along1, up1, out1, along2, up2, out2)
                  : area.leastSegmentDistance(up1, along1, out1, up2, along2, out2);
      best = Math.min(best, one);
    }
    return best;
  }
}
