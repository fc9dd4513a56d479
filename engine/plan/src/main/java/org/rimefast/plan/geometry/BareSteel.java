package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimefast.plan.Amount;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.FoamAccess.BareArea;

/** What steel a foam gun leaves bare, by the model of {@link FoamAccess}. */
final class BareSteel {
  static final Bounds NONE = new Bounds(0, 0);

  private static final double ROUNDING = 1e-6;

  /** Whether the least that can be bare is asked for, what is drawn, or the most. */
  private enum Case {
    LEAST(-1),
    DRAWN(0),
    MOST(1);

    final int sign;

    Case(int sign) {
      this.sign = sign;
    }
  }

  private final ModuleGeometry geometry;
  private final OnFace onFace;
  private final FreeSides sides;
  private final BackGaps backs;
  private final double nozzle;
  private final double nozzleTolerance;
  private final double reach;
  private final double reachTolerance;
  private final Bounds[] parts;
  private final Bounds[] faces = new Bounds[Face.values().length];

  BareSteel(
      ModuleGeometry geometry,
      OnFace onFace,
      FreeSides sides,
      BackGaps backs,
      Amount nozzle,
      Amount reach) {
    this.geometry = geometry;
    this.onFace = onFace;
    this.sides = sides;
    this.backs = backs;
    this.nozzle = nozzle.millimetres();
    this.nozzleTolerance = Lengths.ownTolerance(nozzle);
    this.reach = reach.millimetres();
    this.reachTolerance = Lengths.ownTolerance(reach);
    this.parts = new Bounds[geometry.plan().parts().size()];
    for (int part = 0; part < parts.length; part++) {
      boolean known = geometry.placed(part).isComplete() && !Double.isNaN(backs.drawn(part));
      parts[part] =
          known
              ? between(behind(part, Case.LEAST).area(), behind(part, Case.MOST).area())
              : Bounds.MISSING;
    }
    for (Face face : Face.values()) {
      faces[face.ordinal()] = workOut(face);
    }
  }

  /** Sums are rounded, so that the greater of two equal ones can come out the lesser. */
  private static Bounds between(double least, double most) {
    return new Bounds(Math.min(least, most), Math.max(least, most));
  }

  Bounds behind(int part) {
    return parts[part];
  }

  /** What stays bare behind a part as drawn; empty if that is not known. */
  Optional<BareArea> area(int part) {
    return parts[part].isKnown() ? Optional.of(behind(part, Case.DRAWN)) : Optional.empty();
  }

  Bounds of(Face face) {
    return faces[face.ordinal()];
  }

  List<BareArea> areas(Face face) {
    return areas(face, Case.DRAWN).stream().filter(area -> area.area() > 0).toList();
  }

  /** What of the steel behind a part stays bare: its rectangle less a strip at each open side. */
  private BareArea behind(int part, Case which) {
    PlacedPart placed = geometry.placed(part);
    double needed = nozzle + which.sign * nozzleTolerance;
    double carried = gap(backs.least(part), backs.drawn(part), backs.most(part), which);
    double strip =
        carried >= needed - ROUNDING ? Math.max(0, reach - which.sign * reachTolerance) : 0;
    double along = which.sign * placed.alongTolerance();
    double up = which.sign * placed.upTolerance();
    return new BareArea(
        part,
        false,
        placed.alongMin() - along + strip(part, FreeSides.LEFT, strip, needed, which),
        placed.upMin() - up + strip(part, FreeSides.BELOW, strip, needed, which),
        placed.alongMax() + along - strip(part, FreeSides.RIGHT, strip, needed, which),
        placed.upMax() + up - strip(part, FreeSides.ABOVE, strip, needed, which));
  }

  private double strip(int part, int side, double strip, double needed, Case which) {
    double free =
        gap(sides.least(part, side), sides.drawn(part, side), sides.most(part, side), which);
    return free >= needed - ROUNDING ? strip : 0;
  }

  /** The gap that leaves the most bare is the least one. */
  private static double gap(double least, double drawn, double most, Case which) {
    return switch (which) {
      case LEAST -> most;
      case DRAWN -> drawn;
      case MOST -> least;
    };
  }

  private Bounds workOut(Face face) {
    CorrugationProfile profile = geometry.plan().face(face).profile();
    if (profile != null && !profile.steel()) {
      return NONE;
    }
    List<Part> all = geometry.plan().parts();
    for (int part = 0; part < all.size(); part++) {
      if (all.get(part).face() == face && !onFace.comesAfterFoam(part) && !parts[part].isKnown()) {
        return Bounds.MISSING;
      }
    }
    return between(area(face, Case.LEAST), area(face, Case.MOST));
  }

  /** The area of the union, less what openings take of it. */
  private double area(Face face, Case which) {
    FaceFrame frame = geometry.frame(face);
    List<BareArea> areas = areas(face, which);
    double[] holes = SheetQuantities.openings(geometry.plan(), frame, -which.sign);
    double[] all = new double[4 * areas.size() + holes.length];
    for (int i = 0; i < areas.size(); i++) {
      BareArea area = areas.get(i);
      all[4 * i] = Math.max(0, area.alongMin());
      all[4 * i + 1] = Math.max(0, area.upMin());
      all[4 * i + 2] = Math.min(frame.alongExtent(), area.alongMax());
      all[4 * i + 3] = Math.min(frame.upExtent(), area.upMax());
    }
    System.arraycopy(holes, 0, all, 4 * areas.size(), holes.length);
    return Math.max(0, RectangleUnion.area(all) - RectangleUnion.area(holes));
  }

  private List<BareArea> areas(Face face, Case which) {
    List<BareArea> found = new ArrayList<>();
    List<Integer> studs = new ArrayList<>();
    List<Part> all = geometry.plan().parts();
    for (int part = 0; part < all.size(); part++) {
      if (all.get(part).face() == face && !onFace.comesAfterFoam(part) && parts[part].isKnown()) {
        found.add(behind(part, which));
        if (all.get(part) instanceof Part.Stud) {
          studs.add(part);
        }
      }
    }
    addStrips(face, studs, which, found);
    return found;
  }

  /** Strips between a stud and an end of the face or another stud into which no nozzle goes. */
  private void addStrips(Face face, List<Integer> studs, Case which, List<BareArea> found) {
    studs.sort(Comparator.comparingDouble(stud -> geometry.placed(stud).alongMin()));
    double extent = geometry.frame(face).alongExtent();
    double farthest = nozzle + nozzleTolerance + 2 * onFace.greatestTolerance();
    for (int i = 0; i < studs.size(); i++) {
      int stud = studs.get(i);
      PlacedPart placed = geometry.placed(stud);
      double own = placed.alongTolerance();
      double up = which.sign * placed.upTolerance();
      double low = placed.upMin() - up;
      double high = placed.upMax() + up;
      if (isNarrow(placed.alongMin(), own, which)) {
        found.add(strip(stud, 0, low, placed.alongMin() + which.sign * own, high));
      }
      if (isNarrow(extent - placed.alongMax(), own, which)) {
        found.add(strip(stud, placed.alongMax() - which.sign * own, low, extent, high));
      }
      for (int j = i + 1; j < studs.size(); j++) {
        PlacedPart next = geometry.placed(studs.get(j));
        double between = next.alongMin() - placed.alongMax();
        if (between > farthest) {
          break;
        }
        double nextOwn = next.alongTolerance();
        double nextUp = which.sign * next.upTolerance();
        if (isNarrow(between, own + nextOwn, which)) {
          found.add(
              strip(
                  stud,
                  placed.alongMax() - which.sign * own,
                  Math.max(low, next.upMin() - nextUp),
                  next.alongMin() + which.sign * nextOwn,
                  Math.min(high, next.upMax() + nextUp)));
        }
      }
    }
  }

  /** Whether a gap counts as one into which no nozzle goes; the most is bare if it is least. */
  private boolean isNarrow(double gap, double tolerance, Case which) {
    double needed = nozzle + which.sign * nozzleTolerance;
    return gap - which.sign * tolerance < needed - ROUNDING;
  }

  private static BareArea strip(int stud, double from, double low, double to, double high) {
    return new BareArea(stud, true, from, low, to, high);
  }
}
