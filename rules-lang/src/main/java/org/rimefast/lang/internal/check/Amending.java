package org.rimefast.lang.internal.check;

import java.util.Map;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;

/**
 * What an amendment makes of a rule.
 *
 * @param rule the rule as it is now; its spans are not those of the standard's text yet
 * @param own constants that have another value in this rule
 * @param kind what was changed
 * @param what the same, to tell whether it is changed twice
 * @param before what was
 * @param after what is
 * @param effect what that does
 */
record Amending(
    Rule rule,
    Map<String, Constant> own,
    Change.Kind kind,
    String what,
    String before,
    String after,
    Change.Effect effect) {
  Amending {
    own = Map.copyOf(own);
  }
}
