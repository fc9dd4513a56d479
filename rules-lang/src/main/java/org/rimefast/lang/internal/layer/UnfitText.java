package org.rimefast.lang.internal.layer;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Finds what makes a whole text unfit to be read. */
public final class UnfitText {
  private UnfitText() {}

  /**
   * What makes the text unfit; empty if it can be read.
   *
   * @param characters how many are taken
   */
  public static Optional<Diagnostic> problem(String text, int characters) {
    if (text.length() > characters) {
      return Optional.of(
          error(
              DiagnosticCode.TEXT_TOO_LONG,
              new Span(0, 0),
              "The text has "
                  + text.length()
                  + " characters; at most "
                  + characters
                  + " are taken.",
              "Divide it into several standards."));
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < 128) {
        continue;
      }
      if (isBidirectionalControl(c)) {
        return Optional.of(
            error(
                DiagnosticCode.BIDIRECTIONAL_CONTROL,
                new Span(i, i + 1),
                "A hidden character here makes the text show in another order than it is read.",
                "Delete it and write the line anew."));
      }
      if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        i++;
      } else if (Character.isSurrogate(c)) {
        return Optional.of(
            error(
                DiagnosticCode.UNPAIRED_SURROGATE,
                new Span(i, i + 1),
                "Half a character stands here: the text was damaged before it was read.",
                "Save the file as UTF-8 and write the character anew."));
      }
    }
    return Optional.empty();
  }

  /** Unicode Standard Annex 9, section 2: embeddings, overrides, isolates and marks. */
  private static boolean isBidirectionalControl(char c) {
    return (c >= '\u202a' && c <= '\u202e')
        || (c >= '\u2066' && c <= '\u2069')
        || c == '\u200e'
        || c == '\u200f'
        || c == '\u061c';
  }

  private static Diagnostic error(DiagnosticCode code, Span span, String headline, String help) {
    return new Diagnostic(code, Diagnostic.Level.ERROR, span, headline, help, List.of(), List.of());
  }
}
