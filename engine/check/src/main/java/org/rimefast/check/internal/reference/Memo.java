package org.rimefast.check.internal.reference;

import java.util.IdentityHashMap;
import java.util.Map;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Condition;

/** What one evaluator has worked out and will need again. For one thread. */
final class Memo {
  private final Map<Condition, Counted> counted = new IdentityHashMap<>();

  /** Of which elements a condition is not false, and how many of them there are. */
  record Counted(boolean[] elements, int all) {}

  /** Who meets or may meet a condition that speaks of nothing but the element it is asked of. */
  Counted counts(Condition where, Condition.Quantified quantified, Scope scope) {
    Counted known = counted.get(where);
    if (known == null) {
      PlanFacts facts = scope.facts();
      boolean[] elements = new boolean[facts.size()];
      int all = 0;
      for (int handle : facts.members(quantified.variable().noun())) {
        Scope inner = scope.with(quantified.variable(), handle);
        elements[handle] =
            new ConditionExplainer(inner, true).explain(where).truth() != Truth.FALSE;
        all += elements[handle] ? 1 : 0;
      }
      known = new Counted(elements, all);
      counted.put(where, known);
    }
    return known;
  }
}
