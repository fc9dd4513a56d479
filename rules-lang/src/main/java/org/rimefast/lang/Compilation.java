package org.rimefast.lang;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * What came of compiling one text.
 *
 * @param source the text, with those that it includes and builds on; the standard's own is first
 * @param standard the typed standard; empty if any diagnostic is an error
 * @param diagnostics everything found, in the order of the text
 * @param pins for each amendment of the standard itself whose rule is there, what it says of it
 */
public record Compilation(
    SourceText source, Optional<Standard> standard, List<Diagnostic> diagnostics, List<Pin> pins) {
  /** Copies the lists. */
  public Compilation {
    diagnostics = List.copyOf(diagnostics);
    pins = List.copyOf(pins);
  }

  /** Of a text without amendments. */
  public Compilation(SourceText source, Optional<Standard> standard, List<Diagnostic> diagnostics) {
    this(source, standard, diagnostics, List.of());
  }
}
