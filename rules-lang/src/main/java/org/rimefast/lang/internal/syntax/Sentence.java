package org.rimefast.lang.internal.syntax;

import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * The sentence of a rule.
 *
 * @param forEach true if it begins with {@code for}
 * @param subject the words of its noun, with {@code each} if that was written
 * @param where which elements it speaks of
 * @param clauseSubject what stands between the comma and {@code must}, after {@code for}
 * @param must the word {@code must}
 * @param not true for {@code must not}
 * @param predicate what stands after {@code must}
 * @param guard when it asks anything
 * @param span the whole sentence
 */
public record Sentence(
    boolean forEach,
    Phrase subject,
    Optional<Clause> where,
    Optional<Operand> clauseSubject,
    Word must,
    boolean not,
    Clause predicate,
    Optional<Guard> guard,
    Span span) {

  /** {@code if} or {@code unless} and a condition. */
  public record Guard(Word key, Clause condition) {
    /** True for {@code unless}. */
    public boolean isUnless() {
      return key.text().equals("unless");
    }
  }
}
