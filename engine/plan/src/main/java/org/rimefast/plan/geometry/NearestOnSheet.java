package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.clamp;
import static org.rimefast.plan.geometry.Distances.norm;

import org.jspecify.annotations.Nullable;

/**
 * Finds where a known least distance to a sheet is taken. It looks through the pieces within that
 * distance again and so may be slow; only evidence needs it.
 */
final class NearestOnSheet {
  private final FaceArea area;
  private final SheetSection section;

  private double best = Double.POSITIVE_INFINITY;
  private final double[] onElement = new double[3]; // s, t, o
  private final double[] onSheet = new double[3];

  NearestOnSheet(FaceArea area, SheetSection section) {
    this.area = area;
    this.section = section;
  }

  @Nullable Nearest toBox(
      double minS,
      double minT,
      double minO,
      double maxS,
      double maxT,
      double maxO,
      double distance) {
    for (int i = 0; i < area.count(); i++) {
      double t = middleOfCommon(minT, maxT, area.minT(i), area.maxT(i));
      double sheetT = clamp(t, area.minT(i), area.maxT(i));
      double boxT = clamp(t, minT, maxT);
      double from = Math.max(area.from(i), minS - distance - 1);
      double to = Math.min(area.to(i), maxS + distance + 1);
      if (from > to) {
        continue;
      }
      int last = section.isFlat() ? 0 : section.pieceAt(to);
      // One piece earlier, for a web of no width that stands exactly there.
      for (int p = section.isFlat() ? 0 : section.pieceAt(from) - 1; p <= last; p++) {
        double start = start(p, area.from(i));
        if (start > end(p, area.to(i))) {
          continue;
        }
        double end = end(p, area.to(i));
        double startO = startOut(p, area.from(i));
        double endO = endOut(p, area.to(i));
        double s;
        double o;
        if (startO == endO) {
          s = clamp(middleOfCommon(minS, maxS, start, end), start, end);
          o = startO;
        } else {
          double share =
              SegmentBox.nearestAt(start, startO, 0, end, endO, 0, minS, minO, 0, maxS, maxO, 0);
          s = start + share * (end - start);
          o = startO + share * (endO - startO);
        }
        offer(clamp(s, minS, maxS), boxT, clamp(o, minO, maxO), s, sheetT, o);
      }
    }
    return result(distance);
  }

  @Nullable Nearest toSegment(
      double s1, double t1, double o1, double s2, double t2, double o2, double distance) {
    for (int i = 0; i < area.count(); i++) {
      double from = Math.max(area.from(i), Math.min(s1, s2) - distance - 1);
      double to = Math.min(area.to(i), Math.max(s1, s2) + distance + 1);
      if (from > to) {
        continue;
      }
      int last = section.isFlat() ? 0 : section.pieceAt(to);
      // One piece earlier, for a web of no width that stands exactly there.
      for (int p = section.isFlat() ? 0 : section.pieceAt(from) - 1; p <= last; p++) {
        double start = start(p, area.from(i));
        if (start > end(p, area.to(i))) {
          continue;
        }
        double startO = startOut(p, area.from(i));
        double ds = end(p, area.to(i)) - start;
        double dO = endOut(p, area.to(i)) - startO;
        double length = norm(ds, dO);
        double es = length == 0 ? 1 : ds / length;
        double eo = length == 0 ? 0 : dO / length;
        double u1 = (s1 - start) * es + (o1 - startO) * eo;
        double n1 = (o1 - startO) * es - (s1 - start) * eo;
        double u2 = (s2 - start) * es + (o2 - startO) * eo;
        double n2 = (o2 - startO) * es - (s2 - start) * eo;
        double at =
            SegmentBox.nearestAt(
                u1, t1, n1, u2, t2, n2, 0, area.minT(i), 0, length, area.maxT(i), 0);
        double u = clamp(u1 + at * (u2 - u1), 0, length);
        double t = t1 + at * (t2 - t1);
        offer(
            s1 + at * (s2 - s1),
            t,
            o1 + at * (o2 - o1),
            start + u * es,
            clamp(t, area.minT(i), area.maxT(i)),
            startO + u * eo);
      }
    }
    return result(distance);
  }

  private double start(int piece, double from) {
    return section.isFlat() ? from : Math.max(section.start(piece), from);
  }

  private double end(int piece, double to) {
    return section.isFlat() ? to : Math.min(section.start(piece + 1), to);
  }

  private double startOut(int piece, double from) {
    return section.isFlat() ? 0 : section.clippedStartOut(piece, from);
  }

  private double endOut(int piece, double to) {
    return section.isFlat() ? 0 : section.clippedEndOut(piece, to);
  }

  private void offer(double s, double t, double o, double sheetS, double sheetT, double sheetO) {
    double distance = norm(s - sheetS, t - sheetT, o - sheetO);
    if (distance < best) {
      best = distance;
      onElement[0] = s;
      onElement[1] = t;
      onElement[2] = o;
      onSheet[0] = sheetS;
      onSheet[1] = sheetT;
      onSheet[2] = sheetO;
    }
  }

  private @Nullable Nearest result(double distance) {
    return Double.isInfinite(best)
        ? null
        : new Nearest(distance, toModule(onElement), toModule(onSheet));
  }

  private Point toModule(double[] at) {
    return area.upright()
        ? area.frame().toModule(at[0], at[1], at[2])
        : area.frame().toModule(at[1], at[0], at[2]);
  }

  /** The middle of what two intervals have in common, or of the gap between them. */
  private static double middleOfCommon(double aMin, double aMax, double bMin, double bMax) {
    return (Math.max(aMin, bMin) + Math.min(aMax, bMax)) / 2;
  }
}
