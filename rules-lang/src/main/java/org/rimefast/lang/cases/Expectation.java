package org.rimefast.lang.cases;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * What must come out of a case.
 *
 * @param rule the id of the rule that must say so; without one, the rule of the case, or in a case
 *     of every rule each rule that no other expectation names
 * @param outcome what it must say
 * @param elements of which elements: ids, names of faces, or {@code room}. Empty for {@link
 *     Outcome#NOTHING}; for {@link Outcome#MET}, empty means that one element at least must be met
 * @param want for what want it is undecided; any if empty
 * @param written the expectation as it is written, on one line
 * @param span where it stands
 */
public record Expectation(
    Optional<String> rule,
    Outcome outcome,
    List<String> elements,
    Optional<Want> want,
    String written,
    Span span) {
  /** Copies the list. */
  public Expectation {
    elements = List.copyOf(elements);
  }

  /** What a rule can be expected to say. */
  public enum Outcome {
    MET("met"),
    BROKEN("broken"),
    UNDECIDED("undecided"),
    ERROR("error"),
    /** The rule does not speak of these elements. */
    NOT_APPLICABLE("not applicable"),
    /** The rule speaks of no element of the plan. */
    NOTHING("nothing");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** The words that cases use. */
    public String words() {
      return words;
    }
  }

  /**
   * Why nothing can be decided.
   *
   * @param value the value that is missing, in words: {@code depth}; empty if none is, and the
   *     limit lies within the plan's tolerance
   * @param element whose value it is; any if empty
   */
  public record Want(Optional<String> value, Optional<String> element) {}
}
