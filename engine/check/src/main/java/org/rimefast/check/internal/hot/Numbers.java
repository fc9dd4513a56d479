package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.HandleList;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Arithmetics;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.Noun;

/** Nodes that read numbers. */
final class Numbers {
  private Numbers() {}

  record Fixed(double value) implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      into.exactly(value);
    }
  }

  record Property(Word.NumberFunction function, Nodes.Find owner, Nodes.Fill[] fills, int slots)
      implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      int element = owner.find(frame);
      SlotValues values = frame.slots[slots];
      if (element < 0 || !Elements.fill(frame, element, fills, values)) {
        into.missing();
        return;
      }
      into.missing(); // a word that says nothing must not leave the last element's number
      function.measure(frame.facts, element, values, into);
    }
  }

  /** A property without slots of the element a variable stands for. */
  record OwnProperty(Word.NumberFunction function, int variable, int slots) implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      into.missing(); // a word that says nothing must not leave the last element's number
      function.measure(frame.facts, frame.elements[variable], frame.slots[slots], into);
    }
  }

  record Arithmetic(Value.Arithmetic.Operator operator, Nodes.Read left, Nodes.Read right, int slot)
      implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      Reading second = frame.readings[slot];
      left.read(frame, into);
      right.read(frame, second);
      Arithmetics.combine(operator, into, second);
    }
  }

  record Aggregate(
      Value.Aggregate.Function function,
      Noun noun,
      int variable,
      Nodes.Test where,
      @Nullable Candidates candidates,
      Nodes.Read of,
      int slot,
      int tally)
      implements Nodes.Read {
    @Override
    public void read(Frame frame, Reading into) {
      boolean failedBefore = frame.failed;
      Reading value = frame.readings[slot];
      Arithmetics.Tally sum = frame.tallies[tally];
      sum.start(function);
      HandleList few = candidates == null ? null : candidates.find(frame);
      int[] members = frame.facts.members(noun);
      if (few != null) {
        few.sort(); // sums depend on their order, to the last bit
      }
      int count = few == null ? members.length : few.size();
      for (int i = 0; i < count; i++) {
        int handle = few == null ? members[i] : few.get(i);
        if (few != null && !frame.facts.isMember(noun, handle)) {
          continue;
        }
        frame.elements[variable] = handle;
        frame.failed = false;
        Truth counts = where.test(frame);
        if (counts != Truth.FALSE) {
          of.read(frame, value);
          if (frame.facts.standsForMany(handle) && Arithmetics.adds(function)) {
            value.missing();
          }
          sum.add(counts, value, frame.failed);
        }
      }
      frame.failed = failedBefore;
      sum.finish(into);
    }
  }
}
