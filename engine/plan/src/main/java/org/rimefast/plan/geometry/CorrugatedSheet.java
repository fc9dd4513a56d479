package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.gap;
import static org.rimefast.plan.geometry.Distances.norm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;
import org.rimefast.plan.ShellSize;

/**
 * The sheet of one face: the surface that looks into the room, from one end of the face to the
 * other, with the openings cut out. Lengths in millimetres.
 *
 * <p>Distances take the coordinates of the face ({@link FaceFrame}). The questions about zones take
 * positions in the direction in which the profile varies: {@code along} where the ribs are upright,
 * {@code up} where they are level. They look at the profile from end to end, as if no opening were
 * cut. A flat sheet lies in the plane of the inward ribs, and counts as one inward rib.
 *
 * <p>Distances, margins and gaps allocate nothing.
 *
 * <pre>{@code
 * CorrugatedSheet sheet = geometry.sheet(Face.LEFT);
 * double margin = sheet.marginInside(Zone.OUTER_BAY, 1173, 1227); // a box 54 mm wide at 1200 mm
 * }</pre>
 */
public final class CorrugatedSheet {
  private final FaceArea area;
  private final SheetSection section;
  private final ZoneStretches ribs;
  private final ZoneStretches webs;
  private final ZoneStretches bays;
  private final double slope;

  private CorrugatedSheet(FaceArea area, CorrugationProfile profile, double phase) {
    this.area = area;
    this.section = new SheetSection(profile, phase);
    double extent = area.extentS();
    this.ribs = ZoneStretches.of(Zone.INWARD_RIB, profile, phase, extent);
    this.webs = ZoneStretches.of(Zone.WEB, profile, phase, extent);
    this.bays = ZoneStretches.of(Zone.OUTER_BAY, profile, phase, extent);
    this.slope = profile.depth() / profile.web();
  }

  /**
   * The sheet of a face; null if its profile is not given, or if it is corrugated and its phase is
   * not given.
   *
   * @param openings openings of any faces; those of this one are cut out
   */
  public static @Nullable CorrugatedSheet of(
      FaceBuild build, ShellSize shell, List<Opening> openings) {
    return of(build, FaceArea.of(build, shell, openings));
  }

  static @Nullable CorrugatedSheet of(FaceBuild build, FaceArea area) {
    CorrugationProfile profile = build.profile();
    if (profile == null || (build.phase() == null && !profile.isFlat())) {
      return null;
    }
    double phase = build.phase() == null ? 0 : Lengths.millimetres(build.phase());
    return new CorrugatedSheet(area, profile, phase);
  }

  /** The coordinates of the face. */
  public FaceFrame frame() {
    return area.frame();
  }

  /** True for a sheet without ribs. */
  public boolean isFlat() {
    return section.isFlat();
  }

  /** True if positions in the profile run along the face, false if they run up it. */
  public boolean variesAlong() {
    return area.upright();
  }

  /** How far the face extends in the direction in which the profile varies. */
  public double extent() {
    return area.extentS();
  }

  FaceArea area() {
    return area;
  }

  /** How far the sheet may move outward at a fixed place when its phase moves by this much. */
  double outwardShift(double phaseShift) {
    return phaseShift == 0 || section.isFlat() ? 0 : Math.min(section.depth(), slope * phaseShift);
  }

  /**
   * The exact least distance from an upright cuboid, given in the face's coordinates, to the steel;
   * 0 if the sheet passes through it or touches it, infinite if openings take up the whole face.
   */
  public double distance(
      double alongMin, double upMin, double outMin, double alongMax, double upMax, double outMax) {
    return distance(alongMin, upMin, outMin, alongMax, upMax, outMax, Double.POSITIVE_INFINITY);
  }

  /** As {@link #distance}, or {@code limit} if it is not less. */
  double distance(
      double alongMin,
      double upMin,
      double outMin,
      double alongMax,
      double upMax,
      double outMax,
      double limit) {
    boolean upright = area.upright();
    double minS = upright ? alongMin : upMin;
    double maxS = upright ? alongMax : upMax;
    double minT = upright ? upMin : alongMin;
    double maxT = upright ? upMax : alongMax;
    double best = limit;
    for (int i = 0; i < area.count(); i++) {
      // Along the ribs the sheet does not change, so the distance splits into that direction and
      // the section plane.
      double gapT = gap(minT, maxT, area.minT(i), area.maxT(i));
      if (gapT < best) {
        double inSection =
            section.distance(minS, outMin, maxS, outMax, area.from(i), area.to(i), best);
        if (inSection < best) {
          best = Math.min(best, norm(gapT, inSection));
        }
      }
    }
    return best;
  }

  /**
   * The exact least distance from a straight segment, given in the face's coordinates, to the
   * steel; for a round bar around it, subtract the radius. 0 if the segment crosses the sheet,
   * infinite if openings take up the whole face.
   */
  public double segmentDistance(
      double along1, double up1, double out1, double along2, double up2, double out2) {
    return segmentDistance(along1, up1, out1, along2, up2, out2, Double.POSITIVE_INFINITY);
  }

  /** As {@link #segmentDistance}, or {@code limit} if it is not less. */
  double segmentDistance(
      double along1,
      double up1,
      double out1,
      double along2,
      double up2,
      double out2,
      double limit) {
    boolean upright = area.upright();
    double best = limit;
    for (int i = 0; i < area.count(); i++) {
      best =
          section.segmentDistance(
              upright ? along1 : up1,
              upright ? up1 : along1,
              out1,
              upright ? along2 : up2,
              upright ? up2 : along2,
              out2,
              area.from(i),
              area.minT(i),
              area.to(i),
              area.maxT(i),
              best);
    }
    return best;
  }

  /**
   * The least distance from a cuboid and where it is, in module coordinates; null if openings take
   * up the whole face.
   */
  public @Nullable Nearest nearest(
      double alongMin, double upMin, double outMin, double alongMax, double upMax, double outMax) {
    double distance = distance(alongMin, upMin, outMin, alongMax, upMax, outMax);
    NearestOnSheet search = new NearestOnSheet(area, section);
    return area.upright()
        ? search.toBox(alongMin, upMin, outMin, alongMax, upMax, outMax, distance)
        : search.toBox(upMin, alongMin, outMin, upMax, alongMax, outMax, distance);
  }

  /**
   * The least distance from a segment and where it is, in module coordinates; null if openings take
   * up the whole face.
   */
  public @Nullable Nearest segmentNearest(
      double along1, double up1, double out1, double along2, double up2, double out2) {
    double distance = segmentDistance(along1, up1, out1, along2, up2, out2);
    NearestOnSheet search = new NearestOnSheet(area, section);
    return area.upright()
        ? search.toSegment(along1, up1, out1, along2, up2, out2, distance)
        : search.toSegment(up1, along1, out1, up2, along2, out2, distance);
  }

  /**
   * The zone at a position. Where two zones meet it is the one that begins there; outside the face
   * the profile goes on.
   */
  public Zone zoneAt(double at) {
    if (section.isFlat()) {
      return Zone.INWARD_RIB;
    }
    return switch (section.pieceAt(at) & 3) {
      case 0 -> Zone.INWARD_RIB;
      case 2 -> Zone.OUTER_BAY;
      default -> Zone.WEB;
    };
  }

  /**
   * How far inside one stretch of a zone the range lies: the lesser of the room left before it and
   * after it, in the stretch for which that is greatest.
   *
   * <p>0 or more: all of it lies in one stretch, and this is the least shift that brings a part of
   * it out. Less than 0: it is not inside, and at best one of its ends reaches out of a stretch by
   * this much. For a range that is not wider than that stretch this is the least shift that would
   * bring it in; one that is wider reaches out by at least half the excess, and no shift helps
   * ({@link #shiftInto} tells). Negative infinity: the face has no such stretch.
   *
   * <p>If neither end of the range moves by more than d, this does not change by more than d.
   */
  public double marginInside(Zone zone, double from, double to) {
    return stretches(zone).marginInside(from, to);
  }

  /**
   * The distance along the face from a range to the nearest stretch of a zone.
   *
   * <p>More than 0: the range keeps clear of the zone by this much (infinite if the face has no
   * such stretch). 0: it touches one. Less than 0: it overlaps one or more, and this is minus the
   * least reach of an end of the range past the free space between two stretches; for a range that
   * is not wider than that space, the least shift that ends every overlap; for one wider than every
   * space no shift does ({@link #shiftClearOf} tells). Negative infinity: the zone fills the face.
   *
   * <p>If neither end of the range moves by more than d, this does not change by more than d.
   */
  public double gapTo(Zone zone, double from, double to) {
    return stretches(zone).gapTo(from, to);
  }

  /**
   * The least shift, positive toward greater positions, that brings a range into one stretch of a
   * zone: 0 if it is inside, NaN if it is wider than every stretch.
   */
  public double shiftInto(Zone zone, double from, double to) {
    return stretches(zone).shiftInto(from, to);
  }

  /**
   * The least shift, positive toward greater positions, after which a range lies in the face and
   * overlaps no stretch of a zone: 0 if it does so now, NaN if it is too wide for that anywhere.
   */
  public double shiftClearOf(Zone zone, double from, double to) {
    return stretches(zone).shiftClearOf(from, to);
  }

  /** Width of the widest stretch of a zone in the face; 0 if there is none. */
  public double widest(Zone zone) {
    return stretches(zone).widest();
  }

  /**
   * What a range faces: every stretch of any zone that it overlaps, in order of position. A range
   * of no width faces what {@link #zoneAt} names.
   */
  public List<Stretch> facing(double from, double to) {
    List<Stretch> found = new ArrayList<>();
    for (Zone zone : Zone.values()) {
      ZoneStretches stretches = stretches(zone);
      for (int i = stretches.firstEndingAfter(from); i < stretches.count(); i++) {
        double start = stretches.from(i);
        if (start < to || (from == to && start <= to)) {
          double end = stretches.to(i);
          found.add(new Stretch(zone, i + 1, start, end, Math.max(from, start), Math.min(to, end)));
        } else {
          break;
        }
      }
    }
    found.sort(Comparator.comparingDouble(Stretch::from));
    return List.copyOf(found);
  }

  /**
   * How far the sheet lies outside the plane of its inward ribs, at the nearest point of a range: 0
   * if the range faces an inward rib. Openings count as sheet.
   */
  public double leastOut(double from, double to) {
    return section.leastOut(from, to);
  }

  SheetSection section() {
    return section;
  }

  private ZoneStretches stretches(Zone zone) {
    return switch (zone) {
      case INWARD_RIB -> ribs;
      case WEB -> webs;
      case OUTER_BAY -> bays;
    };
  }
}
