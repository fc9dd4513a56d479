package org.rimefast.check.internal.hot;

import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Condition;

/** What a count of certain and possible elements says of a quantifier. */
final class Quantifiers {
  /** More than any rule counts, and few enough to add up. */
  static final int MANY = 1_000_000;

  private Quantifiers() {}

  /** True if those elements are counted that do not meet the condition. */
  static boolean countsExceptions(Condition.Quantified.Quantifier quantifier) {
    return quantifier == Condition.Quantified.Quantifier.EACH
        || quantifier == Condition.Quantified.Quantifier.ALL_BUT;
  }

  /**
   * Decides.
   *
   * @param certain how many certainly count; where exceptions are counted, certainly are one
   * @param possible how many may count, the certain ones among them
   */
  static Truth decide(
      Condition.Quantified.Quantifier quantifier, int number, int certain, int possible) {
    return switch (quantifier) {
      case EACH, NO -> atLeast(1, certain, possible).not();
      case SOME -> atLeast(1, certain, possible);
      case AT_LEAST -> atLeast(number, certain, possible);
      case AT_MOST -> atLeast(number + 1, certain, possible).not();
      case ALL_BUT -> atLeast(number + 1, certain, possible).not();
      case EXACTLY ->
          atLeast(number, certain, possible).and(atLeast(number + 1, certain, possible).not());
    };
  }

  private static Truth atLeast(int number, int certain, int possible) {
    if (certain >= number) {
      return Truth.TRUE;
    }
    return possible < number ? Truth.FALSE : Truth.UNKNOWN;
  }
}
