package org.rimefast.check.internal.hot;

import org.rimefast.check.Arguments;
import org.rimefast.check.Reading;
import org.rimefast.check.Stretches;

/** The values at a word's slots, used again for each element. */
final class SlotValues implements Arguments {
  final int[] handles;
  final Reading[] numbers;
  final Stretches[] stretches;

  /** The element that the word is said of. */
  int subject;

  SlotValues(int count) {
    handles = new int[count];
    numbers = new Reading[count];
    stretches = new Stretches[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = new Reading();
      stretches[i] = new Stretches();
    }
  }

  @Override
  public int element(int slot) {
    return handles[slot];
  }

  @Override
  public Reading number(int slot) {
    return numbers[slot];
  }

  @Override
  public int word(int slot) {
    return handles[slot];
  }

  @Override
  public Stretches stretches(int slot) {
    return stretches[slot];
  }
}
