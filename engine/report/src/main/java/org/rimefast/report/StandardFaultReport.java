package org.rimefast.report;

import java.util.List;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;
import org.rimefast.report.internal.Ink;
import org.rimefast.report.internal.Page;

/** What is wrong, or worth a second look, in a standard or a file of waivers, as text. */
public final class StandardFaultReport {
  private StandardFaultReport() {}

  /**
   * Every diagnostic of a compilation, with the line it is about; then, if there is an error, that
   * the standard cannot be used. Empty if there is nothing to tell.
   */
  public static String write(Compilation compilation, TextOptions options) {
    return write(compilation.source(), compilation.diagnostics(), "standard", options);
  }

  /** The same for a text of cases. */
  public static String write(CaseCompilation compilation, TextOptions options) {
    return write(compilation.source(), compilation.diagnostics(), "file of cases", options);
  }

  /** The same of a file of waivers. */
  public static String write(WaiverCompilation compilation, TextOptions options) {
    return write(compilation.source(), compilation.diagnostics(), "file of waivers", options);
  }

  private static String write(
      SourceText source, List<Diagnostic> diagnostics, String kind, TextOptions options) {
    Page page = new Page(options);
    int errors = 0;
    for (Diagnostic diagnostic : diagnostics) {
      page.verbatim(DiagnosticPrinter.print(diagnostic, source));
      if (diagnostic.level() == Diagnostic.Level.ERROR) {
        errors++;
      }
    }
    if (errors > 0) {
      page.entry(
          Ink.NONE,
          source.name()
              + ": this "
              + kind
              + " cannot be used: "
              + (errors == 1 ? "1 fault." : errors + " faults."));
    }
    return page.toString();
  }
}
