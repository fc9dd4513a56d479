package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.plan.RunBuild.Conductors;

/** Words for conductors. */
final class ConductorWords {
  private ConductorWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.CONDUCTOR, "gauge", Kinds.COUNT),
            (facts, element, arguments, reading) -> {
              Conductors group = facts.conductor(element);
              reading.exactly(group == null ? Double.NaN : group.gauge());
            },
            ConductorWords::explain)
        .number(
            property(Nouns.CONDUCTOR, "cross-section", ElectricalKinds.AREA),
            (facts, element, arguments, reading) -> {
              Conductors group = facts.conductor(element);
              reading.exactly(group == null ? Double.NaN : Gauge.squareMetres(group.gauge()));
            },
            ConductorWords::explain)
        .number(
            property(Nouns.CONDUCTOR, "temperature rating", Kinds.TEMPERATURE),
            (facts, element, arguments, reading) -> {
              Conductors group = facts.conductor(element);
              Given.read(group == null ? null : group.rating(), reading);
            },
            ConductorWords::explainRating)
        .choice(
            property(Nouns.CONDUCTOR, "use", ElectricalKinds.USE),
            (facts, element, arguments) -> {
              Conductors group = facts.conductor(element);
              return group == null ? -1 : group.use().ordinal();
            },
            ConductorWords::explain)
        .relation(
            Kinds.being(Nouns.CONDUCTOR, "insulated"),
            (facts, element, arguments) -> {
              Conductors group = facts.conductor(element);
              return group == null ? Truth.UNKNOWN : Truth.of(isInsulated(group));
            },
            ConductorWords::explain)
        .link(
            new Link("conductor.run", "run", Nouns.CONDUCTOR, Nouns.RUN),
            PlanFacts::runOfConductor,
            Word.Explainer.NONE)
        .link(
            new Link("conductor.circuit", "circuit", Nouns.CONDUCTOR, Nouns.CIRCUIT),
            (facts, element) -> RunMakeWords.circuit(facts, facts.runOfConductor(element)),
            (facts, element, arguments, out) -> {
              int run = facts.runOfConductor(element);
              Given.explain(facts, run, facts.run(run).build().circuit(), "circuit", out);
            });
  }

  /** True for all but those that bond metal, which may be bare. */
  static boolean isInsulated(Conductors group) {
    return group.use() != Conductors.Use.BONDING;
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    RunMakeWords.explainConductors(facts, facts.runOfConductor(element), out);
  }

  private static void explainRating(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Conductors group = facts.conductor(element);
    if (group == null) {
      explain(facts, element, arguments, out);
    } else if (group.rating() == null) {
      out.missing(facts.missing(group.pointer() + "/rating"));
    }
  }
}
