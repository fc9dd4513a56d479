package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Circuit;
import org.rimefast.plan.RunBuild.Conductors;

/** Words for how far a circuit reaches, and what voltage is lost on the way. */
final class VoltageDropWords {
  /** Copper, ohm circular mils for each foot, at about 75 degC: common handbook formula. */
  private static final double COPPER = 12.9;

  private VoltageDropWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.CIRCUIT, "length to the farthest outlet", Kinds.LENGTH),
            VoltageDropWords::length,
            VoltageDropWords::explainLength)
        .number(
            property(Nouns.CIRCUIT, "voltage drop", Kinds.SHARE),
            VoltageDropWords::drop,
            VoltageDropWords::explainDrop);
  }

  /** True if every way is known: from the panel, over runs whose ends and lengths are given. */
  private static boolean isWhole(PlanFacts facts, Circuits.Served circuit) {
    if (circuit.panel() < 0 || circuit.runs().length == 0 || circuit.loose().length > 0) {
      return false;
    }
    for (int run : circuit.runs()) {
      boolean known =
          Entries.end(facts.run(run), false) != null
              && Entries.end(facts.run(run), true) != null
              && !Double.isNaN(facts.geometry().paths().length(facts.runIndex(run)));
      if (!known) {
        return false;
      }
    }
    return circuit.route().unreached().isEmpty();
  }

  private static void length(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Circuits.Served circuit = Circuits.of(facts, element);
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int part : circuit.parts()) {
      Truth outlet = CircuitWords.isOutlet(facts, part);
      Routes.Way way = circuit.route().to(part);
      if (outlet != Truth.FALSE && way != null) {
        most = Math.max(most, way.nominal() + way.tolerance());
        least =
            outlet == Truth.TRUE
                ? Math.max(least, Math.max(0, way.nominal() - way.tolerance()))
                : least;
      }
    }
    if (isWhole(facts, circuit) && least > Double.NEGATIVE_INFINITY) {
      reading.between(least / 1000, most / 1000);
    } else {
      reading.missing();
    }
  }

  private static void explainLength(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Circuits.Served circuit = Circuits.of(facts, element);
    explainWhole(facts, circuit, out);
    boolean none = true;
    for (int part : circuit.parts()) {
      Truth outlet = CircuitWords.isOutlet(facts, part);
      none &= outlet == Truth.FALSE;
      if (outlet == Truth.UNKNOWN) {
        out.missing(facts.missing(part, "devices"));
      }
    }
    Routes.Way farthest =
        circuit.route().farthest(part -> CircuitWords.isOutlet(facts, part) == Truth.TRUE);
    if (farthest != null) {
      out.fact("route", route(facts, farthest));
    } else if (none) {
      out.reason(facts.name(element).label() + " serves no outlet");
    }
  }

  /** 2 K I L / CM, the whole load at the far end; two conductors carry it there and back. */
  private static void drop(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Circuit given = facts.circuit(element);
    Circuits.Served circuit = Circuits.of(facts, element);
    Amount load = given.load();
    Amount voltage = given.voltage();
    if (load == null
        || voltage == null
        || mayBeNothing(voltage)
        || !hasGauges(facts, circuit)
        || !isWhole(facts, circuit)) {
      reading.missing();
      return;
    }
    double leastLoad = Math.max(0, load.si() - load.siTolerance());
    reading.between(
        2
            * COPPER
            * leastLoad
            * circuit.route().leastResistance()
            / (voltage.si() + voltage.siTolerance()),
        2
            * COPPER
            * (load.si() + load.siTolerance())
            * circuit.route().mostResistance()
            / (voltage.si() - voltage.siTolerance()));
  }

  /** True if the tolerance leaves no voltage for certain: the loss is a share of that. */
  private static boolean mayBeNothing(Amount voltage) {
    return voltage.si() - voltage.siTolerance() <= 0;
  }

  private static boolean hasGauges(PlanFacts facts, Circuits.Served circuit) {
    for (int run : circuit.runs()) {
      if (RunMakeWords.thinnest(facts.run(run).build().conductors()) == 0) {
        return false;
      }
    }
    return true;
  }

  private static void explainDrop(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    Circuit given = facts.circuit(element);
    Circuits.Served circuit = Circuits.of(facts, element);
    Given.explain(facts, element, given.load(), "load", out);
    Given.explain(facts, element, given.voltage(), "voltage", out);
    explainWhole(facts, circuit, out);
    if (given.voltage() != null && mayBeNothing(given.voltage())) {
      out.reason(
          "voltage of " + facts.name(element).label() + " may be nothing within its tolerance");
    }
    for (int run : circuit.runs()) {
      RunMakeWords.explainConductors(facts, run, out);
      if (facts.run(run).build().conductors() != null
          && RunMakeWords.thinnest(facts.run(run).build().conductors()) == 0) {
        out.reason(facts.name(run).label() + " has no insulated conductor");
      }
    }
    Routes.Way worst = circuit.route().worst();
    Amount load = given.load();
    Amount voltage = given.voltage();
    if (worst == null || load == null || voltage == null || !hasGauges(facts, circuit)) {
      return;
    }
    out.fact("route", route(facts, worst));
    out.fact(
        "load, all of it at the far end", load.value().text() + " at " + voltage.value().text());
    out.fact("reckoned as", "2 x 12.9 ohm cmil/ft x load x length / circular mils, copper");
  }

  private static void explainWhole(PlanFacts facts, Circuits.Served circuit, Explanation out) {
    CircuitWords.explainRuns(facts, circuit, out);
    Given.explain(facts, circuit.circuit(), facts.circuit(circuit.circuit()).panel(), "panel", out);
    for (int run : circuit.loose()) {
      out.missing(facts.missing(run, "circuit"));
    }
    boolean ends = true;
    for (int run : circuit.runs()) {
      Given.explain(facts, run, facts.run(run).from(), "from", out);
      Given.explain(facts, run, facts.run(run).to(), "to", out);
      RunPathWords.explainPath(facts, run, out);
      ends &= facts.run(run).from() != null && facts.run(run).to() != null;
    }
    boolean lengths =
        java.util.Arrays.stream(circuit.runs())
            .noneMatch(run -> Double.isNaN(facts.geometry().paths().length(facts.runIndex(run))));
    if (ends && lengths && circuit.panel() >= 0) {
      for (int run : circuit.route().unreached()) {
        out.reason(
            facts.name(run).label()
                + " is not joined to "
                + facts.name(circuit.panel()).label()
                + " by runs of "
                + facts.name(circuit.circuit()).label());
      }
    }
  }

  /** {@code panel LP1 -> cable C1 (12 AWG, 6 ft) -> box R-1, 6 ft in all}. */
  private static String route(PlanFacts facts, Routes.Way end) {
    Deque<Routes.Way> ways = new ArrayDeque<>();
    for (Routes.@Nullable Way way = end; way != null; way = way.before()) {
      ways.addFirst(way);
    }
    StringJoiner text = new StringJoiner(" -> ");
    double length = 0;
    for (Routes.Way way : ways) {
      if (way.run() >= 0) {
        double over = facts.geometry().paths().length(facts.runIndex(way.run()));
        length += over;
        text.add(
            facts.name(way.run()).label()
                + " ("
                + gauge(facts, way.run())
                + Places.length(facts, over)
                + ")");
      }
      text.add(facts.name(way.part()).label());
    }
    return text + ", " + Places.length(facts, length) + " in all";
  }

  private static String gauge(PlanFacts facts, int run) {
    java.util.@Nullable List<Conductors> groups = facts.run(run).build().conductors();
    int gauge = RunMakeWords.thinnest(groups);
    return gauge == 0 ? "" : gauge + " AWG, ";
  }
}
