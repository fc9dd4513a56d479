package org.rimefast.languageserver.internal;

import java.util.List;
import org.eclipse.lsp4j.TextEdit;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.source.Span;

/** The same layout as {@code rimefast format}, as one edit. */
final class Layout {
  private Layout() {}

  /** The edit that lays a file out; none if it is. */
  static List<TextEdit> edits(Document document) {
    String text = document.text();
    String right = RuleFormatter.format(document.source());
    if (right.equals(text)) {
      return List.of();
    }
    int start = 0;
    int most = Math.min(text.length(), right.length());
    while (start < most && text.charAt(start) == right.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < most - start
        && text.charAt(text.length() - 1 - end) == right.charAt(right.length() - 1 - end)) {
      end++;
    }
    // Neither end may part the two halves of a character, nor a line's two marks of its end.
    while (start > 0 && !isBoundary(text, start)) {
      start--;
    }
    while (end > 0 && !isBoundary(text, text.length() - end)) {
      end--;
    }
    Span span = new Span(start, text.length() - end);
    return List.of(
        new TextEdit(document.lines().range(span), right.substring(start, right.length() - end)));
  }

  private static boolean isBoundary(String text, int at) {
    if (at <= 0 || at >= text.length()) {
      return true;
    }
    char before = text.charAt(at - 1);
    char after = text.charAt(at);
    return !(Character.isHighSurrogate(before) && Character.isLowSurrogate(after))
        && !(before == '\r' && after == '\n');
  }
}
