package org.rimefast.lang.internal.format;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.source.Span;

/**
 * What stands between two pieces: white space and comments.
 *
 * @param comments in order
 * @param blankAtEnd whether an empty line stands after the last comment
 */
record Gap(List<Comment> comments, boolean blankAtEnd) {

  /**
   * A comment.
   *
   * @param span where it stands, without spaces at its end
   * @param behind whether it stands on the line of the piece before it
   * @param indented whether it stands on a line of its own that begins with a space
   * @param afterBlank whether an empty line stands before it
   */
  record Comment(Span span, boolean behind, boolean indented, boolean afterBlank) {}

  /** Copies the list. */
  Gap {
    comments = List.copyOf(comments);
  }

  /** Reads the stretch of a text that lies between two pieces, or before the first or last. */
  static Gap read(String text, int from, int to) {
    List<Comment> comments = new ArrayList<>();
    int lineEnds = from == 0 ? 1 : 0;
    boolean indented = false;
    int at = from;
    while (at < to) {
      char c = text.charAt(at);
      if (c == '-') {
        int lineEnd = lineEnd(text, at, to);
        Span span = new Span(at, withoutSpaces(text, at, lineEnd));
        comments.add(new Comment(span, lineEnds == 0, indented && lineEnds > 0, lineEnds > 1));
        lineEnds = 0;
        indented = false;
        at = lineEnd;
        continue;
      }
      boolean twoCharacters = c == '\r' && at + 1 < to && text.charAt(at + 1) == '\n';
      boolean isLineEnd = c == '\n' || c == '\r';
      lineEnds += isLineEnd ? 1 : 0;
      indented = !isLineEnd;
      at += twoCharacters ? 2 : 1;
    }
    return new Gap(comments, lineEnds > 1);
  }

  private static int lineEnd(String text, int start, int end) {
    int at = start;
    while (at < end && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    return at;
  }

  private static int withoutSpaces(String text, int start, int end) {
    int at = end;
    while (at > start && (text.charAt(at - 1) == ' ' || text.charAt(at - 1) == '\t')) {
      at--;
    }
    return at;
  }
}
