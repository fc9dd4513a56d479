package org.rimefast.lang.internal.paraphrase;

import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;

/** Words of comparison. */
final class Comparing {
  private Comparing() {}

  /** After {@code is} or {@code be}: {@code at least }; nothing for {@code is} itself. */
  static String afterIs(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> "at least ";
      case MORE_THAN -> "more than ";
      case AT_MOST -> "at most ";
      case LESS_THAN -> "less than ";
      case EQUAL, NOT_EQUAL -> "";
    };
  }

  static boolean isOrder(Comparison comparison) {
    return comparison != Comparison.EQUAL && comparison != Comparison.NOT_EQUAL;
  }

  /** What stands after {@code have}: {@code clearance of at least 2 in}. */
  static String afterHave(ClauseWriter clause, Condition.Compare compare) {
    String left = clause.values().first(compare.left(), true);
    boolean inWords =
        !clause.hasCounted()
            && (compare.left() instanceof Value.Of || compare.left() instanceof Value.Aggregate)
            && (isOrder(compare.comparison())
                || (compare.comparison() == Comparison.EQUAL
                    && compare.right().type() instanceof ValueType.Number));
    String right = clause.values().limit(compare.right(), true);
    if (!inWords) {
      return left + " " + compare.comparison().sign() + " " + right;
    }
    String words =
        compare.comparison() == Comparison.EQUAL ? "exactly " : afterIs(compare.comparison());
    return left + " of " + words + right;
  }
}
