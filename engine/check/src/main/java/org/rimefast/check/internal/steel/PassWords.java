package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.Certainty;
import org.rimefast.plan.geometry.RunsInSpace;
import org.rimefast.plan.geometry.StudPass;

/** Words for runs that pass through studs, and for the holes that they use. */
final class PassWords {
  private PassWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .relation(
            Kinds.verb(Nouns.RUN, "pass through _", "passes through _", Kinds.element(Nouns.STUD)),
            (facts, element, arguments) ->
                Touch.truth(runs(facts).passes(facts.runIndex(element), arguments.element(0))),
            (facts, element, arguments, candidates) ->
                runs(facts).studsPassed(facts.runIndex(element), candidates),
            PassWords::explain)
        .relation(
            Kinds.verb(
                Nouns.RUN,
                "pass through a service hole of _",
                "passes through a service hole of _",
                Kinds.element(Nouns.STUD)),
            (facts, element, arguments) ->
                Touch.truth(runs(facts).passesHole(facts.runIndex(element), arguments.element(0))),
            (facts, element, arguments, candidates) ->
                runs(facts).studsPassed(facts.runIndex(element), candidates),
            PassWords::explainHole)
        .relation(
            Kinds.being(Nouns.RUN, "bushed at _", Kinds.element(Nouns.STUD)),
            PassWords::isBushed,
            (facts, element, arguments, candidates) ->
                runs(facts).studsPassed(facts.runIndex(element), candidates),
            (facts, element, arguments, out) -> {
              explainHole(facts, element, arguments, out);
              explainUsed(facts, element, arguments.element(0), "insert", out);
            })
        .number(atStud("offset from the service hole of _"), PassWords::offset, PassWords::explain)
        .number(atStud("set-back at _"), PassWords::setBack, PassWords::explainHole)
        .number(
            atStud("plate thickness at _"),
            PassWords::plate,
            (facts, element, arguments, out) -> {
              explainHole(facts, element, arguments, out);
              explainUsed(facts, element, arguments.element(0), "plate", out);
            })
        .number(
            Kinds.property(Nouns.RUN, "service hole spread", Kinds.LENGTH),
            (facts, element, arguments, reading) -> {
              int run = facts.runIndex(element);
              reading.between(
                  runs(facts).holeSpread(run, false) / 1000,
                  runs(facts).holeSpread(run, true) / 1000);
            },
            PassWords::explainSpread);
  }

  private static RunsInSpace runs(PlanFacts facts) {
    return facts.geometry().runs();
  }

  private static Property atStud(String pattern) {
    return new Property(
        "run." + pattern, pattern, Nouns.RUN, List.of(Kinds.element(Nouns.STUD)), Kinds.LENGTH);
  }

  private static Part.Stud stud(PlanFacts facts, int handle) {
    return (Part.Stud) facts.part(handle);
  }

  /** The greatest over the places where it passes, at least and at most. */
  private static void offset(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    int run = facts.runIndex(element);
    int stud = arguments.element(0);
    int count = runs(facts).passCount(run, stud);
    double sure = Double.NEGATIVE_INFINITY; // the least where it certainly passes
    double any = Double.POSITIVE_INFINITY;
    double most = count == 0 ? Double.NaN : 0;
    for (int i = 0; i < count; i++) {
      StudPass pass = runs(facts).pass(run, stud, i);
      double least = pass.offset().least();
      any = Math.min(any, least); // NaN stays
      sure = pass.passes() == Certainty.YES ? Math.max(sure, least) : sure;
      most = Math.max(most, pass.offset().most());
    }
    reading.between((Double.isInfinite(sure) ? any : sure) / 1000, most / 1000);
  }

  private static void setBack(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    int run = facts.runIndex(element);
    int stud = arguments.element(0);
    int count = runs(facts).passCount(run, stud);
    double least = count == 0 ? Double.NaN : Double.POSITIVE_INFINITY;
    double sure = Double.POSITIVE_INFINITY; // the most where it certainly passes
    double any = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      StudPass pass = runs(facts).pass(run, stud, i);
      least = Math.min(least, pass.setBack().least()); // NaN stays
      any = Math.max(any, pass.setBack().most());
      sure = pass.passes() == Certainty.YES ? Math.min(sure, pass.setBack().most()) : sure;
    }
    if (Double.isNaN(least) || Double.isInfinite(least)) {
      reading.missing(); // unknown, or along the web, where no one depth is that of the passage
    } else {
      reading.between(least / 1000, (Double.isInfinite(sure) ? any : sure) / 1000);
    }
  }

  /** Nothing guards a run that passes through no hole; else the plate at the hole, if any. */
  private static void plate(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    int run = facts.runIndex(element);
    int stud = arguments.element(0);
    int count = runs(facts).passCount(run, stud);
    double least = count == 0 ? Double.NaN : Double.POSITIVE_INFINITY;
    double most = least;
    for (int i = 0; i < count; i++) {
      StudPass pass = runs(facts).pass(run, stud, i);
      if (pass.inHole() == Certainty.NO) {
        least = Math.min(least, 0);
        most = Math.min(most, 0);
        continue;
      }
      Amount plate = stud(facts, stud).holes().get(pass.hole()).plate();
      double thickness = plate == null ? Double.NaN : plate.si();
      double tolerance = plate == null ? 0 : plate.siTolerance();
      boolean certain = pass.inHole() == Certainty.YES;
      least = Math.min(least, certain ? thickness - tolerance : Math.min(0, thickness));
      most = Math.min(most, thickness + tolerance);
    }
    reading.between(least, most);
  }

  private static Truth isBushed(PlanFacts facts, int element, Arguments arguments) {
    int run = facts.runIndex(element);
    int stud = arguments.element(0);
    Truth all = Touch.truth(runs(facts).passesHole(run, stud));
    for (int i = 0; i < runs(facts).passCount(run, stud); i++) {
      StudPass pass = runs(facts).pass(run, stud, i);
      if (pass.inHole() != Certainty.NO) {
        Boolean insert = stud(facts, stud).holes().get(pass.hole()).insert();
        all = all.and(insert == null ? Truth.UNKNOWN : Truth.of(insert));
      }
    }
    return all;
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runIndex(element);
    int stud = arguments.element(0);
    if (runs(facts).passes(run, stud) == Certainty.POSSIBLE
        && runs(facts).passCount(run, stud) == 0) {
      runs(facts).missingForPass(run, stud).forEach(pointer -> out.missing(facts.missing(pointer)));
      return;
    }
    int count = runs(facts).passCount(run, stud);
    if (count == 0) {
      out.reason(
          facts.name(element).label() + " does not pass through " + facts.name(stud).label());
    } else if (stud(facts, stud).holes().isEmpty()) {
      out.reason(facts.name(stud).label() + " has no service hole");
    }
    for (int i = 0; i < count; i++) {
      if (Double.isInfinite(runs(facts).pass(run, stud, i).setBack().least())) {
        out.reason(
            facts.name(element).label()
                + " runs along the web of "
                + facts.name(stud).label()
                + " and may lie on either side of it");
      }
      out.fact("passes " + facts.name(stud).label(), place(facts, runs(facts).pass(run, stud, i)));
    }
  }

  private static String place(PlanFacts facts, StudPass pass) {
    String at =
        (facts.part(pass.stud()).face().isWall() ? "up " : "across ")
            + Places.length(facts, pass.up().drawn());
    String sure = pass.passes() == Certainty.YES ? "" : " (the tolerance leaves open whether)";
    if (pass.hole() < 0) {
      return at + sure + ", where it has no service hole";
    }
    String where =
        switch (pass.inHole()) {
          case YES -> "within service hole ";
          case NO -> "not within service hole ";
          case POSSIBLE -> "perhaps within service hole ";
        };
    return at
        + sure
        + ", "
        + where
        + (pass.hole() + 1)
        + ", whose middle is at "
        + Places.length(facts, pass.level().drawn());
  }

  private static void explainHole(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explain(facts, element, arguments, out);
    Given.explain(facts, element, facts.run(element).diameter(), "diameter", out);
  }

  /** Says what the plan does not say of the holes that a run uses. */
  private static void explainUsed(
      PlanFacts facts, int element, int stud, String field, Explanation out) {
    int run = facts.runIndex(element);
    for (int i = 0; i < runs(facts).passCount(run, stud); i++) {
      StudPass pass = runs(facts).pass(run, stud, i);
      if (pass.inHole() != Certainty.NO) {
        Part.ServiceHole hole = stud(facts, stud).holes().get(pass.hole());
        Object value = field.equals("plate") ? hole.plate() : hole.insert();
        if (value == null) {
          out.missing(facts.missing(hole.pointer() + "/" + field));
        }
      }
    }
  }

  private static void explainSpread(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int run = facts.runIndex(element);
    if (Double.isNaN(runs(facts).holeSpread(run, true))) {
      runs(facts).missingForHoleSpread(run).forEach(pointer -> out.missing(facts.missing(pointer)));
      return;
    }
    StudPass low = null;
    StudPass high = null;
    for (StudPass pass : runs(facts).passes(run)) {
      if (pass.hole() >= 0) {
        low = low == null || pass.level().drawn() < low.level().drawn() ? pass : low;
        high = high == null || pass.level().drawn() > high.level().drawn() ? pass : high;
      }
    }
    if (low == null || high == null) {
      out.fact("service holes on its way", "none");
      return;
    }
    out.fact("lowest service hole", hole(facts, low));
    out.fact("highest service hole", hole(facts, high));
  }

  private static String hole(PlanFacts facts, StudPass pass) {
    return Places.length(facts, pass.level().drawn()) + " up " + facts.name(pass.stud()).label();
  }
}
