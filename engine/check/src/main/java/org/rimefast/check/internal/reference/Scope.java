package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.rimefast.check.Evidence;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.SourceText;

/**
 * Which element each variable stands for.
 *
 * @param facts the plan
 * @param words what words do
 * @param source the standard's text, to quote from
 * @param observer looks on
 * @param spares true if elements that an index rules out need not be asked
 * @param memo what the evaluator keeps from one element to the next
 * @param elements handles by variable index
 */
record Scope(
    PlanFacts facts,
    Words words,
    SourceText source,
    BiConsumer<Condition, Evidence> observer,
    boolean spares,
    Memo memo,
    List<Integer> elements) {
  Scope {
    elements = List.copyOf(elements);
  }

  /** The same with {@code variable} standing for {@code handle}. */
  Scope with(Variable variable, int handle) {
    List<Integer> next = new ArrayList<>(elements.subList(0, variable.index()));
    next.add(handle);
    return new Scope(facts, words, source, observer, spares, memo, next);
  }

  /** The same with no variable but the first. */
  Scope alone(int element) {
    return new Scope(facts, words, source, observer, spares, memo, List.of(element));
  }

  int element(Variable variable) {
    return elements.get(variable.index());
  }

  /** The rule's own subject. */
  int subject() {
    return elements.get(0);
  }
}
