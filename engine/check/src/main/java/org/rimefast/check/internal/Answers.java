package org.rimefast.check.internal;

import org.rimefast.lang.rule.Question;
import org.rimefast.plan.Amount;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/** What both evaluators need to know of values that were read on site. */
public final class Answers {
  private Answers() {}

  /** True if a value can be held against a limit: a length against a length. */
  public static boolean isComparable(Question.Limit limit, Amount value) {
    Dimension wanted = limit.type().dimension();
    // A number in kelvin is a difference unless a temperature is called for.
    return value.value().dimension().equals(wanted)
        || (wanted.equals(Dimension.TEMPERATURE) && value.value().unit().equals(Units.KELVIN));
  }
}
