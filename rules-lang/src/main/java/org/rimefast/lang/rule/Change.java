package org.rimefast.lang.rule;

import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * What a standard made of a rule of the standard that it builds on, or that it added one.
 *
 * @param kind what was changed
 * @param standard name of the standard that changed it
 * @param edition its edition
 * @param text the amendment in its author's words, on one line: {@code in rule box-in-outer-bay,
 *     foam behind a box is 60 mm}
 * @param before what was: {@code foam behind a box: 2 in}; empty for what was not there
 * @param after what is: {@code foam behind a box: 60 mm}; empty for what is no more
 * @param because why
 * @param source where it comes from
 * @param effect what that does to the rule
 * @param span the amendment; the rule itself where it was added
 */
public record Change(
    Kind kind,
    String standard,
    String edition,
    String text,
    String before,
    String after,
    String because,
    Optional<String> source,
    Effect effect,
    Span span) {

  /** What was changed. */
  public enum Kind {
    /** The rule is a new one. */
    ADDED,
    /** A constant has another value in this rule. */
    CONSTANT,
    /** A number in the sentence is another one. */
    LIMIT,
    SEVERITY,
    STAGE,
    /** Some elements are left out. */
    EXCEPTION,
    /** The rule is taken out. */
    WITHDRAWN
  }

  /** What a change does, whatever the plan. It is worked out from the rule, never declared. */
  public enum Effect {
    /** What was broken stays broken; what was not may now be. */
    STRICTER,
    /** What was not broken stays so; what was broken may now not be. */
    LOOSER,
    /** It asks the same as before. */
    UNCHANGED,
    /** It asks something else: some elements may now be broken, others no more. */
    NEITHER,
    /** Which of these it is cannot be told from the rule alone. */
    UNPROVED
  }
}
