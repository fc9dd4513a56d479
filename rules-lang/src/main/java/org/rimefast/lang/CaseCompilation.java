package org.rimefast.lang;

import java.util.List;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * What came of compiling a text of cases.
 *
 * @param source the text
 * @param cases its cases, in the order written; empty if any diagnostic is an error
 * @param diagnostics everything found, in the order of the text
 */
public record CaseCompilation(SourceText source, List<Case> cases, List<Diagnostic> diagnostics) {
  /** Copies the lists. */
  public CaseCompilation {
    cases = List.copyOf(cases);
    diagnostics = List.copyOf(diagnostics);
  }

  /** True if nothing stops the cases from being used. */
  public boolean isUsable() {
    return diagnostics.stream().noneMatch(d -> d.level() == Diagnostic.Level.ERROR);
  }
}
