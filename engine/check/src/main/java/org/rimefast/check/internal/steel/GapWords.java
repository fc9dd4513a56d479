package org.rimefast.check.internal.steel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.plan.geometry.ModuleGeometry;
import org.rimefast.plan.geometry.Nearest;
import org.rimefast.plan.geometry.RunsInSpace;

/** Words for how near parts and runs come to each other. */
final class GapWords {
  private static final PlanFacts.Key<Spread> SPREAD =
      new PlanFacts.Key<>("spread of tolerances", Spread.class);

  private static final ThreadLocal<HandleList> SCRATCH = ThreadLocal.withInitial(HandleList::new);

  private GapWords() {}

  /**
   * What a search for neighbours must allow for.
   *
   * @param tolerance the greatest tolerance of any part or run
   * @param unplaced handles of parts without a place, which may be anywhere
   */
  private record Spread(double tolerance, int[] unplaced) {
    static Spread of(PlanFacts facts) {
      double tolerance = 0;
      HandleList unplaced = new HandleList();
      for (int handle : facts.members(Nouns.PART)) {
        if (facts.geometry().cuboid(handle) == null) {
          unplaced.add(handle);
        } else {
          tolerance = Math.max(tolerance, facts.geometry().positionTolerance(handle));
        }
      }
      return new Spread(tolerance, unplaced.toArray());
    }
  }

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            new Property(
                "item.distance to",
                "distance to _",
                Nouns.ITEM,
                List.of(Kinds.element(Nouns.ITEM)),
                Kinds.LENGTH),
            GapWords::distance,
            GapWords::explain)
        .relation(
            Kinds.verb(Nouns.ITEM, "touch _", "touches _", Kinds.element(Nouns.ITEM)),
            GapWords::touches,
            GapWords::neighbours,
            GapWords::neighbours,
            GapWords::explain)
        .relation(
            Kinds.being(Nouns.ITEM, "within _ of _", Kinds.reach(), Kinds.element(Nouns.ITEM)),
            GapWords::within,
            GapWords::nearEnough,
            GapWords::nearEnough,
            (facts, element, arguments, out) -> explain(facts, element, arguments.element(1), out));
  }

  private static double gap(PlanFacts facts, int a, int b) {
    ModuleGeometry geometry = facts.geometry();
    if (facts.isPart(a)) {
      return facts.isPart(b) ? geometry.gap(a, b) : geometry.runGap(facts.runIndex(b), a);
    }
    return facts.isPart(b)
        ? geometry.runGap(facts.runIndex(a), b)
        : geometry.gapBetweenRuns(facts.runIndex(a), facts.runIndex(b));
  }

  private static double tolerance(PlanFacts facts, int a, int b) {
    ModuleGeometry geometry = facts.geometry();
    if (facts.isPart(a)) {
      return facts.isPart(b)
          ? geometry.gapTolerance(a, b)
          : geometry.runGapTolerance(facts.runIndex(b), a);
    }
    return facts.isPart(b)
        ? geometry.runGapTolerance(facts.runIndex(a), b)
        : geometry.gapToleranceBetweenRuns(facts.runIndex(a), facts.runIndex(b));
  }

  private static @Nullable Nearest nearest(PlanFacts facts, int a, int b) {
    ModuleGeometry geometry = facts.geometry();
    if (facts.isPart(a)) {
      return facts.isPart(b) ? geometry.nearest(a, b) : geometry.runNearest(facts.runIndex(b), a);
    }
    return facts.isPart(b)
        ? geometry.runNearest(facts.runIndex(a), b)
        : geometry.nearestBetweenRuns(facts.runIndex(a), facts.runIndex(b));
  }

  private static void distance(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    double gap = gap(facts, element, arguments.element(0));
    double tolerance = tolerance(facts, element, arguments.element(0));
    reading.between(Math.max(0, gap - tolerance) / 1000, (gap + tolerance) / 1000);
  }

  private static Truth touches(PlanFacts facts, int element, Arguments arguments) {
    int other = arguments.element(0);
    if (element == other) {
      return Truth.FALSE;
    }
    double contact = facts.geometry().contactTolerance();
    double gap = gap(facts, element, other);
    if (Double.isNaN(gap)
        && facts.isPart(element)
        && facts.isPart(other)
        && Extents.apart(facts, element, other, contact)) {
      return Truth.FALSE;
    }
    return Touch.decide(gap, tolerance(facts, element, other), contact);
  }

  private static Truth within(PlanFacts facts, int element, Arguments arguments) {
    Reading limit = arguments.number(0);
    int other = arguments.element(1);
    if (element == other) {
      return Truth.FALSE;
    }
    double gap = gap(facts, element, other);
    if (Double.isNaN(gap)) {
      return facts.isPart(element)
              && facts.isPart(other)
              && Extents.apart(facts, element, other, limit.most() * 1000)
          ? Truth.FALSE
          : Truth.UNKNOWN;
    }
    double tolerance = tolerance(facts, element, other);
    return Intervals.compare(
        Comparison.AT_MOST,
        Math.max(0, gap - tolerance) / 1000,
        (gap + tolerance) / 1000,
        limit.least(),
        limit.most());
  }

  /** Everything that can touch: what is near enough, and what may be. */
  private static void neighbours(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    neighbouringParts(facts, element, candidates);
    RunsInSpace runs = facts.geometry().runs();
    if (!hasPlace(facts, element)) {
      addAll(facts.members(Nouns.RUN), candidates);
      return;
    }
    if (facts.isPart(element)) {
      runs.runsAtPart(element, facts.handleOfRun(0), candidates);
    } else {
      runs.runsAtRun(facts.runIndex(element), facts.handleOfRun(0), candidates);
    }
    runs.unplacedRuns(facts.handleOfRun(0), candidates);
  }

  private static boolean hasPlace(PlanFacts facts, int element) {
    return facts.isPart(element)
        ? facts.geometry().cuboid(element) != null
        : facts.geometry().runMissing(facts.runIndex(element)).isEmpty();
  }

  /** Parts that can touch an item: those near enough, and those without a place that may be. */
  static void neighbouringParts(PlanFacts facts, int element, HandleList candidates) {
    ModuleGeometry geometry = facts.geometry();
    if (facts.isPart(element)) {
      addPartsNear(facts, element, geometry.contactTolerance(), candidates);
    } else if (hasPlace(facts, element)) {
      geometry.runs().partsAtRun(facts.runIndex(element), candidates);
      addUnplacedParts(facts, candidates);
    } else {
      addAll(facts.members(Nouns.PART), candidates);
    }
  }

  /** Parts that may be within a distance of a part. */
  private static void addPartsNear(
      PlanFacts facts, int part, double distance, HandleList candidates) {
    if (!hasPlace(facts, part)) {
      PossibleParts.of(facts).near(part, distance, candidates);
      return;
    }
    Spread spread = facts.keep(SPREAD, Spread::of);
    double reach = distance + Touch.ROUNDING + spread.tolerance;
    facts
        .geometry()
        .partsWithinInAnyOrder(part, reach + facts.geometry().positionTolerance(part), candidates);
    PossibleParts.of(facts).unplacedNear(part, distance, candidates);
  }

  /** What may be within a distance of an item, and runs without a place. */
  private static void nearEnough(
      PlanFacts facts, int element, Arguments arguments, HandleList candidates) {
    double distance = arguments.number(0).most() * 1000;
    boolean isPart = facts.isPart(element);
    int run = facts.runIndex(element);
    if (isPart) {
      addPartsNear(facts, element, distance, candidates);
    } else if (facts.geometry().runMissing(run).isEmpty()) {
      Spread spread = facts.keep(SPREAD, Spread::of);
      facts.geometry().paths().partsNear(run, distance + spread.tolerance(), candidates);
      addAll(spread.unplaced(), candidates);
    } else {
      addAll(facts.members(Nouns.PART), candidates);
      addAll(facts.members(Nouns.RUN), candidates);
      return;
    }
    if (isPart && !hasPlace(facts, element)) {
      addAll(facts.members(Nouns.RUN), candidates);
      return;
    }
    HandleList near = SCRATCH.get();
    near.clear();
    if (isPart) {
      facts.geometry().paths().runsNearPart(element, distance, near);
    } else {
      facts.geometry().paths().runsWithin(run, distance, near);
    }
    for (int i = 0; i < near.size(); i++) {
      candidates.add(facts.handleOfRun(near.get(i)));
    }
    facts.geometry().runs().unplacedRuns(facts.handleOfRun(0), candidates);
  }

  /** Parts of which it is not known where they are. */
  static void addUnplacedParts(PlanFacts facts, HandleList candidates) {
    addAll(facts.keep(SPREAD, Spread::of).unplaced, candidates);
  }

  static void addAll(int[] handles, HandleList candidates) {
    for (int handle : handles) {
      candidates.add(handle);
    }
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explain(facts, element, arguments.element(0), out);
  }

  static void explain(PlanFacts facts, int a, int b, Explanation out) {
    Nearest nearest = a == b ? null : nearest(facts, a, b);
    if (nearest != null) {
      out.fact("gap as drawn", Places.length(facts, nearest.distance()));
      double tolerance = tolerance(facts, a, b);
      if (tolerance > 0) {
        out.fact("may differ by", Places.length(facts, tolerance));
      }
      return;
    }
    for (int handle : new int[] {a, b}) {
      (facts.isPart(handle)
              ? facts.geometry().missing(handle)
              : facts.geometry().runMissing(facts.runIndex(handle)))
          .forEach(pointer -> out.missing(facts.missing(pointer)));
    }
  }
}
