package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Stretches;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Fields;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.plan.geometry.Crossing;
import org.rimefast.plan.geometry.RunsInSpace;
import org.rimefast.plan.geometry.Zone;

/** Words for where runs go: what they cross, what they lie before, how near the steel they come. */
final class CourseWords {
  private static final Zone[] ZONES = Zone.values();

  private CourseWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            Kinds.property(Nouns.RUN, "set-back", Kinds.LENGTH),
            (facts, element, arguments, reading) -> {
              int run = facts.runIndex(element);
              reading.around(
                  -facts.geometry().proud(run) / 1000, facts.geometry().proudTolerance(run) / 1000);
            },
            (facts, element, arguments, out) -> ProudWords.explainRun(facts, element, out))
        .relation(
            Kinds.verb(Nouns.RUN, "cross _", "crosses _", Kinds.element(Nouns.RUN)),
            (facts, element, arguments) ->
                Touch.truth(
                    runs(facts)
                        .cross(facts.runIndex(element), facts.runIndex(arguments.element(0)))),
            (facts, element, arguments, candidates) ->
                runs(facts).runsCrossed(facts.runIndex(element), facts.handleOfRun(0), candidates),
            CourseWords::explainCrossing)
        .relation(
            Kinds.verb(Nouns.RUN, "lie in _", "lies in _", Kinds.value(Kinds.ZONE)),
            (facts, element, arguments) ->
                Touch.truth(runs(facts).liesIn(facts.runIndex(element), ZONES[arguments.word(0)])),
            CourseWords::explainZones)
        .relation(
            Kinds.verb(Nouns.RUN, "face _", "faces _", Kinds.value(Kinds.ZONE)),
            (facts, element, arguments) ->
                Touch.truth(runs(facts).faces(facts.runIndex(element), ZONES[arguments.word(0)])),
            CourseWords::explainZones)
        .relation(
            Kinds.verb(
                Nouns.RUN,
                "clear the shell by _ _",
                "clears the shell by _ _",
                Kinds.value(Kinds.LENGTH),
                new Slot.Along(Nouns.RUN)),
            CourseWords::clears,
            CourseWords::explainClearing)
        .stretch(
            new Stretch(
                "run.along its whole length", "along its whole length", Nouns.RUN, List.of()),
            (facts, element, arguments, found) -> {
              double length = runs(facts).length(facts.runIndex(element)) / 1000;
              if (Double.isNaN(length)) {
                found.unknown();
              } else {
                found.add(0, length);
              }
            },
            (facts, element, arguments, out) -> explainLine(facts, element, out))
        .stretch(
            new Stretch(
                "run.within _ of _",
                "within _ of _",
                Nouns.RUN,
                List.of(Kinds.value(Kinds.LENGTH), Kinds.element(Nouns.PART))),
            CourseWords::within,
            (facts, element, arguments, out) -> {
              explainLine(facts, element, out);
              Entries.explain(facts, element, arguments.element(1), out);
            });
  }

  private static RunsInSpace runs(PlanFacts facts) {
    return facts.geometry().runs();
  }

  private static void explainLine(PlanFacts facts, int element, Explanation out) {
    runs(facts)
        .missingForLine(facts.runIndex(element))
        .forEach(pointer -> out.missing(facts.missing(pointer)));
  }

  /** That length of the line from each end that enters a part. */
  private static void within(PlanFacts facts, int element, Arguments arguments, Stretches found) {
    int part = arguments.element(1);
    Truth first = Entries.endEnters(facts, element, false, part);
    Truth last = Entries.endEnters(facts, element, true, part);
    Reading limit = arguments.number(0);
    double length = runs(facts).length(facts.runIndex(element)) / 1000;
    if (first == Truth.FALSE && last == Truth.FALSE) {
      return;
    }
    if (first == Truth.UNKNOWN
        || last == Truth.UNKNOWN
        || Double.isNaN(length)
        || limit.least() < limit.most()) {
      found.unknown();
      return;
    }
    double reach = Math.max(0, Math.min(length, limit.most()));
    if (first == Truth.TRUE) {
      found.add(0, reach);
    }
    if (last == Truth.TRUE) {
      found.add(length - reach, length);
    }
  }

  private static Truth clears(PlanFacts facts, int element, Arguments arguments) {
    int run = facts.runIndex(element);
    Reading limit = arguments.number(0);
    Stretches stretches = arguments.stretches(1);
    double tolerance = facts.geometry().runPositionTolerance(run);
    Truth all = Truth.TRUE;
    for (int i = 0; i < stretches.size(); i++) {
      double clearance =
          runs(facts).clearance(run, stretches.from(i) * 1000, stretches.to(i) * 1000);
      if (Double.isNaN(clearance)) {
        all = all.and(Truth.UNKNOWN);
      } else if (clearance < Double.POSITIVE_INFINITY) {
        all =
            all.and(
                Intervals.compare(
                    Comparison.AT_LEAST,
                    Math.max(0, clearance - tolerance) / 1000,
                    (clearance + tolerance) / 1000,
                    limit.least(),
                    limit.most()));
      }
    }
    return all;
  }

  private static void explainClearing(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runIndex(element);
    Stretches stretches = arguments.stretches(1);
    double length = runs(facts).length(run) / 1000;
    for (int i = 0; i < stretches.size(); i++) {
      double from = stretches.from(i);
      double to = stretches.to(i);
      double clearance = runs(facts).clearance(run, from * 1000, to * 1000);
      if (Double.isNaN(clearance)) {
        facts
            .geometry()
            .runMissingForClearance(run)
            .forEach(pointer -> out.missing(facts.missing(pointer)));
      } else if (from == 0 && to >= length) {
        ShellWords.explainClearance(facts, element, arguments, out);
        out.fact("least clearance", Places.length(facts, clearance));
      } else if (clearance < Double.POSITIVE_INFINITY) {
        out.fact(
            "least clearance from "
                + Fields.length(facts.plan(), from)
                + " to "
                + Fields.length(facts.plan(), to)
                + " along it",
            Places.length(facts, clearance));
      }
    }
  }

  private static void explainZones(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runIndex(element);
    runs(facts).missingForFacing(run).forEach(pointer -> out.missing(facts.missing(pointer)));
    StringBuilder before = new StringBuilder();
    for (Zone zone : ZONES) {
      switch (runs(facts).faces(run, zone)) {
        case YES -> before.append(before.isEmpty() ? "" : ", ").append(zone.word());
        case POSSIBLE ->
            before.append(before.isEmpty() ? "" : ", ").append("perhaps " + zone.word());
        case NO -> {}
      }
    }
    out.fact("stands before", before.toString());
  }

  private static void explainCrossing(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runIndex(element);
    int other = facts.runIndex(arguments.element(0));
    runs(facts).missingForCrossing(run).forEach(pointer -> out.missing(facts.missing(pointer)));
    runs(facts).missingForCrossing(other).forEach(pointer -> out.missing(facts.missing(pointer)));
    Crossing crossing = run == other ? null : runs(facts).crossing(run, other);
    if (crossing != null) {
      out.fact(
          "they cross on the " + Fields.faceName(crossing.face()),
          "along "
              + Places.length(facts, crossing.along())
              + (crossing.face().isWall() ? ", up " : ", across ")
              + Places.length(facts, crossing.up()));
    }
  }
}
