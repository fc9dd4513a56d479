package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.StudSection;

/**
 * Where a part is, in the coordinates of its face, and how far off that may be. NaN for what cannot
 * be known because a value is missing.
 *
 * @param frame the face's coordinates
 * @param alongTolerance how far either end may be off along the face
 * @param upTolerance the same up it
 * @param outTolerance the same outward, as measured from the studs
 * @param standoffTolerance how far the studs, and so the part, may be off the ribs
 * @param missing JSON pointers of the missing values, in the order of the fields
 */
record PlacedPart(
    FaceFrame frame,
    double alongMin,
    double upMin,
    double outMin,
    double alongMax,
    double upMax,
    double outMax,
    double alongTolerance,
    double upTolerance,
    double outTolerance,
    double standoffTolerance,
    List<String> missing) {

  static PlacedPart of(Part part, Plan plan) {
    FaceBuild build = plan.face(part.face());
    FaceFrame frame = FaceFrame.of(part.face(), plan.shell());
    List<String> missing = new ArrayList<>();
    StudSection section = section(part, build);
    double along = require(part.along(), part.pointer() + "/along", missing);
    double up = Lengths.millimetres(part.up());
    double width = Lengths.millimetres(part.width());
    double height = Lengths.millimetres(part.height());
    double depth = Lengths.millimetres(part.depth());
    if (part instanceof Part.Stud) {
      width = part.width() == null && section != null ? section.flange() : width;
      depth = part.depth() == null && section != null ? section.depth() : depth;
      if (part.height() == null) {
        double low = endStandoff(plan, part.face().isWall() ? Face.FLOOR : Face.LEFT, missing);
        double high = endStandoff(plan, part.face().isWall() ? Face.ROOF : Face.RIGHT, missing);
        height = frame.upExtent() - low - high;
        up = part.up() == null ? low + height / 2 : up;
      }
      up = part.up() == null && part.height() != null ? frame.upExtent() / 2 : up;
    } else {
      require(part.up(), part.pointer() + "/up", missing);
    }
    if (part instanceof Part.Track) {
      depth = part.depth() == null && section != null ? section.depth() : depth;
    }
    // A stud's size comes from its section: the face's, unless it has its own. The face's is named
    // below, since depths are measured from it; a track's depth comes from it too.
    if (!(part instanceof Part.Stud)) {
      require(part.width(), part.pointer() + "/width", missing);
      require(part.height(), part.pointer() + "/height", missing);
    }
    if (!standsAtWarmFace(part)) {
      require(part.depth(), part.pointer() + "/depth", missing);
    }
    double front = front(part, build, depth, missing);
    double face = warmFace(build, missing);
    double outMin = front - face;
    Amount trade = trade(part, plan);
    double frontTolerance = frontTolerance(part, plan);
    return new PlacedPart(
        frame,
        along - width / 2,
        up - height / 2,
        outMin,
        along + width / 2,
        up + height / 2,
        outMin + depth,
        Lengths.tolerance(part.along(), trade) + Lengths.ownTolerance(part.width()) / 2,
        Lengths.tolerance(part.up(), trade) + Lengths.ownTolerance(part.height()) / 2,
        frontTolerance + Lengths.ownTolerance(part.depth()),
        Lengths.tolerance(build.standoff(), plan.tolerances().shell()),
        List.copyOf(missing));
  }

  /** How far inside the inward ribs the studs' warm face lies; NaN, and noted, if not given. */
  static double warmFace(FaceBuild build, List<String> missing) {
    StudSection stud = build.stud();
    if (stud == null) {
      missing.add(build.pointer() + "/stud");
    }
    double standoff = require(build.standoff(), build.pointer() + "/standoff", missing);
    return stud == null ? Double.NaN : stud.depth() + standoff;
  }

  /**
   * How far a stud that is drawn without a height stops short of the sheet at one of its ends: as
   * far as the framing of that face stands off its ribs, and nothing where there is no steel.
   */
  private static double endStandoff(Plan plan, Face end, List<String> missing) {
    FaceBuild build = plan.face(end);
    boolean steel = build.profile() == null || build.profile().steel();
    return steel ? require(build.standoff(), build.pointer() + "/standoff", missing) : 0;
  }

  static double require(@Nullable Amount amount, String pointer, List<String> missing) {
    if (amount == null) {
      missing.add(pointer);
    }
    return Lengths.millimetres(amount);
  }

  /** How deep a part's room side lies behind the studs' warm face; NaN, and noted, if not given. */
  static double front(Part part, FaceBuild build, double depth, List<String> missing) {
    if (part.front() != null) {
      return Lengths.millimetres(part.front());
    }
    if (standsAtWarmFace(part)) {
      return 0;
    }
    if (!(part instanceof Part.Electrical electrical)) {
      missing.add(part.pointer() + "/front");
      return Double.NaN;
    }
    Mount mount = electrical.mount();
    if (mount == null) {
      missing.add(part.pointer() + "/mount");
      return Double.NaN;
    }
    if (mount == Mount.COVERED) {
      return 0;
    }
    double lining = require(build.lining(), build.pointer() + "/lining", missing);
    return mount == Mount.FLUSH ? -lining : -lining - depth;
  }

  /** How far off its room side may be, its own depth apart. */
  static double frontTolerance(Part part, Plan plan) {
    double tolerance = Lengths.tolerance(part.front(), trade(part, plan));
    return part.front() == null && !standsAtWarmFace(part)
        ? tolerance + Lengths.ownTolerance(plan.face(part.face()).lining())
        : tolerance;
  }

  /** True for studs and tracks: their room side is the studs' warm face, unless they say where. */
  static boolean standsAtWarmFace(Part part) {
    return part instanceof Part.Stud || part instanceof Part.Track;
  }

  private static @Nullable StudSection section(Part part, FaceBuild build) {
    StudSection own = part instanceof Part.Stud stud ? stud.section() : null;
    return own != null ? own : build.stud();
  }

  private static @Nullable Amount trade(Part part, Plan plan) {
    return part instanceof Part.Electrical
        ? plan.tolerances().electrical()
        : plan.tolerances().framing();
  }

  /** True if the part's cuboid is known. */
  boolean isComplete() {
    return missing.isEmpty();
  }

  /** Its cuboid in module coordinates; null if a value is missing. */
  @Nullable Cuboid cuboid() {
    return isComplete() ? frame.toModule(alongMin, upMin, outMin, alongMax, upMax, outMax) : null;
  }

  /** Puts how far off it may be along x, y, z, the studs' own distance from the ribs apart. */
  void putTolerance(double[] axes, int at) {
    axes[at + frame.alongAxis()] = alongTolerance;
    axes[at + frame.upAxis()] = upTolerance;
    axes[at + frame.outAxis()] = outTolerance;
  }

  /** Puts how far the studs it stands on may be off the ribs along x, y, z. */
  void putStandoffTolerance(double[] axes, int at) {
    axes[at + frame.outAxis()] = standoffTolerance;
  }
}
