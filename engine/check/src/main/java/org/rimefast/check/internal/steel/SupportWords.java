package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.plan.Amount;

/**
 * Words for how runs are held. Each strap may be off by its own tolerance, else that of electrical
 * work; with one that is beyond the end of its run even so, nothing is known of all of them.
 */
final class SupportWords {
  private SupportWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.RUN, "support spacing", Kinds.LENGTH),
            SupportWords::spacing,
            SupportWords::explainSpacing)
        .number(
            ElectricalKinds.at(Nouns.RUN, "support distance at _", Kinds.LENGTH),
            SupportWords::distance,
            SupportWords::explainDistance);
  }

  private static double at(List<Amount> supports, int i, double length) {
    return Math.min(supports.get(i).millimetres(), length);
  }

  private static double tolerance(PlanFacts facts, Amount support) {
    Amount trade = facts.plan().tolerances().electrical();
    return support.plusMinus() != null || trade == null
        ? support.siTolerance() * 1000
        : trade.millimetres();
  }

  /**
   * The longest stretch between neighbours that hold a run. Straps that the plan does not give can
   * only make it shorter.
   */
  private static void spacing(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    Holds holds = Holds.of(facts, element);
    if (holds.all().isEmpty() || holds.beyond() > 0) {
      reading.missing();
    } else {
      double least = holds.complete() ? holds.longest(false) : 0;
      reading.between(least / 1000, holds.longest(true) / 1000);
    }
  }

  private static void explainSpacing(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explainMissing(facts, element, out);
    Holds holds = Holds.of(facts, element);
    if (holds.all().isEmpty() || holds.beyond() > 0) {
      return;
    }
    double[] stretch = holds.longestStretch();
    out.fact(
        "longest stretch without support",
        "from "
            + Places.length(facts, stretch[0])
            + " to "
            + Places.length(facts, stretch[1])
            + " along it, of "
            + Places.length(facts, facts.geometry().paths().length(facts.runIndex(element))));
    out.fact(
        "held by",
        "its ends, "
            + count(holds.straps(), "strap")
            + " and "
            + count(holds.studs(), "stud")
            + " whose service holes it passes through");
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** How far the first strap is from the end that enters a part; of two such ends, the farther. */
  private static void distance(PlanFacts facts, int element, Arguments arguments, Reading reading) {
    List<Amount> supports = facts.run(element).build().supports();
    int index = facts.runIndex(element);
    double length = facts.geometry().paths().length(index);
    boolean known =
        supports != null && !Double.isNaN(length) && Holds.of(facts, element).beyond() == 0;
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int end = 0; known && end < 2; end++) {
      Truth enters = Entries.endEnters(facts, element, end == 1, arguments.element(0));
      known = enters != Truth.UNKNOWN;
      if (enters == Truth.TRUE && supports != null) {
        double distance = distance(supports, end == 1, length);
        double tolerance = distanceTolerance(facts, index, supports, end == 1);
        least = Math.max(least, Math.max(0, distance - tolerance));
        most = Math.max(most, distance + tolerance);
      }
    }
    if (known && most > Double.NEGATIVE_INFINITY) {
      reading.between(least / 1000, most / 1000);
    } else {
      reading.missing();
    }
  }

  /** A run without straps is next held where its other end is. */
  private static double distance(List<Amount> supports, boolean last, double length) {
    if (supports.isEmpty()) {
      return length;
    }
    return last ? length - at(supports, supports.size() - 1, length) : at(supports, 0, length);
  }

  private static double distanceTolerance(
      PlanFacts facts, int index, List<Amount> supports, boolean last) {
    double ofLength =
        last || supports.isEmpty() ? facts.geometry().paths().lengthTolerance(index) : 0;
    return supports.isEmpty()
        ? ofLength
        : ofLength + tolerance(facts, supports.get(last ? supports.size() - 1 : 0));
  }

  private static void explainDistance(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    EntryWords.explainEnds(facts, element, arguments.element(0), out);
    explainMissing(facts, element, out);
    List<Amount> supports = facts.run(element).build().supports();
    if (supports != null && supports.isEmpty()) {
      out.fact("supports", "none, so up to its other end");
    }
  }

  private static void explainMissing(PlanFacts facts, int element, Explanation out) {
    Given.explain(facts, element, facts.run(element).build().supports(), "supports", out);
    RunPathWords.explainPath(facts, element, out);
    int beyond = Holds.of(facts, element).beyond();
    List<Amount> supports = facts.run(element).build().supports();
    if (beyond > 0 && supports != null) {
      double length = facts.geometry().paths().length(facts.runIndex(element));
      out.reason(
          "support "
              + beyond
              + " of "
              + facts.name(element).label()
              + " is at "
              + supports.get(beyond - 1).value().text()
              + ", beyond its end at "
              + Places.length(facts, length));
    }
  }
}
