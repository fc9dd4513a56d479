package org.rimefast.check.internal.steel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Circuit;

/**
 * Which runs belong to which circuit, and what the circuits serve.
 *
 * <p>A run whose circuit the plan does not give may belong to any circuit that it hangs together
 * with: over the parts that such runs enter, but not through panels, in which all circuits meet.
 */
final class Circuits {
  private static final PlanFacts.Key<Circuits> KEY =
      new PlanFacts.Key<>("circuits", Circuits.class);

  private final List<Served> served = new ArrayList<>(); // in the order of the circuits' handles
  private final int first;
  private final Loose loose;
  private final int[][] byPart; // by handle of the part

  /**
   * One circuit.
   *
   * @param panel the handle of its panel; -1 if not given
   * @param runs the runs that belong to it
   * @param loose runs that may belong to it
   * @param parts parts that its runs enter but for its panel, in increasing order
   * @param maybe parts that it may serve besides, in increasing order
   * @param route ways from its panel
   */
  record Served(
      int circuit, int panel, int[] runs, int[] loose, int[] parts, int[] maybe, Routes route) {
    boolean serves(int part) {
      return Arrays.binarySearch(parts, part) >= 0;
    }

    boolean mayServe(int part) {
      return Arrays.binarySearch(maybe, part) >= 0;
    }
  }

  private Circuits(PlanFacts facts) {
    int[] circuits = facts.members(Nouns.CIRCUIT);
    first = circuits.length == 0 ? 0 : circuits[0];
    List<List<Integer>> own = new ArrayList<>();
    for (int i = 0; i < circuits.length; i++) {
      own.add(new ArrayList<>());
    }
    List<Integer> without = new ArrayList<>();
    for (int run : facts.members(Nouns.RUN)) {
      int circuit = RunMakeWords.circuit(facts, run);
      if (circuit >= 0 && facts.isCircuit(circuit)) {
        own.get(circuit - first).add(run);
      } else {
        without.add(run);
      }
    }
    loose = circuits.length == 0 ? Loose.none() : new Loose(facts, without);
    for (int circuit : circuits) {
      served.add(serve(facts, circuit, array(own.get(circuit - first))));
    }
    byPart = byPart(facts.plan().parts().size());
  }

  /** The circuits that serve each part or may serve it, in increasing order. */
  private int[][] byPart(int parts) {
    List<List<Integer>> all = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      all.add(new ArrayList<>());
    }
    for (Served circuit : served) {
      for (int part : circuit.parts()) {
        all.get(part).add(circuit.circuit());
      }
      for (int part : circuit.maybe()) {
        if (!circuit.serves(part)) {
          all.get(part).add(circuit.circuit());
        }
      }
    }
    return all.stream().map(Circuits::array).toArray(int[][]::new);
  }

  static Circuits of(PlanFacts facts) {
    return facts.keep(KEY, Circuits::new);
  }

  /** What is known of a circuit. */
  static Served of(PlanFacts facts, int circuit) {
    Circuits all = of(facts);
    return all.served.get(circuit - all.first);
  }

  private Served serve(PlanFacts facts, int circuit, int[] runs) {
    Circuit given = facts.circuit(circuit);
    int panel = given.panel() == null ? -1 : facts.handleOf(given.panel());
    Set<Integer> parts = new TreeSet<>();
    Set<Integer> maybe = new TreeSet<>();
    Set<Integer> hanging = new LinkedHashSet<>();
    for (int run : runs) {
      for (int part : Entries.of(facts).partsOf(facts, run)) {
        boolean sure = Entries.enters(facts, run, part) == org.rimefast.check.Truth.TRUE;
        (sure ? parts : maybe).add(part);
        hanging.addAll(loose.groupsAt(part, facts));
      }
    }
    hanging.addAll(panel < 0 ? loose.all() : loose.groupsAtPanel(panel));
    List<Integer> looseRuns = new ArrayList<>();
    for (int group : hanging) {
      for (int run : loose.runs(group)) {
        looseRuns.add(run);
        for (int part : Entries.of(facts).partsOf(facts, run)) {
          maybe.add(part);
        }
      }
    }
    parts.remove(panel);
    maybe.remove(panel);
    maybe.removeAll(parts);
    return new Served(
        circuit,
        panel,
        runs,
        array(looseRuns),
        array(parts),
        array(maybe),
        Routes.of(facts, panel, runs));
  }

  /** Handles of the circuits that serve or may serve a part. */
  void serving(int part, org.rimefast.check.HandleList found) {
    for (int circuit : byPart[part]) {
      found.add(circuit);
    }
  }

  private static int[] array(java.util.Collection<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).toArray();
  }
}
