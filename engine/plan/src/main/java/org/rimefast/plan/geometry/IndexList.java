package org.rimefast.plan.geometry;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** A growing list of indexes. */
final class IndexList implements IntConsumer {
  private int[] indexes = new int[16];
  private int size;

  @Override
  public void accept(int index) {
    if (size == indexes.length) {
      indexes = Arrays.copyOf(indexes, 2 * size);
    }
    indexes[size++] = index;
  }

  /** Empties the list. */
  void clear() {
    size = 0;
  }

  /** Puts in place of each index what {@code by} has for it, and drops one value. */
  void replace(int[] by, int dropped) {
    int kept = 0;
    for (int i = 0; i < size; i++) {
      int value = by[indexes[i]];
      if (value != dropped) {
        indexes[kept++] = value;
      }
    }
    size = kept;
  }

  int[] toArray() {
    return Arrays.copyOf(indexes, size);
  }

  /** Reports each index once, in increasing order. */
  void inOrder(IntConsumer found) {
    Arrays.sort(indexes, 0, size);
    for (int i = 0; i < size; i++) {
      if (i == 0 || indexes[i] != indexes[i - 1]) {
        found.accept(indexes[i]);
      }
    }
  }
}
