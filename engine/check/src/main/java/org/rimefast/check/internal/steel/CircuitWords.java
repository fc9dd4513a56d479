package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Circuit;

/** Words for what a plan says of circuits, and for what they serve. */
final class CircuitWords {
  private CircuitWords() {}

  static void addTo(Dictionary.Builder words) {
    given(words, "breaker", ElectricalKinds.CURRENT, "breaker", Circuit::breaker);
    given(words, "voltage", ElectricalKinds.VOLTAGE, "voltage", Circuit::voltage);
    given(words, "load", ElectricalKinds.CURRENT, "load", Circuit::load);
    given(words, "terminal rating", Kinds.TEMPERATURE, "terminals", Circuit::terminals);
    words
        .link(
            new Link("circuit.panel", "panel", Nouns.CIRCUIT, Nouns.PANEL),
            (facts, element) -> Circuits.of(facts, element).panel(),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.circuit(element).panel(), "panel", out))
        .relation(
            Kinds.verb(Nouns.CIRCUIT, "serve _", "serves _", Kinds.element(Nouns.PART)),
            CircuitWords::serves,
            CircuitWords::served,
            (facts, element, arguments, found) -> Circuits.of(facts).serving(element, found),
            CircuitWords::explainServes)
        .number(
            property(Nouns.CIRCUIT, "outlet count", Kinds.COUNT),
            CircuitWords::outlets,
            CircuitWords::explainOutlets)
        .number(
            property(Nouns.CIRCUIT, "thinnest gauge", Kinds.COUNT),
            CircuitWords::thinnest,
            CircuitWords::explainThinnest);
    VoltageDropWords.addTo(words);
  }

  private static void given(
      Dictionary.Builder words,
      String phrase,
      ValueType type,
      String field,
      Function<Circuit, @Nullable Amount> value) {
    words.number(
        property(Nouns.CIRCUIT, phrase, type),
        (facts, element, arguments, reading) ->
            Given.read(value.apply(facts.circuit(element)), reading),
        (facts, element, arguments, out) ->
            Given.explain(facts, element, value.apply(facts.circuit(element)), field, out));
  }

  private static Truth serves(PlanFacts facts, int element, Arguments arguments) {
    Circuits.Served circuit = Circuits.of(facts, element);
    int part = arguments.element(0);
    if (circuit.serves(part)) {
      return Truth.TRUE;
    }
    return circuit.mayServe(part) ? Truth.UNKNOWN : Truth.FALSE;
  }

  private static void served(PlanFacts facts, int element, Arguments arguments, HandleList found) {
    Circuits.Served circuit = Circuits.of(facts, element);
    for (int part : circuit.parts()) {
      found.add(part);
    }
    for (int part : circuit.maybe()) {
      found.add(part);
    }
  }

  private static void explainServes(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Circuits.Served circuit = Circuits.of(facts, element);
    int part = arguments.element(0);
    if (circuit.serves(part)) {
      for (int run : circuit.runs()) {
        if (Entries.enters(facts, run, part) == Truth.TRUE) {
          out.fact("enters it", facts.name(run).label());
        }
      }
    } else if (circuit.mayServe(part)) {
      explainMaybe(facts, circuit, part, out);
    }
  }

  /** Names what keeps it open whether a circuit serves a part. */
  private static void explainMaybe(
      PlanFacts facts, Circuits.Served circuit, int part, Explanation out) {
    for (int run : circuit.runs()) {
      Entries.explain(facts, run, part, out);
    }
    for (int run : circuit.loose()) {
      if (Entries.enters(facts, run, part) != Truth.FALSE) {
        out.missing(facts.missing(run, "circuit"));
        Entries.explain(facts, run, part, out);
      }
    }
  }

  /** Whether a part uses what a circuit gives: a luminaire, or a box with a device for use. */
  static Truth isOutlet(PlanFacts facts, int part) {
    if (facts.isMember(Nouns.BOX, part)) {
      return BoxFillWords.isOutlet(facts, part);
    }
    return Truth.of(facts.isMember(Nouns.LUMINAIRE, part));
  }

  private static void outlets(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Circuits.Served circuit = Circuits.of(facts, element);
    int least = 0;
    int most = 0;
    for (int part : circuit.parts()) {
      Truth outlet = isOutlet(facts, part);
      least += outlet == Truth.TRUE ? 1 : 0;
      most += outlet == Truth.FALSE ? 0 : 1;
    }
    for (int part : circuit.maybe()) {
      most += isOutlet(facts, part) == Truth.FALSE ? 0 : 1;
    }
    if (circuit.runs().length == 0 && most == 0) {
      reading.missing();
    } else {
      reading.between(least, most);
    }
  }

  private static void explainOutlets(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Circuits.Served circuit = Circuits.of(facts, element);
    explainRuns(facts, circuit, out);
    if (circuit.runs().length == 0) {
      for (int run : circuit.loose()) {
        out.missing(facts.missing(run, "circuit"));
      }
    }
    StringBuilder outlets = new StringBuilder();
    for (int part : circuit.parts()) {
      Truth outlet = isOutlet(facts, part);
      if (outlet == Truth.TRUE) {
        outlets.append(outlets.isEmpty() ? "" : ", ").append(facts.name(part).label());
      } else if (outlet == Truth.UNKNOWN) {
        out.missing(facts.missing(part, "devices"));
      }
    }
    if (!outlets.isEmpty()) {
      out.fact("outlets", outlets.toString());
    }
    for (int part : circuit.maybe()) {
      if (isOutlet(facts, part) != Truth.FALSE) {
        explainMaybe(facts, circuit, part, out);
      }
      if (isOutlet(facts, part) == Truth.UNKNOWN) {
        out.missing(facts.missing(part, "devices"));
      }
    }
  }

  /** Says that a circuit has no run, if it has none. */
  static void explainRuns(PlanFacts facts, Circuits.Served circuit, Explanation out) {
    if (circuit.runs().length == 0 && circuit.loose().length == 0) {
      out.reason("no run is of " + facts.name(circuit.circuit()).label());
    }
  }

  /** Known once every run that belongs to it or may belong to it is. */
  private static void thinnest(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Circuits.Served circuit = Circuits.of(facts, element);
    int sure = thinnest(facts, circuit.runs());
    int possible = Math.max(sure, thinnest(facts, circuit.loose()));
    boolean known = isKnown(facts, circuit.runs()) && isKnown(facts, circuit.loose());
    if (known && sure > 0) {
      reading.between(sure, possible);
    } else {
      reading.missing();
    }
  }

  private static int thinnest(PlanFacts facts, int[] runs) {
    int thinnest = 0;
    for (int run : runs) {
      thinnest = Math.max(thinnest, RunMakeWords.thinnest(facts.run(run).build().conductors()));
    }
    return thinnest;
  }

  private static boolean isKnown(PlanFacts facts, int[] runs) {
    for (int run : runs) {
      if (facts.run(run).build().conductors() == null) {
        return false;
      }
    }
    return true;
  }

  private static void explainThinnest(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Circuits.Served circuit = Circuits.of(facts, element);
    explainRuns(facts, circuit, out);
    int thinnest = thinnest(facts, circuit.runs());
    boolean said = false;
    for (int run : circuit.runs()) {
      RunMakeWords.explainConductors(facts, run, out);
      int gauge = RunMakeWords.thinnest(facts.run(run).build().conductors());
      if (gauge > 0 && gauge == thinnest && !said) {
        out.fact("thinnest in", facts.name(run).label());
        said = true;
      }
    }
    for (int run : circuit.loose()) {
      boolean thinner =
          RunMakeWords.thinnest(facts.run(run).build().conductors()) > thinnest
              || facts.run(run).build().conductors() == null;
      if (thinner) {
        out.missing(facts.missing(run, "circuit"));
      }
    }
  }
}
