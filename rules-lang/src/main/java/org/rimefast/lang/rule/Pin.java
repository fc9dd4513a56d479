package org.rimefast.lang.rule;

import org.rimefast.lang.source.Span;

/**
 * What an amendment says of the rule that it was written for, beside what that rule is now. Writing
 * {@code line} at {@code place} accepts the rule as it is.
 *
 * @param rule the rule's id
 * @param amendment the amendment in its author's words, on one line
 * @param state how the two go together
 * @param before the rule as the amendment has it; empty if it says nothing
 * @param after the rule as it is
 * @param place what is to be replaced; empty, at the place of insertion, if nothing is said yet
 * @param line what belongs there, with the white space around it
 */
public record Pin(
    String rule,
    String amendment,
    State state,
    String before,
    String after,
    Span place,
    String line) {

  /** How an amendment and its rule go together. */
  public enum State {
    /** The amendment says nothing of the rule. */
    MISSING,
    /** The rule is not as it was. */
    CHANGED,
    /** The rule means the same, but is written in other words or in another edition. */
    REWORDED,
    /** The rule is as it was. */
    CURRENT
  }
}
