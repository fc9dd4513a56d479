package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.plan.RunBuild.Conductors;

/** Words for what runs are made of. */
final class RunMakeWords {
  private RunMakeWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .choice(
            property(Nouns.RUN, "kind", ElectricalKinds.RUN_KIND),
            (facts, element, arguments) -> facts.run(element).kind().ordinal(),
            Word.Explainer.NONE)
        .choice(
            property(Nouns.RUN, "armour", ElectricalKinds.ARMOUR),
            (facts, element, arguments) -> ElectricalKinds.place(armour(facts.run(element))),
            RunMakeWords::explainArmour)
        .number(
            property(Nouns.RUN, "bore", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                Given.read(facts.run(element).build().bore(), reading),
            RunMakeWords::explainBore)
        .number(
            property(Nouns.RUN, "bore area", ElectricalKinds.AREA),
            RunMakeWords::boreArea,
            RunMakeWords::explainBore)
        .link(
            new Link("run.circuit", "circuit", Nouns.RUN, Nouns.CIRCUIT),
            RunMakeWords::circuit,
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.run(element).build().circuit(), "circuit", out))
        .relation(
            Kinds.verb(Nouns.RUN, "contain _", "contains _", Kinds.element(Nouns.CONDUCTOR)),
            (facts, element, arguments) -> contains(facts, element, arguments.element(0)),
            (facts, element, arguments, found) ->
                Entries.of(facts).conductors(facts, element, found),
            RunMakeWords::containing,
            (facts, element, arguments, out) ->
                explainConductors(facts, facts.runOfConductor(arguments.element(0)), out));
    counts(words);
  }

  private static void counts(Dictionary.Builder words) {
    count(words, "conductor count", groups -> count(groups, null));
    count(
        words,
        "current-carrying conductor count",
        groups -> count(groups, Conductors.Use.CURRENT_CARRYING));
    words
        .number(
            property(Nouns.RUN, "thinnest gauge", Kinds.COUNT),
            (facts, element, arguments, reading) -> {
              int gauge = thinnest(facts.run(element).build().conductors());
              if (gauge > 0) {
                reading.exactly(gauge);
              } else {
                reading.missing();
              }
            },
            RunMakeWords::explainInsulated)
        .number(
            property(Nouns.RUN, "lowest temperature rating", Kinds.TEMPERATURE),
            RunMakeWords::lowestRating,
            RunMakeWords::explainRating);
  }

  private static void count(
      Dictionary.Builder words, String phrase, ToIntFunction<List<Conductors>> count) {
    words.number(
        property(Nouns.RUN, phrase, Kinds.COUNT),
        (facts, element, arguments, reading) -> {
          List<Conductors> groups = facts.run(element).build().conductors();
          if (groups == null) {
            reading.missing();
          } else {
            reading.exactly(count.applyAsInt(groups));
          }
        },
        (facts, element, arguments, out) -> explainConductors(facts, element, out));
  }

  private static int count(List<Conductors> groups, Conductors.@Nullable Use use) {
    int sum = 0;
    for (int i = 0; i < groups.size(); i++) {
      sum += use == null || groups.get(i).use() == use ? groups.get(i).count() : 0;
    }
    return sum;
  }

  /**
   * The form of a cable's armour. That of armoured cable is interlocked by what it is; null where
   * the plan does not say, or where there is no armour.
   */
  private static RunBuild.@Nullable Armour armour(Run run) {
    if (!run.kind().isArmoured()) {
      return null;
    }
    RunBuild.Armour given = run.build().armour();
    return given == null && run.kind() == Run.Kind.ARMOURED_CABLE
        ? RunBuild.Armour.INTERLOCKED
        : given;
  }

  private static void explainArmour(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Run run = facts.run(element);
    if (!run.kind().isArmoured()) {
      out.reason(facts.name(element).label() + " has no armour");
    } else {
      Given.explain(facts, element, armour(run), "armour", out);
    }
  }

  private static void boreArea(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Amount bore = facts.run(element).build().bore();
    if (bore == null) {
      reading.missing();
      return;
    }
    double least = Math.max(0, bore.si() - bore.siTolerance());
    double most = bore.si() + bore.siTolerance();
    reading.between(Math.PI / 4 * least * least, Math.PI / 4 * most * most);
  }

  private static void explainBore(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Run run = facts.run(element);
    if (run.build().bore() == null && run.kind().isCable()) {
      out.reason(facts.name(element).label() + " is no conduit");
    } else {
      Given.explain(facts, element, run.build().bore(), "bore", out);
    }
  }

  /** The handle of a run's circuit; -1 if the plan does not say. */
  static int circuit(PlanFacts facts, int run) {
    String id = facts.run(run).build().circuit();
    return id == null ? -1 : facts.handleOf(id);
  }

  private static Truth contains(PlanFacts facts, int run, int conductor) {
    if (facts.runOfConductor(conductor) != run) {
      return Truth.FALSE;
    }
    return facts.conductor(conductor) == null ? Truth.UNKNOWN : Truth.TRUE;
  }

  private static void containing(
      PlanFacts facts, int element, Arguments arguments, HandleList found) {
    if (facts.isConductor(element)) {
      found.add(facts.runOfConductor(element));
    }
  }

  /** The greatest AWG number of the insulated conductors; 0 if none is known. */
  static int thinnest(@Nullable List<Conductors> groups) {
    int thinnest = 0;
    for (int i = 0; groups != null && i < groups.size(); i++) {
      if (ConductorWords.isInsulated(groups.get(i)) && groups.get(i).count() > 0) {
        thinnest = Math.max(thinnest, groups.get(i).gauge());
      }
    }
    return thinnest;
  }

  private static void lowestRating(
      PlanFacts facts, int element, Arguments arguments, Reading reading) {
    List<Conductors> groups = facts.run(element).build().conductors();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    for (int i = 0; groups != null && i < groups.size(); i++) {
      if (ConductorWords.isInsulated(groups.get(i))) {
        Amount rating = groups.get(i).rating();
        // Math.min hands NaN on: one that is not given may be the lowest.
        double tolerance = rating == null ? Double.NaN : rating.siTolerance();
        least = Math.min(least, rating == null ? Double.NaN : rating.si() - tolerance);
        most = Math.min(most, rating == null ? Double.NaN : rating.si() + tolerance);
      }
    }
    if (least == Double.POSITIVE_INFINITY) {
      reading.missing();
    } else {
      reading.between(least, most);
    }
  }

  private static void explainRating(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainInsulated(facts, element, arguments, out);
    List<Conductors> groups = facts.run(element).build().conductors();
    for (int i = 0; groups != null && i < groups.size(); i++) {
      if (ConductorWords.isInsulated(groups.get(i)) && groups.get(i).rating() == null) {
        out.missing(facts.missing(groups.get(i).pointer() + "/rating"));
      }
    }
  }

  /** Says that the conductors of a run are missing, if they are, or that none is insulated. */
  private static void explainInsulated(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainConductors(facts, element, out);
    List<Conductors> groups = facts.run(element).build().conductors();
    if (groups != null && groups.stream().noneMatch(ConductorWords::isInsulated)) {
      out.reason(facts.name(element).label() + " has no insulated conductor");
    }
  }

  /** Says that the conductors of a run are missing, if they are. */
  static void explainConductors(PlanFacts facts, int run, Explanation out) {
    Given.explain(facts, run, facts.run(run).build().conductors(), "conductors", out);
  }
}
