package org.rimefast.lang;

import java.util.List;
import org.rimefast.lang.source.Diagnostic;

/**
 * What came of formatting one text.
 *
 * @param text the text, laid out anew
 * @param diagnostics why statements were left as they stand, in the order of the text; empty if all
 *     were laid out
 */
public record Formatting(String text, List<Diagnostic> diagnostics) {
  /** Copies the list. */
  public Formatting {
    diagnostics = List.copyOf(diagnostics);
  }
}
