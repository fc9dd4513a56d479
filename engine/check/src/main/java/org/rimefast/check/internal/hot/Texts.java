package org.rimefast.check.internal.hot;

import java.util.Optional;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;

/** Nodes for free text. */
final class Texts {
  private Texts() {}

  /** Tells a text, or empty if the plan does not say. */
  interface Tell {
    Optional<String> tell(Frame frame);
  }

  record Property(Word.TextFunction function, Nodes.Find owner, Nodes.Fill[] fills, int slots)
      implements Tell {
    @Override
    public Optional<String> tell(Frame frame) {
      int element = owner.find(frame);
      SlotValues values = frame.slots[slots];
      return element < 0 || !Elements.fill(frame, element, fills, values)
          ? Optional.empty()
          : function.tell(frame.facts, element, values);
    }
  }

  record Compared(Tell left, Tell right, boolean equal) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      Optional<String> a = left.tell(frame);
      Optional<String> b = right.tell(frame);
      return a.isEmpty() || b.isEmpty()
          ? Truth.UNKNOWN
          : Truth.of(a.get().equals(b.get()) == equal);
    }
  }
}
