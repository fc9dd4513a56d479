package org.rimefast.bench;

import java.util.function.IntConsumer;
import org.rimefast.check.PlanFacts;

/** Collects neighbours without new memory, for the hand-written rule. */
final class Neighbours implements IntConsumer {
  private final int[] found;
  private final int[] unplaced;
  private final double widestTolerance;
  private int count;

  Neighbours(PlanFacts facts) {
    int parts = facts.plan().parts().size();
    found = new int[2 * parts];
    int[] without = new int[parts];
    int none = 0;
    double widest = 0;
    for (int i = 0; i < parts; i++) {
      if (facts.geometry().cuboid(i) == null) {
        without[none++] = i;
      } else {
        widest = Math.max(widest, facts.geometry().positionTolerance(i));
      }
    }
    unplaced = java.util.Arrays.copyOf(without, none);
    widestTolerance = widest;
  }

  double widestTolerance() {
    return widestTolerance;
  }

  void start() {
    count = 0;
    for (int i : unplaced) {
      accept(i);
    }
  }

  void all() {
    count = 0;
    for (int i = 0; i < found.length / 2; i++) {
      accept(i);
    }
  }

  @Override
  public void accept(int index) {
    found[count++] = index;
  }

  int count() {
    return count;
  }

  int get(int i) {
    return found[i];
  }
}
