package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/**
 * A noun of the vocabulary, or a term that the standard defines.
 *
 * @param noun the noun; that of the term if it is one
 * @param singular how one is called
 * @param plural how several are called
 * @param term the term, unless its own definition is still being read or comes later
 * @param isTerm true for a term
 */
public record Kind(Noun noun, String singular, String plural, @Nullable Term term, boolean isTerm) {

  static Kind of(Noun noun) {
    return new Kind(noun, noun.singular(), noun.plural(), null, false);
  }

  /** What makes an element of the noun one of these; nothing for a noun. */
  private Optional<Condition> test(Variable variable, Span span) {
    return Optional.ofNullable(term)
        .map(
            known ->
                new Condition.IsA(new Reference.Bound(variable), noun, Optional.of(known), span));
  }

  /**
   * The test and what else is asked, as one condition.
   *
   * @param named where the kind is named
   * @param whole where both stand
   */
  public Optional<Condition> and(
      Optional<Condition> where, Variable variable, Span named, Span whole) {
    Optional<Condition> test = test(variable, named);
    if (test.isEmpty() || where.isEmpty()) {
      return test.or(() -> where);
    }
    List<Condition> both = new ArrayList<>(List.of(test.get()));
    both.add(where.get());
    return Optional.of(new Condition.And(both, whole));
  }

  @Override
  public String toString() {
    return singular;
  }
}
