package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.plan.Run;

/** Words for cables and conduits. */
final class RunWords {
  private RunWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.RUN, "diameter", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                Given.read(facts.run(element).diameter(), reading),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.run(element).diameter(), "diameter", out))
        .relation(
            Kinds.verb(Nouns.RUN, "stand proud of the studs", "stands proud of the studs"),
            (facts, element, arguments) -> standsProud(facts, facts.runIndex(element)),
            (facts, element, arguments, out) -> explainProud(facts, element, out))
        .relation(
            Kinds.verb(Nouns.RUN, "enter _", "enters _", Kinds.element(Nouns.PART)),
            (facts, element, arguments) ->
                enters(facts.run(element), facts.part(arguments.element(0)).id()),
            (facts, element, arguments, out) -> {
              Given.explain(facts, element, facts.run(element).from(), "from", out);
              Given.explain(facts, element, facts.run(element).to(), "to", out);
            })
        .relation(
            Kinds.being(Nouns.RUN, "armoured"),
            (facts, element, arguments) -> Truth.of(facts.run(element).kind().isArmoured()),
            Word.Explainer.NONE);
  }

  private static Truth standsProud(PlanFacts facts, int run) {
    double proud = facts.geometry().proud(run);
    if (Double.isNaN(proud)) {
      return Truth.UNKNOWN;
    }
    double tolerance = facts.geometry().proudTolerance(run);
    if (proud - tolerance > Touch.ROUNDING) {
      return Truth.TRUE;
    }
    return proud + tolerance <= Touch.ROUNDING ? Truth.FALSE : Truth.UNKNOWN;
  }

  private static void explainProud(PlanFacts facts, int element, Explanation out) {
    int run = facts.runIndex(element);
    double proud = facts.geometry().proud(run);
    if (Double.isNaN(proud)) {
      facts.geometry().missingForProud(run).forEach(pointer -> out.missing(facts.missing(pointer)));
    } else {
      out.fact(
          proud > 0 ? "past the studs' warm face by" : "behind the studs' warm face by",
          Places.length(facts, Math.abs(proud)));
    }
  }

  private static Truth enters(Run run, String id) {
    if (id.equals(run.from()) || id.equals(run.to())) {
      return Truth.TRUE;
    }
    return run.from() == null || run.to() == null ? Truth.UNKNOWN : Truth.FALSE;
  }
}
