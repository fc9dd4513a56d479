package org.rimefast.lang;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * What came of compiling one text.
 *
 * @param source the text
 * @param standard the typed standard; empty if any diagnostic is an error
 * @param diagnostics everything found, in the order of the text
 */
public record Compilation(
    SourceText source, Optional<Standard> standard, List<Diagnostic> diagnostics) {
  /** Copies the list. */
  public Compilation {
    diagnostics = List.copyOf(diagnostics);
  }
}
