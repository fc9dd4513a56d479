package org.rimefast.check.internal.steel;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;

/** Words for what stands or hangs in a door or a window. */
final class OpeningWords {
  private static final PlanFacts.Key<ByFace> BY_FACE =
      new PlanFacts.Key<>("openings by face", ByFace.class);

  private OpeningWords() {}

  /** The openings of each face, by where they start, and the greatest width with its tolerances. */
  private record ByFace(int[][] handles, double[][] starts, double widest) {
    static ByFace of(PlanFacts facts) {
      int[][] handles = new int[Face.values().length][];
      double[][] starts = new double[handles.length][];
      double widest = 0;
      int[] all = facts.members(Nouns.OPENING);
      for (int handle : all) {
        Opening opening = facts.opening(handle);
        widest = Math.max(widest, opening.width().millimetres() + 2 * tolerance(opening));
      }
      for (Face face : Face.values()) {
        handles[face.ordinal()] =
            Arrays.stream(all)
                .filter(handle -> facts.opening(handle).face() == face)
                .boxed()
                .sorted((a, b) -> Double.compare(from(facts, a), from(facts, b)))
                .mapToInt(Integer::intValue)
                .toArray();
        starts[face.ordinal()] =
            Arrays.stream(handles[face.ordinal()]).mapToDouble(h -> from(facts, h)).toArray();
      }
      return new ByFace(handles, starts, widest);
    }

    private static double from(PlanFacts facts, int handle) {
      return facts.opening(handle).from().millimetres();
    }

    /** Adds the openings of a face that come within a stretch along it; all if that is unknown. */
    void within(Face face, double from, double to, HandleList found) {
      int[] of = handles[face.ordinal()];
      double[] at = starts[face.ordinal()];
      boolean known = !Double.isNaN(from) && !Double.isNaN(to);
      int first = known ? Arrays.binarySearch(at, from - widest) : 0;
      for (int i = first < 0 ? -first - 1 : first; i < of.length; i++) {
        if (known && at[i] > to + widest) {
          return;
        }
        found.add(of[i]);
      }
    }
  }

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.verb(Nouns.ITEM, "lie before _", "lies before _", Kinds.element(Nouns.OPENING)),
        (facts, element, arguments) -> liesBefore(facts, element, arguments.element(0)),
        OpeningWords::near,
        (facts, element, arguments, out) -> explain(facts, element, arguments.element(0), out));
  }

  private static double tolerance(Opening opening) {
    return 1000
        * (opening.from().siTolerance()
            + opening.width().siTolerance()
            + opening.sill().siTolerance()
            + opening.height().siTolerance());
  }

  private static Truth liesBefore(PlanFacts facts, int element, int handle) {
    Opening opening = facts.opening(handle);
    if (facts.isRun(element)) {
      return hangsBefore(facts, facts.run(element), opening);
    }
    Part part = facts.part(element);
    if (part.face() != opening.face()) {
      return Truth.FALSE;
    }
    double off = tolerance(opening);
    Truth along =
        reaches(
            facts,
            Extents.middleAlong(part),
            size(facts, element, part.width(), "width"),
            opening.from().millimetres(),
            opening.width().millimetres(),
            off + Extents.alongTolerance(facts, element));
    return along == Truth.FALSE
        ? along
        : along.and(
            reaches(
                facts,
                middleUp(facts, element, part),
                size(facts, element, part.height(), "height"),
                opening.sill().millimetres(),
                opening.height().millimetres(),
                off + Extents.upTolerance(facts, element)));
  }

  private static double middleUp(PlanFacts facts, int element, Part part) {
    if (part.up() == null && part instanceof Part.Stud) {
      return part.face().isWall()
          ? facts.plan().shell().height() / 2
          : facts.plan().shell().width() / 2;
    }
    return part.up() == null ? Double.NaN : part.up().millimetres();
  }

  private static double size(PlanFacts facts, int element, @Nullable Amount given, String name) {
    if (given != null) {
      return given.millimetres();
    }
    if (facts.part(element) instanceof Part.Stud) {
      double size = StudWords.size(facts, element, name);
      return Double.isNaN(size) && name.equals("height") ? facts.plan().shell().height() : size;
    }
    return Double.NaN;
  }

  /** Whether a part reaches into the stretch of an opening; one drawn edge to edge does not. */
  private static Truth reaches(
      PlanFacts facts, double middle, double size, double from, double extent, double tolerance) {
    double inside = Math.min(middle + size / 2 - from, from + extent - middle + size / 2);
    return Math.abs(inside) <= facts.geometry().contactTolerance()
        ? Truth.FALSE
        : Touch.more(inside, tolerance);
  }

  private static Truth hangsBefore(PlanFacts facts, Run run, Opening opening) {
    Truth any = Truth.FALSE;
    List<Run.PathPoint> path = run.path();
    double radius = run.diameter() == null ? 0 : run.diameter().millimetres() / 2;
    for (int i = 0; i + 1 < path.size() && any != Truth.TRUE; i++) {
      Run.PathPoint a = path.get(i);
      Run.PathPoint b = path.get(i + 1);
      if (a.face() == opening.face() && b.face() == opening.face()) {
        double off = tolerance(opening) + Math.max(tolerance(facts, a), tolerance(facts, b));
        any = any.or(pieceBefore(a, b, opening, radius, off));
      }
    }
    return any;
  }

  private static double tolerance(PlanFacts facts, Run.PathPoint point) {
    return Math.max(tolerance(facts, point.along()), tolerance(facts, point.up()));
  }

  private static double tolerance(PlanFacts facts, @Nullable Amount place) {
    Amount trade = facts.plan().tolerances().electrical();
    if (place == null || place.plusMinus() != null || trade == null) {
      return place == null ? 0 : place.siTolerance() * 1000;
    }
    return trade.millimetres();
  }

  private static Truth pieceBefore(
      Run.PathPoint a, Run.PathPoint b, Opening opening, double radius, double tolerance) {
    double a1 = millimetres(a.along());
    double a2 = millimetres(b.along());
    double u1 = millimetres(a.up());
    double u2 = millimetres(b.up());
    double low = opening.from().millimetres();
    double high = low + opening.width().millimetres();
    double bottom = opening.sill().millimetres();
    double top = bottom + opening.height().millimetres();
    double most = radius + tolerance - Touch.ROUNDING;
    double least = radius - tolerance - Touch.ROUNDING;
    if (apart(a1, a2, low - most, high + most) || apart(u1, u2, bottom - most, top + most)) {
      return Truth.FALSE;
    }
    if (Double.isNaN(a1 + a2 + u1 + u2)) {
      return Truth.UNKNOWN;
    }
    if (!meets(a1, u1, a2, u2, low - most, high + most, bottom - most, top + most)) {
      return Truth.FALSE;
    }
    return meets(a1, u1, a2, u2, low - least, high + least, bottom - least, top + least)
        ? Truth.TRUE
        : Truth.UNKNOWN;
  }

  /** False if a value is not known. */
  private static boolean apart(double a, double b, double min, double max) {
    return Math.max(a, b) < min || Math.min(a, b) > max;
  }

  /** Whether a straight piece has a point in a rectangle. */
  private static boolean meets(
      double a1,
      double u1,
      double a2,
      double u2,
      double low,
      double high,
      double bottom,
      double top) {
    double from = Math.max(enters(a1, a2, low, high), enters(u1, u2, bottom, top));
    double to = Math.min(leaves(a1, a2, low, high), leaves(u1, u2, bottom, top));
    return Math.max(0, from) <= Math.min(1, to);
  }

  /**
   * The share of the way at which a piece comes between two lines; past its end if it never does.
   */
  private static double enters(double from, double to, double min, double max) {
    if (from == to) {
      return from >= min && from <= max ? 0 : 2;
    }
    return Math.min((min - from) / (to - from), (max - from) / (to - from));
  }

  private static double leaves(double from, double to, double min, double max) {
    return from == to ? 1 : Math.max((min - from) / (to - from), (max - from) / (to - from));
  }

  private static double millimetres(@Nullable Amount amount) {
    return amount == null ? Double.NaN : amount.millimetres();
  }

  private static void near(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    ByFace openings = facts.keep(BY_FACE, ByFace::of);
    if (facts.isPart(element)) {
      Part part = facts.part(element);
      double middle = Extents.middleAlong(part);
      double reach =
          size(facts, element, part.width(), "width") / 2 + Extents.alongTolerance(facts, element);
      openings.within(part.face(), middle - reach, middle + reach, candidates);
      return;
    }
    Run run = facts.run(element);
    for (Face face : Face.values()) {
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (Run.PathPoint point : run.path()) {
        if (point.face() == face) {
          double reach = tolerance(facts, point) + millimetres(run.diameter());
          from = Math.min(from, millimetres(point.along()) - reach); // NaN stays
          to = Math.max(to, millimetres(point.along()) + reach);
        }
      }
      if (from != Double.POSITIVE_INFINITY) {
        openings.within(face, from, to, candidates);
      }
    }
  }

  private static void explain(PlanFacts facts, int element, int handle, Explanation out) {
    Opening opening = facts.opening(handle);
    out.fact(
        facts.name(handle).label(),
        "along "
            + Places.length(facts, opening.from().millimetres())
            + " to "
            + Places.length(facts, opening.from().millimetres() + opening.width().millimetres())
            + ", up "
            + Places.length(facts, opening.sill().millimetres())
            + " to "
            + Places.length(facts, opening.sill().millimetres() + opening.height().millimetres()));
    if (facts.isRun(element)) {
      for (Run.PathPoint point : facts.run(element).path()) {
        if (point.face() == opening.face()) {
          missing(facts, point.along(), point.pointer() + "/along", out);
          missing(facts, point.up(), point.pointer() + "/up", out);
        }
      }
      return;
    }
    Part part = facts.part(element);
    Given.explain(facts, element, part.along(), "along", out);
    if (!(part instanceof Part.Stud)) {
      Given.explain(facts, element, part.up(), "up", out);
      Given.explain(facts, element, part.width(), "width", out);
      Given.explain(facts, element, part.height(), "height", out);
    } else if (Double.isNaN(size(facts, element, part.width(), "width"))) {
      StudWords.explainSize(facts, element, Part::width, "width", out);
    }
  }

  private static void missing(
      PlanFacts facts, @Nullable Amount amount, String pointer, Explanation out) {
    if (amount == null) {
      out.missing(facts.missing(pointer));
    }
  }
}
