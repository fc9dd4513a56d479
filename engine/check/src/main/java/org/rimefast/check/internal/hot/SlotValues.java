package org.rimefast.check.internal.hot;

import org.rimefast.check.Arguments;
import org.rimefast.check.Reading;

/** The values at a word's slots, used again for each element. */
final class SlotValues implements Arguments {
  final int[] handles;
  final Reading[] numbers;

  SlotValues(int count) {
    handles = new int[count];
    numbers = new Reading[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = new Reading();
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
}
