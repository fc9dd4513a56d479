package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Plan;

/**
 * Bounds on how much the distance between an element and the shell may differ from the nominal one.
 *
 * <p>If every point of a body moves by at most some vector, its distance to anything changes by at
 * most the vector's length, and the motions of two bodies add up. Along each axis of the module the
 * possible motions are added: of the element's place, of its ends (half of what a centred extent
 * may be off, all of what a depth may be), of the studs it stands on, and of the sheet's phase
 * across its ribs. The bound is the length of that vector.
 *
 * <p>At an end of the face or a side of an opening the cut stays where it is while the ribs move
 * past it, so there the sheet's edge also moves outward, by up to the slope of its webs times the
 * shift, and with the cut's own tolerance. This is added only where such an edge is near enough to
 * matter. The phase of a face counts only if the face could be the nearest one.
 */
final class ToleranceBounds {
  private static final Face[] FACES = Face.values();

  private final ShellSheets shell;
  private final Map<Face, Shift> shifts = new EnumMap<>(Face.class);

  /**
   * How far the sheet of a face may be off in its own plane.
   *
   * @param phase its ribs, across themselves
   * @param along the sides of its openings
   * @param up their sills and heads
   */
  private record Shift(double phase, double along, double up) {}

  ToleranceBounds(Plan plan, ShellSheets shell) {
    this.shell = shell;
    for (Face face : FACES) {
      FaceBuild build = plan.face(face);
      boolean flat = build.profile() != null && build.profile().isFlat();
      double phase = flat ? 0 : Lengths.tolerance(build.phase(), plan.tolerances().shell());
      double along = 0;
      double up = 0;
      for (Opening opening : plan.openings()) {
        if (opening.face() == face) {
          double side =
              Lengths.ownTolerance(opening.from()) + Lengths.ownTolerance(opening.width());
          double head =
              Lengths.ownTolerance(opening.sill()) + Lengths.ownTolerance(opening.height());
          along = Math.max(along, side);
          up = Math.max(up, head);
        }
      }
      shifts.put(face, new Shift(phase, along, up));
    }
  }

  private Shift shift(Face face) {
    return Objects.requireNonNull(shifts.get(face), "all six faces have a shift");
  }

  /** How far the ribs of a face may be off across themselves. */
  double phase(Face face) {
    return shift(face).phase();
  }

  /**
   * A bound for one element.
   *
   * @param motion how far its points may be off along each axis, its studs' place included
   * @param bounds its least, then greatest x, y, z; NaN if not known
   * @param clearance its nominal distance to the shell; NaN if not known
   */
  double bound(double[] motion, double[] bounds, double clearance) {
    double greatest = 0;
    for (Face face : FACES) {
      greatest = Math.max(greatest, length(motion, face, true));
    }
    // A face or edge farther than this can never become the nearest: it would have to come nearer
    // by more than the greatest bound, or what is nearest now go away by more.
    double reach = clearance + 2 * greatest;
    if (!(reach < Double.POSITIVE_INFINITY)) {
      return greatest;
    }
    double bound = 0;
    for (Face face : FACES) {
      double least =
          shell.leastDistance(
              face, bounds[0], bounds[1], bounds[2], bounds[3], bounds[4], bounds[5]);
      // An edge's tolerance may also bring steel where the plan has a hole.
      if (least - shift(face).along() - shift(face).up() <= reach) {
        bound = Math.max(bound, length(motion, face, edgeDistance(face, bounds) <= reach));
      }
    }
    return bound;
  }

  private double edgeDistance(Face face, double[] bounds) {
    FaceArea area = shell.area(face);
    FaceFrame frame = area.frame();
    double alongA = frame.along(bounds[0], bounds[1]);
    double alongB = frame.along(bounds[3], bounds[4]);
    double minAlong = Math.min(alongA, alongB);
    double maxAlong = Math.max(alongA, alongB);
    double minUp = frame.up(bounds[1], bounds[2]);
    double maxUp = frame.up(bounds[4], bounds[5]);
    return area.upright()
        ? area.edgeDistance(minAlong, minUp, maxAlong, maxUp)
        : area.edgeDistance(minUp, minAlong, maxUp, maxAlong);
  }

  private double length(double[] motion, Face face, boolean nearEdge) {
    Shift shift = shift(face);
    FaceArea area = shell.area(face);
    FaceFrame frame = area.frame();
    double across = shift.phase();
    double alongRibs = 0;
    double outward = 0;
    if (nearEdge) {
      across += area.upright() ? shift.along() : shift.up();
      alongRibs = area.upright() ? shift.up() : shift.along();
      CorrugatedSheet sheet = shell.sheet(face);
      outward = sheet == null ? 0 : sheet.outwardShift(across);
    }
    int acrossAxis = area.upright() ? frame.alongAxis() : frame.upAxis();
    int alongRibsAxis = area.upright() ? frame.upAxis() : frame.alongAxis();
    double x = motion[0];
    double y = motion[1];
    double z = motion[2];
    x += added(0, acrossAxis, across, alongRibsAxis, alongRibs, frame.outAxis(), outward);
    y += added(1, acrossAxis, across, alongRibsAxis, alongRibs, frame.outAxis(), outward);
    z += added(2, acrossAxis, across, alongRibsAxis, alongRibs, frame.outAxis(), outward);
    return norm(x, y, z);
  }

  private static double added(
      int axis,
      int acrossAxis,
      double across,
      int alongRibsAxis,
      double alongRibs,
      int outAxis,
      double outward) {
    double sum = axis == acrossAxis ? across : 0;
    sum += axis == alongRibsAxis ? alongRibs : 0;
    return sum + (axis == outAxis ? outward : 0);
  }
}
