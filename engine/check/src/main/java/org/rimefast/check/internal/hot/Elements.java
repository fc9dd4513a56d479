package org.rimefast.check.internal.hot;

import org.rimefast.check.Reading;
import org.rimefast.check.Stretches;
import org.rimefast.check.Word;

/** Nodes that find elements and fill slots. */
final class Elements {
  private Elements() {}

  /**
   * Fills the slots of a word that is said of {@code subject}; false as soon as the plan does not
   * give one.
   */
  static boolean fill(Frame frame, int subject, Nodes.Fill[] fills, SlotValues values) {
    return fillBut(frame, subject, fills, values, -1);
  }

  /** The same, but for one slot. */
  static boolean fillBut(Frame frame, int subject, Nodes.Fill[] fills, SlotValues values, int but) {
    values.subject = subject;
    for (int slot = 0; slot < fills.length; slot++) {
      if (slot != but && !fills[slot].fill(frame, values, slot)) {
        return false;
      }
    }
    return true;
  }

  record Variable(int index) implements Nodes.Find {
    @Override
    public int find(Frame frame) {
      return frame.elements[index];
    }
  }

  record Linked(Word.LinkFunction function, Nodes.Find owner) implements Nodes.Find {
    @Override
    public int find(Frame frame) {
      int element = owner.find(frame);
      return element < 0 ? -1 : function.find(frame.facts, element);
    }
  }

  record FillElement(Nodes.Find element) implements Nodes.Fill {
    @Override
    public boolean fill(Frame frame, SlotValues values, int slot) {
      values.handles[slot] = element.find(frame);
      return values.handles[slot] >= 0;
    }
  }

  record FillWord(Nodes.Choose word) implements Nodes.Fill {
    @Override
    public boolean fill(Frame frame, SlotValues values, int slot) {
      values.handles[slot] = word.choose(frame);
      return values.handles[slot] >= 0;
    }
  }

  record FillStretches(Word.StretchFunction function, Nodes.Fill[] fills, int slots)
      implements Nodes.Fill {
    @Override
    public boolean fill(Frame frame, SlotValues values, int slot) {
      SlotValues own = frame.slots[slots];
      if (!Elements.fill(frame, values.subject, fills, own)) {
        return false;
      }
      Stretches found = values.stretches[slot];
      found.clear();
      function.find(frame.facts, values.subject, own, found);
      return found.isKnown();
    }
  }

  record FillNumber(Nodes.Read number) implements Nodes.Fill {
    @Override
    public boolean fill(Frame frame, SlotValues values, int slot) {
      Reading reading = values.numbers[slot];
      number.read(frame, reading);
      frame.failed |= reading.isFailed();
      return reading.isPresent();
    }
  }

  record FixedWord(int place) implements Nodes.Choose {
    @Override
    public int choose(Frame frame) {
      return place;
    }
  }

  record ChosenWord(Word.ChoiceFunction function, Nodes.Find owner, Nodes.Fill[] fills, int slots)
      implements Nodes.Choose {
    @Override
    public int choose(Frame frame) {
      int element = owner.find(frame);
      SlotValues values = frame.slots[slots];
      return element < 0 || !fill(frame, element, fills, values)
          ? -1
          : function.choose(frame.facts, element, values);
    }
  }
}
