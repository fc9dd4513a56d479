package org.rimefast.check.internal.hot;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.Relation;

/** Finds out of which quantified conditions an index spares asking every element. */
final class Sparing {
  private Sparing() {}

  /**
   * The relation whose index names the elements that are worth asking; empty if all must be asked.
   * Only a relation that must hold for the body to hold can spare the others; for EACH and ALL_BUT,
   * those that do not meet the body are the ones that count.
   */
  static Optional<Condition.Holds> relation(Words words, Condition.Quantified quantified) {
    if (Quantifiers.countsExceptions(quantified.quantifier())) {
      return Optional.empty();
    }
    int index = quantified.variable().index();
    Condition body = quantified.body();
    List<Condition> needed = body instanceof Condition.And and ? and.parts() : List.of(body);
    for (Condition part : needed) {
      if (part instanceof Condition.Holds holds
          && !holds.arguments().isEmpty()
          && isVariable(holds.arguments().get(0), index)
          && !names(holds.subject(), index)
          && holds.arguments().stream().skip(1).noneMatch(other -> mayName(other, index))
          && candidates(words, holds.relation()).isPresent()) {
        return Optional.of(holds);
      }
    }
    return Optional.empty();
  }

  /** The index of a relation. */
  static Optional<Word.CandidateFunction> candidates(Words words, Relation relation) {
    return words.relation(relation) instanceof Word.RelationWord word
        ? word.candidates()
        : Optional.empty();
  }

  private static boolean isVariable(Argument argument, int index) {
    return argument instanceof Reference.Bound bound && bound.variable().index() == index;
  }

  private static boolean names(Reference reference, int index) {
    return reference instanceof Reference.Linked linked
        ? names(linked.owner(), index)
        : isVariable(reference, index);
  }

  /** Anything but a literal or another element may depend on the variable; then all are asked. */
  private static boolean mayName(Argument argument, int index) {
    return argument instanceof Reference reference
        ? names(reference, index)
        : !(argument instanceof Value.Literal
            || argument instanceof Value.Word
            || argument instanceof Value.Named);
  }
}
