package org.rimefast.lang.cases;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * An example: a plan, and what rules must say of it.
 *
 * @param name what it shows, in words; unique among the cases of its text
 * @param rule the id of the rule that it looks at; every rule of the standard if empty
 * @param plan the plan to start from
 * @param edits what is changed in the plan, in this order
 * @param expectations what must come out; what is not expected must not be broken, undecided or in
 *     error. There is at least one
 * @param file the name of the text it stands in
 * @param line the line it begins in, from 1
 * @param span the whole case
 */
public record Case(
    String name,
    Optional<String> rule,
    CasePlan plan,
    List<CaseEdit> edits,
    List<Expectation> expectations,
    String file,
    int line,
    Span span) {
  /** Copies the lists. */
  public Case {
    edits = List.copyOf(edits);
    expectations = List.copyOf(expectations);
  }
}
