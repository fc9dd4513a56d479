package org.rimefast.lang.rule;

import java.util.List;
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
 * @param changes what standards that build on others made of it, lowest first; empty for a rule
 *     that stands as the standard at the bottom has it
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
    Span span,
    List<Change> changes) {
  /** Copies the list. */
  public Rule {
    changes = List.copyOf(changes);
  }

  /** A rule or inspect item that no standard changed. */
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
      Optional<Question> question,
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
        question,
        span,
        List.of());
  }

  /** A rule that asks nothing on site and that no standard changed. */
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
        span,
        List.of());
  }

  /** The same with other changes. */
  public Rule withChanges(List<Change> others) {
    return copy(severity, stage, others);
  }

  /** The same with another severity. */
  public Rule withSeverity(Severity other) {
    return copy(other, stage, changes);
  }

  /** The same from another stage on. */
  public Rule withStage(String other) {
    return copy(severity, other, changes);
  }

  /** The same with other conditions. */
  public Rule withConditions(
      Optional<Condition> otherWhere, Optional<Condition> otherOnlyIf, Condition otherRequirement) {
    return new Rule(
        id,
        title,
        subject,
        otherWhere,
        otherOnlyIf,
        otherRequirement,
        severity,
        stage,
        because,
        source,
        sentence,
        sentenceSpan,
        question,
        span,
        changes);
  }

  /** True if a standard changed it after another had written it. */
  public boolean isAmended() {
    return changes.stream().anyMatch(change -> change.kind() != Change.Kind.ADDED);
  }

  private Rule copy(Severity otherSeverity, String otherStage, List<Change> otherChanges) {
    return new Rule(
        id,
        title,
        subject,
        where,
        onlyIf,
        requirement,
        otherSeverity,
        otherStage,
        because,
        source,
        sentence,
        sentenceSpan,
        question,
        span,
        otherChanges);
  }
}
