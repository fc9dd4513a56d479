package org.rimefast.check.internal.steel;

import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.plan.geometry.ModuleGeometry;

/** Words for runs that lie side by side and warm each other. */
final class BundleWords {
  private static final PlanFacts.Key<Unplaced> UNPLACED =
      new PlanFacts.Key<>("runs without a place", Unplaced.class);
  private static final ThreadLocal<HandleList> SCRATCH = ThreadLocal.withInitial(HandleList::new);

  private BundleWords() {}

  /** Handles of runs whose place or diameter is not known: they may be anywhere. */
  private record Unplaced(int[] handles) {
    static Unplaced of(PlanFacts facts) {
      HandleList found = new HandleList();
      for (int run : facts.members(Nouns.RUN)) {
        if (!isPlaced(facts, run)) {
          found.add(run);
        }
      }
      return new Unplaced(found.toArray());
    }
  }

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.being(
            Nouns.RUN,
            "alongside _ within _ over _",
            Kinds.element(Nouns.RUN),
            Kinds.reach(),
            Kinds.value(Kinds.LENGTH)),
        BundleWords::isAlongside,
        BundleWords::candidates,
        BundleWords::candidates,
        BundleWords::explain);
  }

  private static boolean isPlaced(PlanFacts facts, int run) {
    return facts.run(run).diameter() != null
        && facts.geometry().runMissingForPath(facts.runIndex(run)).isEmpty();
  }

  /** At least so much of the run's line lies no farther from the other than the distance. */
  private static Truth isAlongside(PlanFacts facts, int element, Arguments arguments) {
    int other = arguments.element(0);
    if (element == other) {
      return Truth.FALSE;
    }
    ModuleGeometry geometry = facts.geometry();
    int a = facts.runIndex(element);
    int b = facts.runIndex(other);
    Reading distance = arguments.number(1);
    Reading length = arguments.number(2);
    double tolerance = geometry.gapToleranceBetweenRuns(a, b);
    double ofLength = geometry.paths().lengthTolerance(a);
    double least = geometry.paths().lengthWithin(a, b, distance.least() * 1000 - tolerance);
    double most = geometry.paths().lengthWithin(a, b, distance.most() * 1000 + tolerance);
    if (Double.isNaN(least)) {
      return Truth.UNKNOWN;
    }
    if (most == 0) {
      return Truth.FALSE;
    }
    return Intervals.compare(
        Comparison.AT_LEAST,
        Math.max(0, least - ofLength) / 1000,
        (most + ofLength) / 1000,
        length.least(),
        length.most());
  }

  private static void candidates(
      PlanFacts facts, int element, Arguments arguments, HandleList found) {
    if (!facts.isRun(element) || !isPlaced(facts, element)) {
      for (int run : facts.members(Nouns.RUN)) {
        found.add(run);
      }
      return;
    }
    HandleList near = SCRATCH.get();
    near.clear();
    facts
        .geometry()
        .paths()
        .runsWithin(facts.runIndex(element), arguments.number(1).most() * 1000, near);
    for (int i = 0; i < near.size(); i++) {
      found.add(facts.handleOfRun(near.get(i)));
    }
    for (int run : facts.keep(UNPLACED, Unplaced::of).handles()) {
      found.add(run);
    }
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int a = facts.runIndex(element);
    int b = facts.runIndex(arguments.element(0));
    double within = facts.geometry().paths().lengthWithin(a, b, arguments.number(1).most() * 1000);
    if (!Double.isNaN(within)) {
      out.fact(
          "as drawn, alongside " + facts.name(arguments.element(0)).label() + " for",
          Places.length(facts, within)
              + " of "
              + Places.length(facts, facts.geometry().paths().length(a)));
      return;
    }
    for (int run : new int[] {a, b}) {
      facts.geometry().runMissing(run).forEach(pointer -> out.missing(facts.missing(pointer)));
    }
  }
}
