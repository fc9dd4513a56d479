package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.geometry.StudPass.Range;

/**
 * Which studs the runs of a plan pass through. The web of a stud, a C section, is taken as the
 * plane at the middle of its width; a run passes through it if its middle line crosses that plane
 * within the stud's height and depth. Worked out once for all runs and studs that have a place; for
 * the others it is asked how far what is known rules it out.
 */
final class StudPasses {
  private static final StudPass[] NONE = {};
  private static final Face[] FACES = Face.values();

  private final RunGeometry runs;
  private final PartGeometry parts;
  private final HolesOfStuds holes;
  private final double[] webs; // where the web is along its face; NaN if not known, or no stud
  private final int[] all;
  private final int[] unplaced;
  private final StudPass[][] byRun;

  StudPasses(Plan plan, RunGeometry runs, PartGeometry parts) {
    this.runs = runs;
    this.parts = parts;
    this.holes = new HolesOfStuds(plan);
    this.webs = new double[plan.parts().size()];
    Arrays.fill(webs, Double.NaN);
    IndexList every = new IndexList();
    IndexList placed = new IndexList();
    IndexList missing = new IndexList();
    double farthest = 0;
    for (int i = 0; i < webs.length; i++) {
      if (plan.parts().get(i) instanceof Part.Stud stud) {
        every.accept(i);
        webs[i] = Lengths.millimetres(stud.along());
        (parts.part(i).isComplete() ? placed : missing).accept(i);
        farthest = Math.max(farthest, motion(parts, i));
      }
    }
    this.all = every.toArray();
    this.unplaced = missing.toArray();
    this.byRun = new StudPass[runs.count()][];
    BoxTree studs = new BoxTree(parts.boxes(), placed.toArray());
    for (int run = 0; run < byRun.length; run++) {
      byRun[run] = runs.run(run).missing().isEmpty() ? find(run, studs, farthest) : NONE;
    }
  }

  private static double motion(PartGeometry parts, int part) {
    return Distances.norm(
        parts.motion(part, 0) + parts.standoff(part, 0),
        parts.motion(part, 1) + parts.standoff(part, 1),
        parts.motion(part, 2) + parts.standoff(part, 2));
  }

  private StudPass[] find(int run, BoxTree studs, double farthest) {
    PlacedRun placed = runs.run(run);
    double[] line = placed.line();
    IndexList near = new IndexList();
    double reach = farthest + placed.motion() + 2 * Distances.ROUNDING;
    for (int i = 0; i + 5 < line.length; i += 3) {
      studs.within(
          Math.min(line[i], line[i + 3]),
          Math.min(line[i + 1], line[i + 4]),
          Math.min(line[i + 2], line[i + 5]),
          Math.max(line[i], line[i + 3]),
          Math.max(line[i + 1], line[i + 4]),
          Math.max(line[i + 2], line[i + 5]),
          reach,
          near);
    }
    List<StudPass> found = new ArrayList<>();
    near.inOrder(stud -> addVisits(run, stud, found));
    return found.isEmpty() ? NONE : found.toArray(NONE);
  }

  private double motion(int run, int stud, int axis) {
    return runs.gapMotion(run, stud, axis, !runs.run(run).isOnlyOn(parts.face(stud)));
  }

  private void addVisits(int run, int stud, List<StudPass> found) {
    PlacedPart part = parts.part(stud);
    FaceFrame frame = part.frame();
    double slab = motion(run, stud, frame.alongAxis());
    // What lies on the edge of the slab must not be left to the last bit of its place.
    slab += slab > 0 ? Distances.ROUNDING : 0;
    WebVisit visit =
        new WebVisit(
            part.upMin(),
            part.upMax(),
            part.outMin(),
            part.outMax(),
            motion(run, stud, frame.upAxis()),
            motion(run, stud, frame.outAxis()));
    double[] line = runs.run(run).line();
    boolean within = false;
    double before = 0; // the length of the pieces before this one
    double way = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      double piece =
          Distances.norm(
              line[i + 3] - line[i], line[i + 4] - line[i + 1], line[i + 5] - line[i + 2]);
      before += piece;
      double d1 = frame.along(line[i], line[i + 1]) - webs[stud];
      double u1 = frame.up(line[i + 1], line[i + 2]);
      double o1 = frame.out(line[i], line[i + 1], line[i + 2]);
      double d2 = frame.along(line[i + 3], line[i + 4]) - webs[stud];
      double u2 = frame.up(line[i + 4], line[i + 5]);
      double o2 = frame.out(line[i + 3], line[i + 4], line[i + 5]);
      boolean startsWithin = Math.abs(d1) <= slab;
      boolean endsWithin = Math.abs(d2) <= slab;
      if (!startsWithin && !endsWithin && d1 * d2 > 0) {
        continue;
      }
      if (!within || d1 * d2 <= 0) {
        double share = d1 == d2 ? 0 : Math.min(1, Math.max(0, d1 / (d1 - d2)));
        way = before - piece + share * piece;
      }
      double from = startsWithin ? 0 : (Math.copySign(slab, d1) - d1) / (d2 - d1);
      double to = endsWithin ? 1 : (Math.copySign(slab, d2) - d1) / (d2 - d1);
      if (!within) {
        visit.enter(startsWithin ? 0 : d1 < 0 ? -1 : 1);
      }
      visit.add(
          d1 + from * (d2 - d1),
          u1 + from * (u2 - u1),
          o1 + from * (o2 - o1),
          d1 + to * (d2 - d1),
          u1 + to * (u2 - u1),
          o1 + to * (o2 - o1));
      visit.slope(d2 - d1, u2 - u1, o2 - o1);
      within = endsWithin;
      if (!within) {
        visit.leave(d2 < 0 ? -1 : 1);
      }
      if (!within || i + 8 >= line.length) {
        add(run, stud, visit, way, slab == 0, found);
      }
    }
  }

  private void add(
      int run, int stud, WebVisit visit, double way, boolean exact, List<StudPass> found) {
    Certainty passes = visit.passes(exact);
    if (passes == Certainty.NO) {
      return;
    }
    PlacedRun placed = runs.run(run);
    PlacedPart part = parts.part(stud);
    FaceFrame frame = part.frame();
    double own = placed.motion(frame.upAxis());
    own += placed.isOnlyOn(frame.face()) ? 0 : placed.standoff(frame.upAxis());
    double across = motion(run, stud, frame.outAxis());
    Range up = new Range(visit.up, visit.leastUp - own, visit.mostUp + own);
    Range out = new Range(visit.out, visit.leastOut - across, visit.mostOut + across);
    double middle = (part.outMin() + part.outMax()) / 2;
    // A round bar cut at a slant is an ellipse: its radius grows by the root of 1 + slope squared.
    double growUp = Distances.norm(1, visit.upSlope);
    double growOut = Distances.norm(1, visit.outSlope);
    boolean known = !Double.isNaN(placed.radius());
    double least = known ? placed.radius() - placed.radiusTolerance() : 0;
    double most = known ? placed.radius() + placed.radiusTolerance() : Double.POSITIVE_INFINITY;
    Certainty inHole =
        holes.holds(
            stud,
            up,
            new Range(out.drawn() - middle, out.least() - middle, out.most() - middle),
            known ? least * growUp : 0,
            most * growUp,
            known ? least * growOut : 0,
            most * growOut);
    Range setBack =
        known
            ? new Range(
                out.drawn() - part.outMin() - placed.radius() * growOut,
                out.least() - part.outMin() - most * growOut,
                out.most() - part.outMin() - least * growOut)
            : Range.UNKNOWN;
    found.add(
        new StudPass(
            stud,
            passes,
            way,
            up,
            out,
            holes.nearest(stud, up.drawn()),
            inHole,
            holes.offset(stud, up),
            holes.level(stud, up),
            setBack));
  }

  HolesOfStuds holes() {
    return holes;
  }

  /** Every place where a run passes through a stud or may, by stud; of what has a place. */
  StudPass[] of(int run) {
    return byRun[run];
  }

  /** All studs. */
  int[] all() {
    return all;
  }

  /** Studs of which it is not known where they are. */
  int[] unplaced() {
    return unplaced;
  }

  /**
   * The index in {@link #of} of the first place at a stud; that of a later stud if there is none.
   */
  int first(int run, int stud) {
    StudPass[] all = byRun[run];
    int low = 0;
    int high = all.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (all[middle].stud() < stud) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** True if both have a place, so that {@link #of} says all. */
  boolean isPlaced(int run, int stud) {
    return runs.run(run).missing().isEmpty() && parts.part(stud).isComplete();
  }

  /** Whether a run passes through a stud. */
  Certainty passes(int run, int stud) {
    if (!isPlaced(run, stud)) {
      return couldPass(run, stud) ? Certainty.POSSIBLE : Certainty.NO;
    }
    Certainty any = Certainty.NO;
    StudPass[] all = byRun[run];
    for (int i = first(run, stud); i < all.length && all[i].stud() == stud; i++) {
      any = any.or(all[i].passes());
    }
    return any;
  }

  /** Whether it does, and through a service hole wherever it does. */
  Certainty passesHole(int run, int stud) {
    if (!isPlaced(run, stud)) {
      return passes(run, stud);
    }
    Certainty any = Certainty.NO;
    Certainty every = Certainty.YES;
    StudPass[] all = byRun[run];
    for (int i = first(run, stud); i < all.length && all[i].stud() == stud; i++) {
      any = any.or(all[i].passes());
      boolean sure = all[i].passes() == Certainty.YES || all[i].inHole() == Certainty.YES;
      every = every.and(sure ? all[i].inHole() : Certainty.POSSIBLE);
    }
    return any.and(every);
  }

  /** False only if what is known of the places of both rules it out. */
  private boolean couldPass(int run, int stud) {
    PlacedPart part = parts.part(stud);
    FaceFrame frame = part.frame();
    double[] line = runs.run(run).line();
    double along = motion(run, stud, frame.alongAxis());
    double up = motion(run, stud, frame.upAxis());
    double out = motion(run, stud, frame.outAxis());
    for (int i = 0; i + 5 < line.length; i += 3) {
      boolean apart =
          apart(
                  frame.along(line[i], line[i + 1]),
                  frame.along(line[i + 3], line[i + 4]),
                  webs[stud] - along,
                  webs[stud] + along)
              || apart(
                  frame.up(line[i + 1], line[i + 2]),
                  frame.up(line[i + 4], line[i + 5]),
                  part.upMin() - up,
                  part.upMax() + up)
              || apart(
                  frame.out(line[i], line[i + 1], line[i + 2]),
                  frame.out(line[i + 3], line[i + 4], line[i + 5]),
                  part.outMin() - out,
                  part.outMax() + out);
      if (!apart) {
        return true;
      }
    }
    return false;
  }

  /** False if a value is not known. */
  private static boolean apart(double a, double b, double min, double max) {
    return Math.max(a, b) < min || Math.min(a, b) > max;
  }

  /**
   * The greatest difference of level between the holes nearest to where a run passes studs, each
   * face by itself.
   *
   * @param most true for the most that it can be, false for the least; NaN if not known
   */
  double spread(int run, boolean most) {
    if (!runs.run(run).missing().isEmpty()) {
      return Double.NaN;
    }
    for (int stud : unplaced) {
      if (couldPass(run, stud)) {
        return Double.NaN;
      }
    }
    double greatest = 0;
    for (Face face : FACES) {
      greatest = Math.max(greatest, most ? mostSpread(run, face) : leastSpread(run, face));
    }
    return greatest;
  }

  private double leastSpread(int run, Face face) {
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    for (StudPass pass : byRun[run]) {
      if (parts.face(pass.stud()) == face && pass.passes() == Certainty.YES && pass.hole() >= 0) {
        highest = Math.max(highest, pass.level().least());
        lowest = Math.min(lowest, pass.level().most());
      }
    }
    return Math.max(0, highest - lowest);
  }

  /** The highest hole and the lowest of another stud; both may be off the wrong way. */
  private double mostSpread(int run, Face face) {
    List<StudPass> all =
        Arrays.stream(byRun[run])
            .filter(pass -> parts.face(pass.stud()) == face && pass.hole() >= 0)
            .sorted(Comparator.comparingDouble(pass -> -pass.level().most()))
            .toList();
    double greatest = 0;
    for (StudPass low : all) {
      for (StudPass high : all) { // the first of another hole is the highest
        if (high.stud() != low.stud() || high.hole() != low.hole()) {
          greatest = Math.max(greatest, high.level().most() - low.level().least());
          break;
        }
      }
    }
    return greatest;
  }
}
