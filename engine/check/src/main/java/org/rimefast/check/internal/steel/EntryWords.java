package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.plan.Amount;
import org.rimefast.plan.RunBuild;

/** Words for what the ends of runs enter, and how. */
final class EntryWords {
  private EntryWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .relation(
            Kinds.verb(Nouns.RUN, "enter _", "enters _", Kinds.element(Nouns.PART)),
            (facts, element, arguments) -> Entries.enters(facts, element, arguments.element(0)),
            EntryWords::entered,
            EntryWords::entering,
            (facts, element, arguments, out) ->
                Entries.explain(facts, element, arguments.element(0), out))
        .number(
            ElectricalKinds.at(Nouns.RUN, "slack at _", Kinds.LENGTH),
            EntryWords::slack,
            EntryWords::explainSlack)
        .number(
            property(Nouns.RUN, "corner slack", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                Given.read(facts.run(element).build().cornerSlack(), reading),
            (facts, element, arguments, out) ->
                Given.explain(
                    facts, element, facts.run(element).build().cornerSlack(), "slack/corners", out))
        .choice(
            ElectricalKinds.at(Nouns.RUN, "connector at _", ElectricalKinds.CONNECTOR),
            EntryWords::connector,
            EntryWords::explainConnector);
  }

  static void entered(PlanFacts facts, int element, Arguments arguments, HandleList found) {
    for (int part : Entries.of(facts).partsOf(facts, element)) {
      found.add(part);
    }
  }

  private static void entering(
      PlanFacts facts, int element, Arguments arguments, HandleList found) {
    if (facts.isPart(element)) {
      for (int run : Entries.of(facts).runsAt(element)) {
        found.add(run);
      }
    }
  }

  /** How an end of a run is made. */
  static RunBuild.End made(PlanFacts facts, int run, boolean last) {
    RunBuild build = facts.run(run).build();
    return last ? build.last() : build.first();
  }

  /** The slack at the end that enters a part; of two such ends, the lesser. */
  private static void slack(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    boolean known = true;
    for (int end = 0; end < 2; end++) {
      Truth enters = Entries.endEnters(facts, element, end == 1, arguments.element(0));
      Amount slack = made(facts, element, end == 1).slack();
      if (enters != Truth.FALSE) {
        known &= enters == Truth.TRUE && slack != null;
        if (slack != null) {
          least = Math.min(least, slack.si() - slack.siTolerance());
          most = Math.min(most, slack.si() + slack.siTolerance());
        }
      }
    }
    if (known && most < Double.POSITIVE_INFINITY) {
      reading.between(least, most);
    } else {
      reading.missing();
    }
  }

  private static void explainSlack(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainEnds(facts, element, arguments.element(0), out);
    for (boolean last : new boolean[] {false, true}) {
      if (Entries.endEnters(facts, element, last, arguments.element(0)) == Truth.TRUE) {
        Amount slack = made(facts, element, last).slack();
        Given.explain(facts, element, slack, last ? "slack/to" : "slack/from", out);
      }
    }
  }

  /** Says why no end of a run is known to enter a part, if none is. */
  static void explainEnds(PlanFacts facts, int run, int part, Explanation out) {
    Entries.explain(facts, run, part, out);
    if (Entries.enters(facts, run, part) == Truth.FALSE) {
      out.reason(facts.name(run).label() + " does not enter " + facts.name(part).label());
    }
  }

  /** The connector at the end that enters a part; none if two ends do, with different ones. */
  private static int connector(PlanFacts facts, int element, Arguments arguments) {
    int found = -1;
    for (int end = 0; end < 2; end++) {
      Truth enters = Entries.endEnters(facts, element, end == 1, arguments.element(0));
      if (enters == Truth.UNKNOWN) {
        return -1;
      }
      if (enters == Truth.TRUE) {
        int place = ElectricalKinds.place(made(facts, element, end == 1).connector());
        if (place < 0 || (found >= 0 && found != place)) {
          return -1;
        }
        found = place;
      }
    }
    return found;
  }

  private static void explainConnector(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainEnds(facts, element, arguments.element(0), out);
    RunBuild.@Nullable Connector other = null;
    for (boolean last : new boolean[] {false, true}) {
      if (Entries.endEnters(facts, element, last, arguments.element(0)) == Truth.TRUE) {
        RunBuild.Connector connector = made(facts, element, last).connector();
        Given.explain(facts, element, connector, last ? "toConnector" : "fromConnector", out);
        if (connector != null && other != null && connector != other) {
          out.reason(
              "the two ends of " + facts.name(element).label() + " have different connectors");
        }
        other = connector;
      }
    }
  }
}
