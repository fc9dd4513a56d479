package org.rimefast.check.internal.steel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Amount;
import org.rimefast.plan.geometry.Certainty;
import org.rimefast.plan.geometry.StudPass;

/**
 * What holds a run along its length: its ends, its straps, and the studs through whose service
 * holes it passes. A strap that the tolerances leave no place on the run is none. Each strap may be
 * off by its own tolerance, else that of electrical work.
 *
 * @param all in their order along the run; empty if its length is not known
 * @param complete false if the plan does not give its straps
 * @param beyond the number of the first strap beyond its end, counted from 1; 0 if there is none
 */
record Holds(List<Hold> all, boolean complete, int beyond) {
  private static final PlanFacts.Key<Holds[]> KEY =
      new PlanFacts.Key<>("what holds runs", Holds[].class);
  private static final double ROUNDING = 1e-6;

  /**
   * One hold.
   *
   * @param way how far along the run, in millimetres
   * @param sure false if the run may pass its stud elsewhere
   * @param strap true for a strap
   */
  record Hold(double way, double tolerance, boolean sure, boolean strap) {}

  static Holds of(PlanFacts facts, int run) {
    return facts.keep(KEY, Holds::find)[facts.runIndex(run)];
  }

  private static Holds[] find(PlanFacts facts) {
    Holds[] found = new Holds[facts.plan().runs().size()];
    for (int index = 0; index < found.length; index++) {
      found[index] = find(facts, index);
    }
    return found;
  }

  private static Holds find(PlanFacts facts, int index) {
    double length = facts.geometry().paths().length(index);
    List<Amount> straps = facts.plan().runs().get(index).build().supports();
    List<Hold> all = new ArrayList<>();
    int beyond = 0;
    if (!Double.isNaN(length)) {
      all.add(new Hold(0, 0, true, false));
      double ofLength = facts.geometry().paths().lengthTolerance(index);
      all.add(new Hold(length, ofLength, true, false));
      int number = 0;
      for (Amount strap : straps == null ? List.<Amount>of() : straps) {
        number++;
        double tolerance = tolerance(facts, strap);
        double past = strap.millimetres() - length;
        beyond = beyond == 0 && past > ofLength + tolerance + ROUNDING ? number : beyond;
        all.add(new Hold(Math.min(strap.millimetres(), length), tolerance, true, true));
      }
      for (StudPass pass : facts.geometry().runs().passes(index)) {
        if (pass.inHole() != Certainty.NO) {
          boolean sure = pass.passes() == Certainty.YES && pass.inHole() == Certainty.YES;
          all.add(new Hold(pass.way(), ofLength, sure, false));
        }
      }
      all.sort(Comparator.comparingDouble(Hold::way));
    }
    return new Holds(List.copyOf(all), straps != null, beyond);
  }

  private static double tolerance(PlanFacts facts, Amount strap) {
    Amount trade = facts.plan().tolerances().electrical();
    return strap.plusMinus() != null || trade == null
        ? strap.siTolerance() * 1000
        : trade.millimetres();
  }

  /**
   * The longest stretch between two neighbours.
   *
   * @param most true for the most that it can be, counting only what certainly holds; false for the
   *     least
   */
  double longest(boolean most) {
    return most ? longestAtMost() : longestAtLeast();
  }

  private double longestAtMost() {
    double longest = 0;
    Hold before = all.get(0);
    for (int i = 1; i < all.size(); i++) {
      Hold hold = all.get(i);
      if (hold.sure()) {
        double off = before.tolerance() + hold.tolerance();
        longest = Math.max(longest, hold.way() - before.way() + off);
        before = hold;
      }
    }
    return longest;
  }

  /** Between all that stand before a stretch, wherever they are, and all that stand after it. */
  private double longestAtLeast() {
    double[] first = new double[all.size()]; // the nearest that what is from here on can be
    double next = Double.POSITIVE_INFINITY;
    for (int i = all.size() - 1; i >= 0; i--) {
      next = Math.min(next, all.get(i).way() - all.get(i).tolerance());
      first[i] = next;
    }
    double longest = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i + 1 < all.size(); i++) {
      last = Math.max(last, all.get(i).way() + all.get(i).tolerance());
      longest = Math.max(longest, first[i + 1] - last);
    }
    return longest;
  }

  /** Where the longest stretch starts and ends, as drawn, by what certainly holds. */
  double[] longestStretch() {
    double[] stretch = {0, 0};
    Hold before = all.get(0);
    for (Hold hold : all) {
      if (hold.sure()) {
        if (hold.way() - before.way() > stretch[1] - stretch[0]) {
          stretch[0] = before.way();
          stretch[1] = hold.way();
        }
        before = hold;
      }
    }
    return stretch;
  }

  /** How many straps. */
  long straps() {
    return all.stream().filter(Hold::strap).count();
  }

  /** How many studs certainly hold it. */
  long studs() {
    return all.stream().filter(hold -> hold.sure() && !hold.strap()).count() - 2;
  }
}
