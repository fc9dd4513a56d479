package org.rimefast.lang.rule;

import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * One rule of a standard, or one inspect item: a rule whose requirement is an answer.
 *
 * @param id its name in findings and waivers, unique in the standard
 * @param title one line for people
 * @param subject stands for each element that the rule speaks of
 * @param where which elements it speaks of; all of the subject's kind if empty. An element for
 *     which this is false is not applicable
 * @param onlyIf when it asks anything of them ({@code if}, {@code unless}); always if empty. False
 *     means not applicable
 * @param requirement what must hold of each; {@code must not} is a {@link Condition.Not}
 * @param severity how much it matters
 * @param stage from when it is due; one of the vocabulary's stages
 * @param because why
 * @param source where it comes from: a clause, {@code common practice, no source}, or {@code from
 *     memory}
 * @param sentence the rule's sentence in the words it is written in, on one line, without comments
 *     and spaced the same however it was laid out
 * @param sentenceSpan where the sentence stands
 * @param question what an inspect item asks; empty for a rule
 * @param span the whole rule
 */
public record Rule(
    String id,
    String title,
    Variable subject,
    Optional<Condition> where,
    Optional<Condition> onlyIf,
    Condition requirement,
    Severity severity,
    String stage,
    String because,
    String source,
    String sentence,
    Span sentenceSpan,
    Optional<Question> question,
    Span span) {

  /** A rule that asks nothing on site. */
  public Rule(
      String id,
      String title,
      Variable subject,
      Optional<Condition> where,
      Optional<Condition> onlyIf,
      Condition requirement,
      Severity severity,
      String stage,
      String because,
      String source,
      String sentence,
      Span sentenceSpan,
      Span span) {
    this(
        id,
        title,
        subject,
        where,
        onlyIf,
        requirement,
        severity,
        stage,
        because,
        source,
        sentence,
        sentenceSpan,
        Optional.empty(),
        span);
  }
}
