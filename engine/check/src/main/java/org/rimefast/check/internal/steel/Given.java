package org.rimefast.check.internal.steel;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.plan.Amount;

/** Values that stand in the plan as they are. */
final class Given {
  private Given() {}

  /** Reads a value with its own tolerance. */
  static void read(@Nullable Amount amount, Reading reading) {
    if (amount == null) {
      reading.missing();
      return;
    }
    reading.around(amount.si(), amount.siTolerance());
  }

  /** Reads a value with its own tolerance, else that of its trade. */
  static void read(@Nullable Amount amount, @Nullable Amount trade, Reading reading) {
    if (amount == null || amount.plusMinus() != null || trade == null) {
      read(amount, reading);
    } else {
      reading.around(amount.si(), trade.si());
    }
  }

  /** Reads a length that is known in millimetres without tolerance; NaN if it is not given. */
  static void read(double millimetres, Reading reading) {
    reading.exactly(millimetres / 1000);
  }

  /** Says that a field of an element is missing, if it is. */
  static void explain(
      PlanFacts facts, int handle, @Nullable Object value, String field, Explanation explanation) {
    if (value == null) {
      explanation.missing(facts.missing(handle, field));
    }
  }
}
