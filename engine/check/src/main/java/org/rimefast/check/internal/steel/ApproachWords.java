package org.rimefast.check.internal.steel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.plan.Face;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.RunBuild.Side;
import org.rimefast.plan.geometry.RunsInSpace;

/** Words for how runs come to the parts that they enter. */
final class ApproachWords {
  private static final int ABOVE = 0;
  private static final int BELOW = 1;
  private static final int SIDE = 2;
  private static final int LEFT = 3;
  private static final int RIGHT = 4;
  private static final int BACK = 5;

  private ApproachWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .relation(
            Kinds.verb(
                Nouns.RUN,
                "enter _ from _",
                "enters _ from _",
                Kinds.element(Nouns.PART),
                Kinds.value(Kinds.SIDE)),
            ApproachWords::entersFrom,
            (facts, element, arguments, candidates) ->
                EntryWords.entered(facts, element, arguments, candidates),
            ApproachWords::explainSide)
        .relation(
            Kinds.verb(
                Nouns.RUN,
                "come to _ from above",
                "comes to _ from above",
                Kinds.element(Nouns.PART)),
            ApproachWords::comesFromAbove,
            (facts, element, arguments, candidates) ->
                EntryWords.entered(facts, element, arguments, candidates),
            ApproachWords::explainAbove)
        .number(
            new Property(
                "run.drip loop below",
                "drip loop below _",
                Nouns.RUN,
                List.of(Kinds.element(Nouns.PART)),
                Kinds.LENGTH),
            ApproachWords::dripLoop,
            ApproachWords::explainDripLoop)
        .relation(
            Kinds.verb(Nouns.RUN, "reach both its ends", "reaches both its ends"),
            (facts, element, arguments) ->
                reaches(facts, element, false).and(reaches(facts, element, true)),
            ApproachWords::explainReaching);
  }

  private static Truth entersFrom(PlanFacts facts, int element, Arguments arguments) {
    int part = arguments.element(0);
    return endEntersFrom(facts, element, false, part, arguments.word(1))
        .or(endEntersFrom(facts, element, true, part, arguments.word(1)));
  }

  private static Truth endEntersFrom(
      PlanFacts facts, int element, boolean last, int part, int word) {
    Truth enters = Entries.endEnters(facts, element, last, part);
    if (enters == Truth.FALSE) {
      return enters;
    }
    Face face = facts.part(part).face();
    Side given = given(facts, element, last);
    Side side =
        given != null
            ? onFace(given, face)
            : facts.geometry().runs().side(facts.runIndex(element), last, part);
    return enters.and(side == null ? Truth.UNKNOWN : Truth.of(is(side, word, face)));
  }

  private static @Nullable Side given(PlanFacts facts, int element, boolean last) {
    RunBuild build = facts.run(element).build();
    return (last ? build.last() : build.first()).side();
  }

  /** On a roof, what is above a part is at its back; on a floor, before its front. */
  private static Side onFace(Side side, Face face) {
    boolean level = face == Face.ROOF || face == Face.FLOOR;
    if (!level || (side != Side.ABOVE && side != Side.BELOW)) {
      return side;
    }
    return (side == Side.ABOVE) == (face == Face.ROOF) ? Side.BACK : Side.FRONT;
  }

  /** Whether a side, {@link Side#ABOVE} being up the face, is one that a word means. */
  private static boolean is(Side side, int word, Face face) {
    boolean level = face == Face.ROOF || face == Face.FLOOR;
    return switch (word) {
      case ABOVE -> side == onFace(Side.ABOVE, face);
      case BELOW -> side == onFace(Side.BELOW, face);
      case SIDE ->
          side == Side.LEFT
              || side == Side.RIGHT
              || (level && (side == Side.ABOVE || side == Side.BELOW));
      case LEFT -> side == Side.LEFT;
      case RIGHT -> side == Side.RIGHT;
      case BACK -> side == Side.BACK;
      default -> side == Side.FRONT;
    };
  }

  private static void explainSide(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int part = arguments.element(0);
    Entries.explain(facts, element, part, out);
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      if (Entries.endEnters(facts, element, last, part) == Truth.FALSE) {
        continue;
      }
      String name = last ? "last end" : "first end";
      Side given = given(facts, element, last);
      if (given != null) {
        out.fact(name, "by " + given.word() + ", as the plan says");
        continue;
      }
      RunsInSpace runs = facts.geometry().runs();
      int run = facts.runIndex(element);
      Side side = runs.side(run, last, part);
      if (side != null) {
        Face face = facts.part(part).face();
        boolean across = !face.isWall() && (side == Side.ABOVE || side == Side.BELOW);
        out.fact(name, "by " + (across ? "a side" : side.word()) + ", as drawn");
        continue;
      }
      runs.missingForLine(run).forEach(pointer -> out.missing(facts.missing(pointer)));
      facts.geometry().missing(part).forEach(pointer -> out.missing(facts.missing(pointer)));
      out.missing(facts.missing(element, last ? "toSide" : "fromSide"));
    }
  }

  private static Truth comesFromAbove(PlanFacts facts, int element, Arguments arguments) {
    RunsInSpace runs = facts.geometry().runs();
    int run = facts.runIndex(element);
    int part = arguments.element(0);
    Truth first = Entries.endEnters(facts, element, false, part);
    Truth last = Entries.endEnters(facts, element, true, part);
    if (first != Truth.FALSE) {
      first = first.and(Touch.truth(runs.isHigherThan(run, false)));
    }
    if (last != Truth.FALSE) {
      last = last.and(Touch.truth(runs.isHigherThan(run, true)));
    }
    return first.or(last);
  }

  private static void explainAbove(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int part = arguments.element(0);
    Entries.explain(facts, element, part, out);
    RunsInSpace runs = facts.geometry().runs();
    int run = facts.runIndex(element);
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      int highest = runs.highest(run, last);
      if (Entries.endEnters(facts, element, last, part) != Truth.FALSE && highest > 0) {
        double rise = runs.point(run, last, highest).z() - runs.point(run, last, 0).z();
        out.fact(
            "highest point",
            pathPoint(facts, element, last, highest)
                + ", "
                + Places.length(facts, rise)
                + " above the entry");
      }
    }
    explainHeights(facts, element, out);
  }

  private static void explainHeights(PlanFacts facts, int element, Explanation out) {
    RunsInSpace runs = facts.geometry().runs();
    int run = facts.runIndex(element);
    if (runs.heightTolerance(run) > 0) {
      out.fact("heights may differ by", Places.length(facts, runs.heightTolerance(run)));
    }
    List<Run.PathPoint> path = facts.run(element).path();
    for (String pointer : runs.missingForLine(run)) {
      for (int i = 0; i < path.size(); i++) {
        boolean unknown = Double.isNaN(runs.point(run, false, i).z());
        boolean ofHeight = pointer.endsWith(path.get(i).face().isWall() ? "/up" : "/depth");
        if (unknown && (pointer.startsWith("/faces") || ofHeight)) {
          if (pointer.startsWith("/faces") || pointer.startsWith(path.get(i).pointer() + "/")) {
            out.missing(facts.missing(pointer));
          }
        }
      }
    }
  }

  private static String pathPoint(PlanFacts facts, int element, boolean last, int steps) {
    int points = facts.run(element).path().size();
    return "point " + (last ? points - steps : steps + 1) + " of its path";
  }

  private static void dripLoop(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    RunsInSpace runs = facts.geometry().runs();
    int run = facts.runIndex(element);
    int part = arguments.element(0);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    for (int end = 0; end < 2; end++) {
      if (Entries.endEnters(facts, element, end == 1, part) != Truth.FALSE) {
        least = Math.min(least, runs.dripLoop(run, end == 1, false));
        most = Math.min(most, runs.dripLoop(run, end == 1, true));
      }
    }
    if (least == Double.POSITIVE_INFINITY) {
      reading.missing();
    } else {
      reading.between(least / 1000, most / 1000);
    }
  }

  private static void explainDripLoop(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int part = arguments.element(0);
    Entries.explain(facts, element, part, out);
    if (Entries.enters(facts, element, part) == Truth.FALSE) {
      out.reason(facts.name(element).label() + " does not enter " + facts.name(part).label());
      return;
    }
    RunsInSpace runs = facts.geometry().runs();
    int run = facts.runIndex(element);
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      if (Entries.endEnters(facts, element, last, part) == Truth.FALSE
          || Double.isNaN(runs.dripLoop(run, last, false))) {
        continue;
      }
      int lowest = runs.lowest(run, last);
      int climbs = runs.climbs(run, last);
      if (lowest > 0) {
        double drop = runs.point(run, last, 0).z() - runs.point(run, last, lowest).z();
        out.fact(
            "lowest point",
            pathPoint(facts, element, last, lowest)
                + ", "
                + Places.length(facts, drop)
                + " below the entry");
      }
      out.fact(
          "climbs above the entry",
          climbs < 0
              ? "nowhere"
              : "between "
                  + pathPoint(facts, element, last, climbs - 1)
                  + " and "
                  + pathPoint(facts, element, last, climbs));
    }
    explainHeights(facts, element, out);
  }

  /** Whether an end is at the part that the plan names for it. */
  private static Truth reaches(PlanFacts facts, int element, boolean last) {
    String named = Entries.end(facts.run(element), last);
    int part = named == null ? -1 : facts.handleOf(named);
    if (part < 0 || !facts.isPart(part)) {
      return Truth.UNKNOWN;
    }
    return Touch.truth(facts.geometry().runs().isAt(facts.runIndex(element), last, part));
  }

  private static void explainReaching(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    for (int end = 0; end < 2; end++) {
      boolean last = end == 1;
      String named = Entries.end(facts.run(element), last);
      Given.explain(facts, element, named, last ? "to" : "from", out);
      int part = named == null ? -1 : facts.handleOf(named);
      if (part < 0) {
        continue;
      }
      if (!facts.isPart(part)) {
        out.reason(facts.name(part).label() + " is no part");
        continue;
      }
      int run = facts.runIndex(element);
      double gap = facts.geometry().runs().endGap(run, last, part);
      if (!Double.isNaN(gap)) {
        out.fact(
            (last ? "last" : "first") + " end from " + facts.name(part).label(),
            Places.length(facts, gap));
      } else {
        facts.geometry().runMissing(run).forEach(pointer -> out.missing(facts.missing(pointer)));
        facts.geometry().missing(part).forEach(pointer -> out.missing(facts.missing(pointer)));
      }
    }
  }
}
