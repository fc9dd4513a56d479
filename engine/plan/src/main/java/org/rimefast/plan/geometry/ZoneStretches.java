package org.rimefast.plan.geometry;

import org.rimefast.plan.CorrugationProfile;

/**
 * The stretches of one zone on one face, from the end where the coordinate is 0, cut off at the
 * ends of the face. Two webs that meet because the flat between them has no width are one stretch.
 */
final class ZoneStretches {
  private final double phase;
  private final double pitch;
  private final double extent;
  private final double[] offsets; // in one pitch, ascending
  private final double width;
  private final int first; // number of the first stretch in the face, counted from the phase
  private final int count;

  private ZoneStretches(
      double phase, double pitch, double extent, double width, double... offsets) {
    this.phase = phase;
    this.pitch = pitch;
    this.extent = extent;
    this.width = width;
    this.offsets = offsets;
    if (offsets.length == 0) {
      this.first = 0;
      this.count = 0;
      return;
    }
    int number = (int) Math.floor(-phase / pitch) * offsets.length - offsets.length;
    while (start(number) + width <= 0) {
      number++;
    }
    this.first = number;
    while (start(number) < extent) {
      number++;
    }
    this.count = number - first;
  }

  static ZoneStretches of(Zone zone, CorrugationProfile profile, double phase, double extent) {
    double inner = profile.inner();
    double web = profile.web();
    double outer = profile.outer();
    double pitch = profile.pitch();
    double width = zone == Zone.INWARD_RIB ? inner : zone == Zone.WEB ? web : outer;
    boolean whole = profile.isFlat() ? zone == Zone.INWARD_RIB : width == pitch;
    if (whole) {
      return new ZoneStretches(0, extent, extent, extent, 0);
    }
    if (profile.isFlat() || width == 0) {
      return new ZoneStretches(0, extent, extent, 0);
    }
    return switch (zone) {
      case INWARD_RIB -> new ZoneStretches(phase, pitch, extent, inner, 0);
      case OUTER_BAY -> new ZoneStretches(phase, pitch, extent, outer, inner + web);
      case WEB -> {
        if (inner == 0 && outer == 0) {
          yield new ZoneStretches(0, extent, extent, extent, 0);
        }
        if (inner == 0) {
          yield new ZoneStretches(phase, pitch, extent, 2 * web, web + outer);
        }
        if (outer == 0) {
          yield new ZoneStretches(phase, pitch, extent, 2 * web, inner);
        }
        yield new ZoneStretches(phase, pitch, extent, web, inner, inner + web + outer);
      }
    };
  }

  private double start(int number) {
    int period = Math.floorDiv(number, offsets.length);
    return phase + period * pitch + offsets[number - period * offsets.length];
  }

  /** How many lie in the face, whole or in part. */
  int count() {
    return count;
  }

  /** Where the stretch with this index, from 0, starts. */
  double from(int index) {
    return Math.max(0, start(first + index));
  }

  /** Where it ends. */
  double to(int index) {
    return Math.min(extent, start(first + index) + width);
  }

  /** Width of the widest; 0 if there is none. */
  double widest() {
    double widest = 0;
    for (int i = 0; i < count; i++) {
      widest = Math.max(widest, to(i) - from(i));
    }
    return widest;
  }

  /** Index of the first stretch that ends after {@code at}; {@link #count()} if none does. */
  int firstEndingAfter(double at) {
    if (count == 0) {
      return 0;
    }
    int estimate = (int) Math.floor((at - phase) / pitch) * offsets.length - first;
    int index = Math.max(0, Math.min(count, estimate));
    while (index > 0 && to(index - 1) > at) {
      index--;
    }
    while (index < count && to(index) <= at) {
      index++;
    }
    return index;
  }

  /** See {@link CorrugatedSheet#marginInside}. */
  double marginInside(double from, double to) {
    int near = firstEndingAfter((from + to) / 2);
    double best = Double.NEGATIVE_INFINITY;
    for (int i = Math.max(0, near - 2); i < Math.min(count, near + 3); i++) {
      best = Math.max(best, Math.min(from - from(i), to(i) - to));
    }
    return best;
  }

  /** See {@link CorrugatedSheet#gapTo}. */
  double gapTo(double from, double to) {
    int next = firstEndingAfter(from);
    double gap = next < count ? from(next) - to : Double.POSITIVE_INFINITY;
    if (gap >= 0) {
      return next > 0 ? Math.min(gap, from - to(next - 1)) : gap;
    }
    int near = firstEndingAfter((from + to) / 2);
    double reach = Double.POSITIVE_INFINITY;
    for (int i = Math.max(0, near - 2); i <= Math.min(count, near + 3); i++) {
      double left = i == 0 ? Double.NEGATIVE_INFINITY : to(i - 1);
      double right = i == count ? Double.POSITIVE_INFINITY : from(i);
      boolean free = (i == 0 ? 0 : left) < (i == count ? extent : right);
      if (free) {
        reach = Math.min(reach, Math.max(left - from, to - right));
      }
    }
    return -reach;
  }

  /** See {@link CorrugatedSheet#shiftInto}. */
  double shiftInto(double from, double to) {
    double best = Double.NaN;
    for (int i = 0; i < count; i++) {
      best = lesser(best, shift(from, to, from(i), to(i)));
    }
    return best;
  }

  /** See {@link CorrugatedSheet#shiftClearOf}. */
  double shiftClearOf(double from, double to) {
    double best = Double.NaN;
    for (int i = 0; i <= count; i++) {
      double left = i == 0 ? 0 : to(i - 1);
      double right = i == count ? extent : from(i);
      best = lesser(best, shift(from, to, left, right));
    }
    return best;
  }

  /** The least shift that brings from-to into left-right; NaN if it is too wide for it. */
  private static double shift(double from, double to, double left, double right) {
    if (to - from > right - left) {
      return Double.NaN;
    }
    return from < left ? left - from : to > right ? right - to : 0;
  }

  private static double lesser(double best, double shift) {
    return Double.isNaN(best) || Math.abs(shift) < Math.abs(best) ? shift : best;
  }
}
