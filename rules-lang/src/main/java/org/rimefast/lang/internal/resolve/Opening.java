package org.rimefast.lang.internal.resolve;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;

/** A quantified noun that was met in a phrase, before what is asked of it is known. */
public record Opening(
    Quantifier quantifier,
    int number,
    Variable variable,
    boolean others,
    Optional<Condition> where,
    boolean plural,
    Span span) {

  /** The condition that {@code body} holds for as many as said. */
  public Condition around(Condition body, Span whole) {
    return new Condition.Quantified(quantifier, number, variable, others, where, body, whole);
  }

  /** The condition inside all openings, the first outermost. */
  public static Condition wrap(List<Opening> openings, Condition body, Span whole) {
    Condition wrapped = body;
    for (int i = openings.size() - 1; i >= 0; i--) {
      wrapped = openings.get(i).around(wrapped, whole);
    }
    return wrapped;
  }
}
