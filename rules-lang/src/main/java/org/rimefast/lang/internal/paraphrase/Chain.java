package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;

/**
 * A condition as one clause might say it: quantified nouns, perhaps {@code not}, further quantified
 * nouns, and what is asked of them.
 *
 * @param outer the nouns outside the {@code not}, the first outermost
 * @param not whether a {@code not} stands there
 * @param inner the nouns inside it; empty if there is no {@code not}
 * @param core what is asked
 */
record Chain(List<Quantified> outer, boolean not, List<Quantified> inner, Condition core) {

  static Chain of(Condition condition) {
    List<Quantified> outer = new ArrayList<>();
    Condition core = peeled(condition, outer);
    if (!(core instanceof Condition.Not negation)) {
      return new Chain(outer, false, List.of(), core);
    }
    List<Quantified> inner = new ArrayList<>();
    Condition denied = peeled(negation.part(), inner);
    return new Chain(outer, true, inner, denied);
  }

  private static Condition peeled(Condition condition, List<Quantified> openings) {
    Condition core = condition;
    while (core instanceof Quantified quantified) {
      openings.add(quantified);
      core = quantified.body();
    }
    return core;
  }

  /** The core without the nouns around it. */
  Chain alone() {
    return new Chain(List.of(), false, List.of(), core);
  }

  /** True if the core is a plain clause. */
  boolean isClause() {
    return core instanceof Condition.Holds
        || core instanceof Condition.IsA
        || core instanceof Condition.Same
        || core instanceof Condition.Compare;
  }

  /** True if a {@code not} in the middle of the clause leaves no doubt what it denies. */
  boolean isPlainlyDenied() {
    return outer.stream().noneMatch(q -> q.quantifier() == Quantifier.NO)
        && inner.stream().allMatch(q -> q.quantifier() == Quantifier.SOME);
  }
}
