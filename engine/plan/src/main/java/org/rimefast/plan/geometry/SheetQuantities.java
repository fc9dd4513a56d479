package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Plan;

/**
 * How much steel a face has and how much foam covers it. Square and cubic millimetres. A face
 * without steel has none of either. Immutable.
 */
public final class SheetQuantities {
  private final Plan plan;
  private final ModuleGeometry geometry;
  private final Bounds[] areas = new Bounds[Face.values().length];
  private final Bounds[] developed = new Bounds[areas.length];
  private final Bounds[] volumes = new Bounds[areas.length];

  private SheetQuantities(ModuleGeometry geometry) {
    this.plan = geometry.plan();
    this.geometry = geometry;
    for (Face face : Face.values()) {
      areas[face.ordinal()] = workOutArea(face);
      developed[face.ordinal()] = workOutSteel(face);
      volumes[face.ordinal()] = workOutVolume(face);
    }
  }

  /** The quantities of a module. */
  public static SheetQuantities of(ModuleGeometry geometry) {
    return new SheetQuantities(geometry);
  }

  /** The area that foam covers: that of the face, seen from the room, less its openings. */
  public Bounds foamArea(Face face) {
    return areas[face.ordinal()];
  }

  /** The area of the sheet itself, measured along its profile, less its openings. */
  public Bounds steelArea(Face face) {
    return developed[face.ordinal()];
  }

  /**
   * The volume of foam that lies level over the inward ribs at the stated thickness and fills the
   * bays behind their plane. What studs and parts displace is not taken off.
   */
  public Bounds foamVolume(Face face) {
    return volumes[face.ordinal()];
  }

  /** JSON pointers of what is missing for {@link #foamArea}. */
  public List<String> missingForFoamArea(Face face) {
    FaceBuild build = plan.face(face);
    return build.profile() == null ? List.of(build.pointer() + "/profile") : List.of();
  }

  /** JSON pointers of what is missing for {@link #steelArea}. */
  public List<String> missingForSteelArea(Face face) {
    return isWithoutSteel(face) ? List.of() : geometry.shell().missing(face);
  }

  /** JSON pointers of what is missing for {@link #foamVolume}. */
  public List<String> missingForFoamVolume(Face face) {
    List<String> pointers = new ArrayList<>(missingForSteelArea(face));
    if (!isWithoutSteel(face) && thickness(face) == null) {
      pointers.add(plan.face(face).pointer() + "/foam/thickness");
    }
    return List.copyOf(pointers);
  }

  private boolean isWithoutSteel(Face face) {
    CorrugationProfile profile = plan.face(face).profile();
    return profile != null && !profile.steel();
  }

  private @Nullable Amount thickness(Face face) {
    FaceBuild.Foam foam = plan.face(face).foam();
    return foam == null ? null : foam.thickness();
  }

  private Bounds workOutArea(Face face) {
    if (plan.face(face).profile() == null) {
      return Bounds.MISSING;
    }
    if (isWithoutSteel(face)) {
      return new Bounds(0, 0);
    }
    FaceFrame frame = geometry.frame(face);
    double whole = frame.alongExtent() * frame.upExtent();
    return new Bounds(
        whole - RectangleUnion.area(openings(plan, frame, 1)),
        whole - RectangleUnion.area(openings(plan, frame, -1)));
  }

  /**
   * The openings of a face, clipped to it: along and up, least and then greatest.
   *
   * @param growth 1 for the most that they can take within their tolerances, -1 for the least
   */
  static double[] openings(Plan plan, FaceFrame frame, int growth) {
    List<Opening> all =
        plan.openings().stream().filter(opening -> opening.face() == frame.face()).toList();
    double[] rectangles = new double[4 * all.size()];
    for (int i = 0; i < all.size(); i++) {
      Opening opening = all.get(i);
      double from = opening.from().millimetres();
      double sill = opening.sill().millimetres();
      double fromMore = growth * Lengths.ownTolerance(opening.from());
      double sillMore = growth * Lengths.ownTolerance(opening.sill());
      double endMore = fromMore + growth * Lengths.ownTolerance(opening.width());
      double headMore = sillMore + growth * Lengths.ownTolerance(opening.height());
      rectangles[4 * i] = Math.max(0, from - fromMore);
      rectangles[4 * i + 1] = Math.max(0, sill - sillMore);
      rectangles[4 * i + 2] =
          Math.min(frame.alongExtent(), from + opening.width().millimetres() + endMore);
      rectangles[4 * i + 3] =
          Math.min(frame.upExtent(), sill + opening.height().millimetres() + headMore);
    }
    return rectangles;
  }

  private Bounds workOutSteel(Face face) {
    CorrugatedSheet sheet = geometry.sheet(face);
    if (isWithoutSteel(face)) {
      return new Bounds(0, 0);
    }
    if (sheet == null) {
      return Bounds.MISSING;
    }
    FaceArea area = sheet.area();
    double steel = 0;
    double moved = 0;
    double phase = phase(face);
    for (int i = 0; i < area.count(); i++) {
      double across = area.maxT(i) - area.minT(i);
      steel += sheet.section().developed(area.from(i), area.to(i)) * across;
      moved += moreByPhase(face, phase) * across;
    }
    Bounds flat = foamArea(face);
    double drawn = drawnArea(area);
    return new Bounds(
        steel - moved - moreByOpenings(face, area, drawn - flat.least()),
        steel + moved + moreByOpenings(face, area, flat.most() - drawn));
  }

  private Bounds workOutVolume(Face face) {
    CorrugatedSheet sheet = geometry.sheet(face);
    Amount thickness = thickness(face);
    if (isWithoutSteel(face)) {
      return new Bounds(0, 0);
    }
    if (sheet == null || thickness == null) {
      return Bounds.MISSING;
    }
    FaceArea area = sheet.area();
    double depth = sheet.section().depth();
    double bays = 0;
    double moved = 0;
    for (int i = 0; i < area.count(); i++) {
      double across = area.maxT(i) - area.minT(i);
      bays += sheet.section().behindRibs(area.from(i), area.to(i)) * across;
      // What the ribs that move past one end take away cannot be more than comes at the other.
      moved += Math.min(phase(face), area.to(i) - area.from(i)) * depth * across;
    }
    Bounds flat = foamArea(face);
    double drawn = drawnArea(area);
    double level = thickness.millimetres();
    double own = Lengths.ownTolerance(thickness);
    return new Bounds(
        flat.least() * (level - own) + bays - moved - (drawn - flat.least()) * depth,
        flat.most() * (level + own) + bays + moved + (flat.most() - drawn) * depth);
  }

  private static double drawnArea(FaceArea area) {
    double drawn = 0;
    for (int i = 0; i < area.count(); i++) {
      drawn += (area.to(i) - area.from(i)) * (area.maxT(i) - area.minT(i));
    }
    return drawn;
  }

  private double phase(Face face) {
    FaceBuild build = plan.face(face);
    CorrugationProfile profile = build.profile();
    boolean flat = profile == null || profile.isFlat();
    return flat ? 0 : Lengths.tolerance(build.phase(), plan.tolerances().shell());
  }

  /** How much longer or shorter the sheet between two cuts may get when its ribs move. */
  private double moreByPhase(Face face, double phase) {
    CorrugationProfile profile = plan.face(face).profile();
    if (phase == 0 || profile == null) {
      return 0;
    }
    double slanted = Distances.norm(profile.web(), profile.depth()) - profile.web();
    return profile.web() > 0
        ? slanted * phase / profile.web()
        : slanted * 2 * (1 + Math.floor(phase / profile.pitch()));
  }

  /** How much more sheet there may be because the openings may be off. */
  private double moreByOpenings(Face face, FaceArea area, double flat) {
    CorrugationProfile profile = plan.face(face).profile();
    if (flat <= 0 || profile == null || profile.isFlat()) {
      return Math.max(0, flat);
    }
    if (profile.web() > 0) {
      return flat * Distances.norm(profile.web(), profile.depth()) / profile.web();
    }
    // Where webs are upright, each side of an opening may take in whole ones.
    double sides = area.holes().length / 2.0 * area.extentT();
    return flat + 2 * profile.depth() * (sides + flat / profile.pitch());
  }
}
