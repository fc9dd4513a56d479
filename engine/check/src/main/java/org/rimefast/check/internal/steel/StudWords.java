package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.geometry.Cuboid;

/** Words for studs. */
final class StudWords {
  private static final PlanFacts.Key<Rows> ROWS = new PlanFacts.Key<>("rows of studs", Rows.class);
  private static final int UNPLACED = -2;
  private static final int LAST = -1;

  private StudWords() {}

  /**
   * The stud that follows each, by handle.
   *
   * @param next handle of the next stud to the right on the same face, LAST, or UNPLACED where a
   *     stud of the face has no place
   */
  private record Rows(int[] next) {
    static Rows of(PlanFacts facts) {
      int[] next = new int[facts.size()];
      Arrays.fill(next, UNPLACED);
      Arrays.stream(facts.members(Nouns.STUD))
          .boxed()
          .collect(java.util.stream.Collectors.groupingBy(handle -> facts.part(handle).face()))
          .values()
          .forEach(
              row -> {
                if (row.stream().allMatch(handle -> facts.part(handle).along() != null)) {
                  row.sort(Comparator.comparingDouble(handle -> along(facts, handle)));
                  for (int i = 0; i < row.size(); i++) {
                    next[row.get(i)] = i + 1 < row.size() ? row.get(i + 1) : LAST;
                  }
                }
              });
      return new Rows(next);
    }
  }

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.STUD, "spacing to the next stud", Kinds.LENGTH),
            StudWords::spacing,
            StudWords::explainRow)
        .number(
            property(Nouns.STUD, "steel thickness", Kinds.LENGTH),
            (facts, element, arguments, reading) -> {
              StudSection section = section(facts, element);
              Given.read(section == null ? Double.NaN : section.thickness(), reading);
            },
            (facts, element, arguments, out) ->
                explainSize(facts, element, part -> null, "depth", out))
        .number(
            property(Nouns.STUD, "number of service holes", Kinds.COUNT),
            (facts, element, arguments, reading) ->
                reading.exactly(((Part.Stud) facts.part(element)).holes().size()),
            Word.Explainer.NONE)
        .relation(
            Kinds.being(Nouns.STUD, "the last on its face"),
            (facts, element, arguments) -> {
              int next = facts.keep(ROWS, Rows::of).next[element];
              return next == UNPLACED ? Truth.UNKNOWN : Truth.of(next == LAST);
            },
            StudWords::explainRow)
        .relation(
            Kinds.being(Nouns.STUD, "followed by an opening"),
            StudWords::isFollowedByAnOpening,
            StudWords::explainRow);
  }

  /** True if an opening lies, wholly or in part, between the stud and the next one. */
  private static Truth isFollowedByAnOpening(PlanFacts facts, int element, Arguments arguments) {
    int next = facts.keep(ROWS, Rows::of).next[element];
    if (next < 0) {
      return next == LAST ? Truth.FALSE : Truth.UNKNOWN;
    }
    double from = along(facts, element);
    double to = along(facts, next);
    double fromTolerance = Extents.alongTolerance(facts, element);
    double toTolerance = Extents.alongTolerance(facts, next);
    Truth any = Truth.FALSE;
    for (Opening opening : facts.plan().openings()) {
      if (opening.face() == facts.part(element).face()) {
        double start = opening.from().millimetres();
        double startTolerance = opening.from().siTolerance() * 1000;
        double end = start + opening.width().millimetres();
        double endTolerance = startTolerance + opening.width().siTolerance() * 1000;
        any =
            any.or(
                Touch.more(to - start, startTolerance + toTolerance)
                    .and(Touch.more(end - from, endTolerance + fromTolerance)));
      }
    }
    return any;
  }

  private static void spacing(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    int next = facts.keep(ROWS, Rows::of).next[element];
    if (next < 0) {
      reading.missing();
      return;
    }
    double tolerance = Extents.alongTolerance(facts, element) + Extents.alongTolerance(facts, next);
    double spacing = along(facts, next) - along(facts, element);
    reading.around(spacing / 1000, tolerance / 1000);
  }

  /** True for a size that a part need not be given: any of a stud, the depth of a track. */
  static boolean isSizeOfSection(Part part, String name) {
    return part instanceof Part.Stud || (part instanceof Part.Track && name.equals("depth"));
  }

  /**
   * A size that the plan need not spell out, in millimetres: width and depth are those of the
   * section, the height is that of a stud's place. NaN if those are not given either.
   */
  static double size(PlanFacts facts, int element, String name) {
    StudSection section = section(facts, element);
    if (!name.equals("height")) {
      return section == null
          ? Double.NaN
          : name.equals("width") ? section.flange() : section.depth();
    }
    Cuboid cuboid = facts.geometry().cuboid(element);
    if (cuboid == null) {
      return Double.NaN;
    }
    return facts.part(element).face().isWall()
        ? cuboid.maxZ() - cuboid.minZ()
        : cuboid.maxY() - cuboid.minY();
  }

  static void explainSize(
      PlanFacts facts,
      int element,
      Function<Part, @Nullable Amount> given,
      String name,
      Explanation out) {
    Part part = facts.part(element);
    if (given.apply(part) != null) {
      return;
    }
    if (name.equals("height")) {
      facts.geometry().missing(element).forEach(pointer -> out.missing(facts.missing(pointer)));
    } else if (section(facts, element) == null) {
      out.missing(facts.missing(facts.plan().face(part.face()).pointer() + "/stud"));
    }
  }

  private static double along(PlanFacts facts, int handle) {
    Amount along = facts.part(handle).along();
    return along == null ? Double.NaN : along.millimetres();
  }

  private static @Nullable StudSection section(PlanFacts facts, int element) {
    Part part = facts.part(element);
    StudSection own = part instanceof Part.Stud stud ? stud.section() : null;
    return own != null ? own : facts.plan().face(part.face()).stud();
  }

  /** The next stud on the same face; less than 0 if there is none, or that is not known. */
  static int next(PlanFacts facts, int element) {
    return facts.keep(ROWS, Rows::of).next[element];
  }

  static void explainRow(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int next = facts.keep(ROWS, Rows::of).next[element];
    if (next >= 0) {
      out.fact("next stud", facts.name(next).label());
      return;
    }
    if (next == LAST) {
      out.reason(facts.name(element).label() + " is the last on its face");
      return;
    }
    for (int handle : facts.members(Nouns.STUD)) {
      if (facts.part(handle).face() == facts.part(element).face()) {
        Given.explain(facts, handle, facts.part(handle).along(), "along", out);
      }
    }
  }
}
