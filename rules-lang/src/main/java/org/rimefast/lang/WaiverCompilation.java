package org.rimefast.lang;

import java.util.List;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * What came of compiling a file of waivers.
 *
 * @param source the text
 * @param title one line for people; may be empty
 * @param waivers the typed waivers, in the order written; none if any diagnostic is an error
 * @param diagnostics everything found, in the order of the text
 */
public record WaiverCompilation(
    SourceText source, String title, List<Waiver> waivers, List<Diagnostic> diagnostics) {
  /** Copies the lists. */
  public WaiverCompilation {
    waivers = List.copyOf(waivers);
    diagnostics = List.copyOf(diagnostics);
  }

  /** True if the waivers can be used: nothing found is an error. */
  public boolean isUsable() {
    return diagnostics.stream().noneMatch(d -> d.level() == Diagnostic.Level.ERROR);
  }
}
