package org.rimefast.check.internal.hot;

import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;

/** Comparisons. */
final class Compares {
  private Compares() {}

  record Numbers(
      Nodes.Read left, Comparison comparison, Nodes.Read right, int leftSlot, int rightSlot)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      Reading a = frame.readings[leftSlot];
      Reading b = frame.readings[rightSlot];
      left.read(frame, a);
      right.read(frame, b);
      if (a.isPresent() && b.isPresent()) {
        return Intervals.compare(comparison, a.least(), a.most(), b.least(), b.most());
      }
      frame.failed |= a.isFailed() || b.isFailed();
      return Truth.UNKNOWN;
    }
  }

  /** The most frequent comparison, spared the reading of its limit. */
  record ToLimit(Nodes.Read left, Comparison comparison, double limit, int slot)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      Reading reading = frame.readings[slot];
      left.read(frame, reading);
      if (reading.isPresent()) {
        return Intervals.compare(comparison, reading.least(), reading.most(), limit, limit);
      }
      frame.failed |= reading.isFailed();
      return Truth.UNKNOWN;
    }
  }

  record Words(Nodes.Choose left, Nodes.Choose right, boolean equal) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int a = left.choose(frame);
      int b = right.choose(frame);
      return a < 0 || b < 0 ? Truth.UNKNOWN : Truth.of((a == b) == equal);
    }
  }
}
