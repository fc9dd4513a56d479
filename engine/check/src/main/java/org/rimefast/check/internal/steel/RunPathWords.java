package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.Run;
import org.rimefast.plan.geometry.RunPaths;
import org.rimefast.units.QuantityFormat;
import org.rimefast.units.Units;

/** Words for how long runs are, and how they turn. */
final class RunPathWords {
  /** A turn of less than this is straight: points are drawn to a millimetre or so. */
  private static final double LEAST_TURN = 1;

  private RunPathWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.RUN, "length", Kinds.LENGTH),
            (facts, element, arguments, reading) -> {
              RunPaths paths = facts.geometry().paths();
              int run = facts.runIndex(element);
              double tolerance = paths.lengthTolerance(run);
              reading.between(
                  Math.max(0, paths.length(run) - tolerance) / 1000,
                  (paths.length(run) + tolerance) / 1000);
            },
            (facts, element, arguments, out) -> explainPath(facts, element, out))
        .number(
            property(Nouns.RUN, "tightest bend radius", Kinds.LENGTH),
            RunPathWords::bendRadius,
            RunPathWords::explainBendRadius)
        .relation(
            Kinds.verb(Nouns.RUN, "bend", "bends"), RunPathWords::bends, RunPathWords::explainTurns)
        .number(
            property(Nouns.RUN, "bend in all", ElectricalKinds.ANGLE),
            (facts, element, arguments, reading) ->
                reading.exactly(facts.geometry().paths().turns(facts.runIndex(element))),
            RunPathWords::explainTurns)
        .relation(
            Kinds.verb(Nouns.RUN, "round an inside corner", "rounds an inside corner"),
            (facts, element, arguments) -> Truth.of(corner(facts.run(element)) > 0),
            (facts, element, arguments, out) -> {
              int at = corner(facts.run(element));
              if (at > 0) {
                out.fact("passes", faces(facts.run(element), at));
              }
            });
    in(words, "in a wall", Face.LEFT, Face.RIGHT, Face.FRONT, Face.REAR);
    in(words, "in the roof", Face.ROOF);
    in(words, "in the floor", Face.FLOOR);
  }

  private static void in(Dictionary.Builder words, String phrase, Face... faces) {
    List<Face> any = List.of(faces);
    words.relation(
        Kinds.being(Nouns.RUN, phrase),
        (facts, element, arguments) -> {
          for (Run.PathPoint point : facts.run(element).path()) {
            if (any.contains(point.face())) {
              return Truth.TRUE;
            }
          }
          return Truth.FALSE;
        },
        Word.Explainer.NONE);
  }

  /** Names what the middle line of a run lacks. */
  static void explainPath(PlanFacts facts, int element, Explanation out) {
    facts
        .geometry()
        .runMissingForPath(facts.runIndex(element))
        .forEach(pointer -> out.missing(facts.missing(pointer)));
  }

  private static Truth turns(PlanFacts facts, int element, int point) {
    double turn = facts.geometry().paths().turn(facts.runIndex(element), point);
    return Double.isNaN(turn) ? Truth.UNKNOWN : Truth.of(turn >= LEAST_TURN);
  }

  private static Truth bends(PlanFacts facts, int element, Arguments arguments) {
    Truth any = Truth.FALSE;
    int points = facts.run(element).path().size();
    for (int point = 1; point + 1 < points; point++) {
      any = any.or(turns(facts, element, point));
    }
    return any;
  }

  private static @Nullable Amount radius(Run run, int point) {
    Amount own = run.path().get(point).bend();
    return own != null ? own : run.build().bendRadius();
  }

  /**
   * The least radius of the points that turn. Where it is not known whether a point turns, the
   * least may be its radius or not.
   */
  private static void bendRadius(
      PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Run run = facts.run(element);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    boolean known = true;
    for (int point = 1; point + 1 < run.path().size(); point++) {
      Truth turns = turns(facts, element, point);
      if (turns != Truth.FALSE) {
        Amount radius = radius(run, point);
        known &= radius != null;
        if (radius != null) {
          least = Math.min(least, radius.si() - radius.siTolerance());
          if (turns == Truth.TRUE) {
            most = Math.min(most, radius.si() + radius.siTolerance());
          }
        }
      }
    }
    if (known && most < Double.POSITIVE_INFINITY) {
      reading.between(least, most);
    } else {
      reading.missing();
    }
  }

  private static void explainBendRadius(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Run run = facts.run(element);
    int tightest = -1;
    double least = Double.POSITIVE_INFINITY;
    boolean turns = false;
    for (int point = 1; point + 1 < run.path().size(); point++) {
      Truth turn = turns(facts, element, point);
      if (turn == Truth.FALSE) {
        continue;
      }
      turns = true;
      Amount radius = radius(run, point);
      if (radius == null) {
        out.missing(facts.missing(element, "bendRadius"));
      } else if (turn == Truth.TRUE && radius.si() < least) {
        least = radius.si();
        tightest = point;
      } else if (turn == Truth.UNKNOWN) {
        explainPath(facts, element, out);
      }
    }
    if (tightest >= 0) {
      out.fact(
          "tightest bend",
          "at point " + (tightest + 1) + " of its path, " + turnText(facts, element, tightest));
    }
    if (!turns) {
      out.reason(facts.name(element).label() + " does not bend");
    }
  }

  private static void explainTurns(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainPath(facts, element, out);
    StringBuilder turns = new StringBuilder();
    int points = facts.run(element).path().size();
    for (int point = 1; point + 1 < points; point++) {
      if (turns(facts, element, point) == Truth.TRUE) {
        turns
            .append(turns.isEmpty() ? "" : ", ")
            .append(turnText(facts, element, point))
            .append(" at point ")
            .append(point + 1);
      }
    }
    if (!turns.isEmpty()) {
      out.fact("turns of its path", turns.toString());
    }
  }

  private static String turnText(PlanFacts facts, int element, int point) {
    double turn = facts.geometry().paths().turn(facts.runIndex(element), point);
    return QuantityFormat.format(turn, Units.DEGREE);
  }

  /** The first point of a path that is on a face beside that of the point before; 0 if none. */
  private static int corner(Run run) {
    for (int i = 1; i < run.path().size(); i++) {
      Face before = run.path().get(i - 1).face();
      Face after = run.path().get(i).face();
      if (before != after && !isOpposite(before, after)) {
        return i;
      }
    }
    return 0;
  }

  private static boolean isOpposite(Face a, Face b) {
    return switch (a) {
      case LEFT -> b == Face.RIGHT;
      case RIGHT -> b == Face.LEFT;
      case FRONT -> b == Face.REAR;
      case REAR -> b == Face.FRONT;
      case ROOF -> b == Face.FLOOR;
      case FLOOR -> b == Face.ROOF;
    };
  }

  private static String faces(Run run, int point) {
    return "from the "
        + org.rimefast.check.internal.Fields.faceName(run.path().get(point - 1).face())
        + " to the "
        + org.rimefast.check.internal.Fields.faceName(run.path().get(point).face())
        + " at point "
        + (point + 1)
        + " of its path";
  }
}
