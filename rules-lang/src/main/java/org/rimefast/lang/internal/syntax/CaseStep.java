package org.rimefast.lang.internal.syntax;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.source.Span;

/** One line of a case. */
public sealed interface CaseStep {
  /** {@code plan "small.json"}. */
  record Plan(Word text, boolean inline, Span span) implements CaseStep {}

  /** {@code set}, {@code remove} or {@code add}. */
  record Edit(CaseEdit edit) implements CaseStep {}

  /** {@code expect ...}. */
  record Expect(
      Optional<Word> rule,
      Expectation.Outcome outcome,
      List<Word> elements,
      Optional<Expectation.Want> want,
      String written,
      Span span)
      implements CaseStep {
    /** Copies the list. */
    public Expect {
      elements = List.copyOf(elements);
    }
  }
}
