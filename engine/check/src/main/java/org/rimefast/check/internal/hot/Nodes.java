package org.rimefast.check.internal.hot;

import org.rimefast.check.Reading;
import org.rimefast.check.Truth;

/** What the nodes of the hot pass do. */
final class Nodes {
  private Nodes() {}

  /** Tells whether a condition holds. */
  interface Test {
    Truth test(Frame frame);
  }

  /** Reads a number. */
  interface Read {
    void read(Frame frame, Reading into);
  }

  /** Finds an element: its handle, or -1 if the plan does not say. */
  interface Find {
    int find(Frame frame);
  }

  /** Tells a word's place in its list, or -1 if the plan does not say. */
  interface Choose {
    int choose(Frame frame);
  }

  /** Puts the value of one slot in its place; false if the plan does not give it. */
  interface Fill {
    boolean fill(Frame frame, SlotValues values, int slot);
  }
}
