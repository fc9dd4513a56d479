package org.rimefast.check.internal.steel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Run;

/**
 * The shortest ways from a circuit's panel over its runs to every part that they reach, once by
 * length and once by length for each circular mil of the thinnest conductor in each run.
 */
final class Routes {
  private static final double MILLIMETRES_PER_FOOT = 304.8;

  private final Map<Integer, Way> byLength;
  private final Map<Integer, Way> byResistance;
  private final List<Integer> unreached = new ArrayList<>();

  /**
   * A way from the panel to a part.
   *
   * @param nominal how far it is, in millimetres or in feet for each circular mil
   * @param tolerance how much that may differ
   * @param run the last run of the way; -1 at the panel
   * @param before the way to the part before; null at the panel
   */
  record Way(int part, double nominal, double tolerance, int run, @Nullable Way before) {}

  /** How far it is over a run. */
  private interface Measure {
    double of(int run);
  }

  private Routes(PlanFacts facts, int panel, int[] runs) {
    Map<Integer, List<Integer>> at = new HashMap<>();
    for (int run : runs) {
      for (int part : new int[] {end(facts, run, false), end(facts, run, true)}) {
        at.computeIfAbsent(part, p -> new ArrayList<>()).add(run);
      }
    }
    byLength = ways(facts, panel, at, run -> length(facts, run), run -> tolerance(facts, run));
    byResistance =
        ways(
            facts,
            panel,
            at,
            run -> length(facts, run) / mils(facts, run) / MILLIMETRES_PER_FOOT,
            run -> tolerance(facts, run) / mils(facts, run) / MILLIMETRES_PER_FOOT);
    for (int run : runs) {
      if (!byLength.containsKey(end(facts, run, false))
          && !byLength.containsKey(end(facts, run, true))) {
        unreached.add(run);
      }
    }
  }

  static Routes of(PlanFacts facts, int panel, int[] runs) {
    return new Routes(facts, panel, runs);
  }

  private static int end(PlanFacts facts, int run, boolean last) {
    String id = Entries.end(facts.run(run), last);
    return id == null ? -1 : facts.handleOf(id);
  }

  private static double length(PlanFacts facts, int run) {
    return facts.geometry().paths().length(facts.runIndex(run));
  }

  private static double tolerance(PlanFacts facts, int run) {
    return facts.geometry().paths().lengthTolerance(facts.runIndex(run));
  }

  private static double mils(PlanFacts facts, int run) {
    Run given = facts.run(run);
    int gauge = RunMakeWords.thinnest(given.build().conductors());
    return gauge == 0 ? Double.NaN : Gauge.circularMils(gauge);
  }

  /** Shortest ways first: Dijkstra. A run of unknown measure leads nowhere. */
  private static Map<Integer, Way> ways(
      PlanFacts facts,
      int panel,
      Map<Integer, List<Integer>> at,
      Measure measure,
      Measure tolerance) {
    Map<Integer, Way> found = new HashMap<>();
    PriorityQueue<Way> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Way::nominal)
                .thenComparingInt(Way::part)
                .thenComparingInt(Way::run));
    if (panel >= 0) {
      open.add(new Way(panel, 0, 0, -1, null));
    }
    while (!open.isEmpty()) {
      Way way = open.remove();
      if (found.putIfAbsent(way.part(), way) != null) {
        continue;
      }
      for (int run : at.getOrDefault(way.part(), List.of())) {
        int from = end(facts, run, false);
        int next = from == way.part() ? end(facts, run, true) : from;
        double over = measure.of(run);
        if (next >= 0 && !found.containsKey(next) && !Double.isNaN(over)) {
          open.add(
              new Way(next, way.nominal() + over, way.tolerance() + tolerance.of(run), run, way));
        }
      }
    }
    return found;
  }

  /** Runs that no chain of runs joins to the panel. */
  List<Integer> unreached() {
    return unreached;
  }

  /** The way by length to a part; null if the runs do not lead there. */
  @Nullable Way to(int part) {
    return byLength.get(part);
  }

  /** The way of the most length for each circular mil. */
  @Nullable Way worst() {
    return farthest(byResistance, part -> true);
  }

  /** The longest of the ways to parts that are wanted. */
  @Nullable Way farthest(Predicate<Integer> wanted) {
    return farthest(byLength, wanted);
  }

  private static @Nullable Way farthest(Map<Integer, Way> ways, Predicate<Integer> wanted) {
    return ways.values().stream()
        .filter(way -> way.run() >= 0 && wanted.test(way.part()))
        .max(Comparator.comparingDouble(Way::nominal).thenComparingInt(way -> -way.part()))
        .orElse(null);
  }

  /** The most that any way may be, for each circular mil. */
  double mostResistance() {
    return byResistance.values().stream()
        .mapToDouble(way -> way.nominal() + way.tolerance())
        .max()
        .orElse(Double.NaN);
  }

  /** The least that the worst way can be, for each circular mil. */
  double leastResistance() {
    return byResistance.values().stream()
        .mapToDouble(way -> Math.max(0, way.nominal() - way.tolerance()))
        .max()
        .orElse(Double.NaN);
  }
}
