package org.rimefast.lang.internal.resolve;

import java.util.List;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Shorthand for making diagnostics. */
public final class Problems {
  private Problems() {}

  /** An error. */
  public static Diagnostic error(DiagnosticCode code, Span span, String headline, String help) {
    return new Diagnostic(code, Diagnostic.Level.ERROR, span, headline, help, List.of(), List.of());
  }

  /** An error that one replacement puts right. */
  public static Diagnostic fixable(
      DiagnosticCode code, Span span, String headline, String help, Span at, String replacement) {
    return new Diagnostic(
        code,
        Diagnostic.Level.ERROR,
        span,
        headline,
        help,
        List.of(),
        List.of(new Diagnostic.Fix(at, replacement)));
  }

  /** An error with another place that matters. */
  public static Diagnostic related(
      DiagnosticCode code,
      Span span,
      String headline,
      String help,
      List<Diagnostic.Related> related) {
    return new Diagnostic(code, Diagnostic.Level.ERROR, span, headline, help, related, List.of());
  }
}
