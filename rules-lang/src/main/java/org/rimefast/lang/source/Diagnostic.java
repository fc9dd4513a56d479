package org.rimefast.lang.source;

import java.util.List;

/**
 * One thing that is wrong, or worth a second look, in rule text.
 *
 * @param code stable name of the kind of fault, such as {@code unknown-word}; every code has an
 *     entry in {@link DiagnosticCode}
 * @param level whether it stops the compilation
 * @param span what it is about
 * @param headline one sentence
 * @param help what to do; may be empty
 * @param related other places that matter, in order
 * @param fixes edits that would put it right, best first
 */
public record Diagnostic(
    DiagnosticCode code,
    Level level,
    Span span,
    String headline,
    String help,
    List<Related> related,
    List<Fix> fixes) {

  /** Whether a diagnostic stops the compilation. */
  public enum Level {
    ERROR,
    WARNING
  }

  /** Another place that matters to a diagnostic, and why. */
  public record Related(Span span, String note) {}

  /** Replacing the text of {@code span} by {@code replacement} would put it right. */
  public record Fix(Span span, String replacement) {}

  /** Copies the lists. */
  public Diagnostic {
    related = List.copyOf(related);
    fixes = List.copyOf(fixes);
  }
}
