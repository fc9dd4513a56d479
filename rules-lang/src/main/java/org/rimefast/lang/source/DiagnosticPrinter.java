package org.rimefast.lang.source;

import java.util.Locale;

/**
 * Prints a diagnostic for a terminal or a log: where, what, the line with a mark under the place,
 * and what to do.
 *
 * <pre>
 * shop.rime:4:12: error[unknown-word]: The word "stub" is not in the vocabulary here.
 *   box must not touch a stub
 *                        ^^^^
 *   help: Did you mean "stud"?
 * </pre>
 *
 * <p>A pure function of its arguments. Control characters, and those that turn the direction of
 * text, are shown as {@code <U+202E>}.
 */
public final class DiagnosticPrinter {
  /** More of a line than this is not shown. */
  private static final int WIDTH = 120;

  private DiagnosticPrinter() {}

  /** The text of a diagnostic; ends with a line feed. */
  public static String print(Diagnostic diagnostic, SourceText source) {
    StringBuilder out = new StringBuilder();
    String level = diagnostic.level() == Diagnostic.Level.ERROR ? "error" : "warning";
    place(source, diagnostic.span(), out);
    out.append(": ").append(level).append('[').append(diagnostic.code().id()).append("]: ");
    visible(diagnostic.headline(), out);
    out.append('\n');
    excerpt(source, diagnostic.span(), out);
    if (!diagnostic.help().isEmpty()) {
      out.append("  help: ");
      visible(diagnostic.help(), out);
      out.append('\n');
    }
    for (Diagnostic.Related related : diagnostic.related()) {
      out.append("  ");
      place(source, related.span(), out);
      out.append(": ");
      visible(related.note(), out);
      out.append('\n');
    }
    return out.toString();
  }

  private static void place(SourceText source, Span span, StringBuilder out) {
    SourceText.Place place = source.place(span.start());
    out.append(place.name()).append(':').append(place.line());
    out.append(':').append(place.column());
  }

  /** The line in which the span starts, and carets under the part of it that the span covers. */
  private static void excerpt(SourceText source, Span span, StringBuilder out) {
    String text = source.text();
    Span file = source.spanOf(source.partAt(span.start()));
    int start = Math.min(span.start(), file.end());
    int lineStart = start;
    while (lineStart > file.start() && text.charAt(lineStart - 1) != '\n') {
      lineStart--;
    }
    int lineEnd = start;
    while (lineEnd < file.end() && text.charAt(lineEnd) != '\n') {
      lineEnd++;
    }
    if (lineEnd > lineStart && lineEnd > start && text.charAt(lineEnd - 1) == '\r') {
      lineEnd--;
    }
    int from = Math.max(lineStart, start - WIDTH / 2);
    int to = Math.min(lineEnd, from + WIDTH);
    if (from == to) {
      return;
    }
    StringBuilder shown = new StringBuilder(from > lineStart ? "..." : "");
    visible(text.substring(from, start), shown);
    int column = shown.length();
    int end = Math.max(start, Math.min(Math.min(span.end(), to), lineEnd));
    StringBuilder marked = new StringBuilder();
    visible(text.substring(start, end), marked);
    shown.append(marked);
    visible(text.substring(end, to), shown);
    out.append("  ").append(shown).append(to < lineEnd ? "..." : "").append('\n');
    out.append("  ").append(" ".repeat(column)).append("^".repeat(Math.max(1, marked.length())));
    out.append('\n');
  }

  /** Replaces what cannot be seen, or would change how the rest is seen. */
  private static void visible(String text, StringBuilder out) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\t') {
        out.append(' ');
      } else if (isPairedSurrogate(text, i)) {
        out.append(c);
      } else if (Character.isISOControl(c)
          || Character.isSurrogate(c)
          || Character.getType(c) == Character.FORMAT
          || Character.getType(c) == Character.LINE_SEPARATOR
          || Character.getType(c) == Character.PARAGRAPH_SEPARATOR) {
        out.append(String.format(Locale.ROOT, "<U+%04X>", (int) c));
      } else {
        out.append(c);
      }
    }
  }

  private static boolean isPairedSurrogate(String text, int i) {
    char c = text.charAt(i);
    return (Character.isHighSurrogate(c)
            && i + 1 < text.length()
            && Character.isLowSurrogate(text.charAt(i + 1)))
        || (Character.isLowSurrogate(c) && i > 0 && Character.isHighSurrogate(text.charAt(i - 1)));
  }
}
