package org.rimefast.check.internal.hot;

import org.rimefast.check.HandleList;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.vocabulary.Noun;

/** Relations and quantifiers. */
final class Relations {
  private Relations() {}

  record Holds(Word.TruthFunction function, Nodes.Find subject, Nodes.Fill[] fills, int slots)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int element = subject.find(frame);
      SlotValues values = frame.slots[slots];
      if (element < 0 || !Elements.fill(frame, element, fills, values)) {
        return Truth.UNKNOWN;
      }
      return function.decide(frame.facts, element, values);
    }
  }

  record IsA(Nodes.Find subject, Noun noun) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int element = subject.find(frame);
      return element < 0 ? Truth.UNKNOWN : Truth.of(frame.facts.isMember(noun, element));
    }
  }

  record Same(Nodes.Find left, Nodes.Find right) implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int a = left.find(frame);
      int b = right.find(frame);
      return a < 0 || b < 0 ? Truth.UNKNOWN : Truth.of(a == b);
    }
  }

  /**
   * Whether an element is of a kind that the standard defines.
   *
   * @param own where the condition's own element stands in a frame
   */
  record IsOfTerm(Nodes.Find subject, Noun noun, int own, Nodes.Test condition)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      int element = subject.find(frame);
      if (element < 0) {
        return Truth.UNKNOWN;
      }
      if (!frame.facts.isMember(noun, element)) {
        return Truth.FALSE;
      }
      frame.elements[own] = element;
      return condition.test(frame);
    }
  }

  /**
   * How many elements meet a condition.
   *
   * @param besides where the element stands that does not count; -1 if all do
   */
  record Quantified(
      Condition.Quantified.Quantifier quantifier,
      int number,
      Noun noun,
      int variable,
      int besides,
      Nodes.Test where,
      Nodes.Test body,
      @org.jspecify.annotations.Nullable Candidates candidates)
      implements Nodes.Test {
    @Override
    public Truth test(Frame frame) {
      boolean failedBefore = frame.failed;
      HandleList few = candidates == null ? null : candidates.find(frame);
      int[] members = frame.facts.members(noun);
      int count = few == null ? members.length : few.size();
      int certain = 0;
      int possible = 0;
      boolean anyFailed = failedBefore;
      for (int i = 0; i < count; i++) {
        int handle = few == null ? members[i] : few.get(i);
        if ((besides >= 0 && handle == frame.elements[besides])
            || (few != null && !frame.facts.isMember(noun, handle))) {
          continue;
        }
        frame.elements[variable] = handle;
        frame.failed = false;
        Truth truth = one(frame);
        anyFailed |= frame.failed;
        certain += truth == Truth.TRUE ? 1 : 0;
        if (truth != Truth.FALSE) {
          possible += frame.facts.standsForMany(handle) ? Quantifiers.MANY : 1;
        }
        if (isDecided(certain)) {
          break;
        }
      }
      Truth result = Quantifiers.decide(quantifier, number, certain, possible);
      frame.failed = result == Truth.UNKNOWN ? anyFailed : failedBefore;
      return result;
    }

    /**
     * For EACH and ALL_BUT the exceptions are counted: elements that count and do not meet the
     * body.
     */
    private Truth one(Frame frame) {
      Truth counts = where.test(frame);
      if (counts == Truth.FALSE) {
        frame.failed = false;
        return Truth.FALSE;
      }
      Truth meets = body.test(frame);
      Truth wanted = counts.and(Quantifiers.countsExceptions(quantifier) ? meets.not() : meets);
      frame.failed &= wanted == Truth.UNKNOWN;
      return wanted;
    }

    private boolean isDecided(int certain) {
      return switch (quantifier) {
        case EACH, SOME, NO -> certain > 0;
        case AT_LEAST -> certain >= number;
        case AT_MOST, EXACTLY, ALL_BUT -> certain > number;
      };
    }
  }
}
