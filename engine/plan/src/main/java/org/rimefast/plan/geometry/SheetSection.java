package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.clamp;
import static org.rimefast.plan.geometry.Distances.gap;
import static org.rimefast.plan.geometry.Distances.norm;

import org.rimefast.plan.CorrugationProfile;

/**
 * The cross-section of a sheet as an endless row of straight pieces: s runs along the face, o away
 * from the room. Piece 4n is the n-th inward rib after the phase, 4n+1 the web after it, 4n+2 the
 * outer bay, 4n+3 the web back. A flat sheet is one piece.
 *
 * <p>Queries limit the row to a range of s, and find the pieces near a body by arithmetic on the
 * pitch. Those that return distances allocate nothing.
 */
final class SheetSection {
  private final boolean flat;
  private final double phase;
  private final double pitch;
  private final double depth;
  private final double webStart;
  private final double bayStart;
  private final double backStart;

  SheetSection(CorrugationProfile profile, double phase) {
    this.flat = profile.isFlat();
    this.depth = profile.depth();
    this.phase = phase;
    this.pitch = profile.pitch();
    this.webStart = profile.inner();
    this.bayStart = profile.inner() + profile.web();
    this.backStart = profile.inner() + profile.web() + profile.outer();
    boolean orderly = profile.inner() >= 0 && profile.web() >= 0 && profile.outer() >= 0;
    if (!(flat || (orderly && pitch > 0 && depth > 0))) {
      throw new IllegalStateException("a plan cannot hold this profile: " + profile);
    }
  }

  boolean isFlat() {
    return flat;
  }

  double depth() {
    return depth;
  }

  /** The piece that holds s; of two that meet there, the later one. */
  int pieceAt(double s) {
    int piece = 4 * (int) Math.floor((s - phase) / pitch);
    while (start(piece) > s) {
      piece--;
    }
    while (start(piece + 1) <= s) {
      piece++;
    }
    return piece;
  }

  /** Where a piece starts; it ends where the next one starts. */
  double start(int piece) {
    int rib = piece >> 2;
    double ribStart = phase + rib * pitch;
    return switch (piece & 3) {
      case 0 -> ribStart;
      case 1 -> ribStart + webStart;
      case 2 -> ribStart + bayStart;
      // Rounding must not let a web of no width start after it ends.
      default -> Math.min(ribStart + backStart, phase + (rib + 1) * pitch);
    };
  }

  /** How far outside the inward ribs a piece is at s. */
  double out(int piece, double s) {
    int kind = piece & 3;
    if ((kind & 1) == 0) {
      return kind == 0 ? 0 : depth;
    }
    double start = start(piece);
    double share = clamp((s - start) / (start(piece + 1) - start), 0, 1);
    return kind == 1 ? share * depth : (1 - share) * depth;
  }

  /** The least distance outside the inward ribs of any point between two places. */
  double leastOut(double from, double to) {
    if (flat) {
      return 0;
    }
    int piece = pieceAt(from);
    // Between two ribs the sheet only goes out and comes back, so it is least at an end.
    int nextRib = 4 * ((piece >> 2) + 1);
    return start(nextRib) <= to ? 0 : Math.min(out(piece, from), out(pieceAt(to), to));
  }

  /** The length of the sheet between two places, measured along it. */
  double developed(double from, double to) {
    return flat ? to - from : developed(to) - developed(from);
  }

  private double developed(double s) {
    double web = backWidth();
    double slant = norm(web, depth);
    double turns = Math.floor((s - phase) / pitch);
    double rest = s - phase - turns * pitch;
    double length = Math.min(rest, webStart);
    length += slant * share(rest - webStart, web);
    length += clamp(rest - bayStart, 0, backStart - bayStart);
    length += slant * share(rest - backStart, web);
    return turns * (pitch + 2 * (slant - web)) + length;
  }

  /** The area of the section between the plane of the inward ribs and the sheet. */
  double behindRibs(double from, double to) {
    return flat ? 0 : behindRibs(to) - behindRibs(from);
  }

  private double behindRibs(double s) {
    double web = backWidth();
    double turns = Math.floor((s - phase) / pitch);
    double rest = s - phase - turns * pitch;
    double out = share(rest - webStart, web);
    double back = share(rest - backStart, web);
    double area = web * out * out / 2 + clamp(rest - bayStart, 0, backStart - bayStart);
    area += web * (back - back * back / 2);
    return depth * (turns * (web + backStart - bayStart) + area);
  }

  private double backWidth() {
    return bayStart - webStart;
  }

  /** How much of a web lies before a place; a web of no width lies before what is past it. */
  private static double share(double past, double web) {
    return web > 0 ? clamp(past / web, 0, 1) : past > 0 ? 1 : 0;
  }

  /** Where the part of a piece between {@code from} and {@code to} starts in o. */
  double clippedStartOut(int piece, double from) {
    double start = start(piece);
    return start >= from ? outStart(piece) : out(piece, from);
  }

  /** Where the part of a piece between {@code from} and {@code to} ends in o. */
  double clippedEndOut(int piece, double to) {
    return start(piece + 1) <= to ? outStart(piece + 1) : out(piece, to);
  }

  private double outStart(int piece) {
    return (piece & 3) < 2 ? 0 : depth;
  }

  /**
   * Distance between a rectangle of the section plane and the sheet between {@code from} and {@code
   * to}, or {@code limit} if it is not less.
   */
  double distance(
      double minS, double minO, double maxS, double maxO, double from, double to, double limit) {
    double least = norm(gap(minS, maxS, from, to), gap(minO, maxO, 0, depth));
    if (least >= limit) {
      return limit;
    }
    if (flat) {
      return least;
    }
    double best = limit;
    int first = pieceAt(clamp((minS + maxS) / 2, from, to));
    for (int p = first; best > least && start(p) <= to && start(p) - maxS < best; p++) {
      best = Math.min(best, pieceDistance(p, minS, minO, maxS, maxO, from, to));
    }
    for (int p = first - 1;
        best > least && start(p + 1) >= from && minS - start(p + 1) < best;
        p--) {
      best = Math.min(best, pieceDistance(p, minS, minO, maxS, maxO, from, to));
    }
    return best;
  }

  private double pieceDistance(
      int piece, double minS, double minO, double maxS, double maxO, double from, double to) {
    double start = Math.max(start(piece), from);
    double end = Math.min(start(piece + 1), to);
    if (start > end) {
      return Double.POSITIVE_INFINITY;
    }
    if ((piece & 1) == 0) {
      double o = outStart(piece);
      return norm(gap(minS, maxS, start, end), gap(minO, maxO, o, o));
    }
    return SegmentBox.distance(
        start,
        clippedStartOut(piece, from),
        0,
        end,
        clippedEndOut(piece, to),
        0,
        minS,
        minO,
        0,
        maxS,
        maxO,
        0);
  }

  /**
   * Distance between a straight segment in space and the sheet between {@code from} and {@code to}
   * in s and between {@code minT} and {@code maxT} along its ribs, or {@code limit} if it is not
   * less.
   */
  double segmentDistance(
      double s1,
      double t1,
      double o1,
      double s2,
      double t2,
      double o2, // the segment's ends
      double from,
      double minT,
      double to,
      double maxT,
      double limit) {
    double least = SegmentBox.distance(s1, t1, o1, s2, t2, o2, from, minT, 0, to, maxT, depth);
    if (least >= limit) {
      return limit;
    }
    if (flat) {
      return least;
    }
    double best = limit;
    int first = pieceAt(clamp(o2 > o1 ? s2 : s1, from, to));
    for (int p = first; best > least && start(p) <= to; p++) {
      double rest = Math.max(start(p), from);
      if (SegmentBox.distance(s1, t1, o1, s2, t2, o2, rest, minT, 0, to, maxT, depth) >= best) {
        break;
      }
      best = Math.min(best, pieceDistance(p, s1, t1, o1, s2, t2, o2, from, minT, to, maxT));
    }
    for (int p = first - 1; best > least && start(p + 1) >= from; p--) {
      double rest = Math.min(start(p + 1), to);
      if (SegmentBox.distance(s1, t1, o1, s2, t2, o2, from, minT, 0, rest, maxT, depth) >= best) {
        break;
      }
      best = Math.min(best, pieceDistance(p, s1, t1, o1, s2, t2, o2, from, minT, to, maxT));
    }
    return best;
  }

  private double pieceDistance(
      int piece,
      double s1,
      double t1,
      double o1,
      double s2,
      double t2,
      double o2,
      double from,
      double minT,
      double to,
      double maxT) {
    double start = Math.max(start(piece), from);
    double end = Math.min(start(piece + 1), to);
    if (start > end) {
      return Double.POSITIVE_INFINITY;
    }
    double startO = clippedStartOut(piece, from);
    double length = norm(end - start, clippedEndOut(piece, to) - startO);
    double es = length == 0 ? 1 : (end - start) / length;
    double eo = length == 0 ? 0 : (clippedEndOut(piece, to) - startO) / length;
    // In the piece's own axes (along it, along the ribs, square to it) it is a box without depth.
    return SegmentBox.distance(
        (s1 - start) * es + (o1 - startO) * eo,
        t1,
        (o1 - startO) * es - (s1 - start) * eo,
        (s2 - start) * es + (o2 - startO) * eo,
        t2,
        (o2 - startO) * es - (s2 - start) * eo,
        0,
        minT,
        0,
        length,
        maxT,
        0);
  }
}
