package org.rimefast.lang.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One file of rule text.
 *
 * @param name how messages name it: a file name or {@code standard cold-steel-modules}
 * @param text the whole text
 */
public record SourceText(String name, String text) {
  /** Line and column of an offset, both counted from 1; columns count UTF-16 code units. */
  public record Position(int line, int column) {}

  /** Where the character at {@code offset} stands. */
  public Position positionOf(int offset) {
    int line = 1;
    int lineStart = 0;
    int end = Math.min(offset, text.length());
    for (int i = 0; i < end; i++) {
      if (text.charAt(i) == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    return new Position(line, end - lineStart + 1);
  }

  /** The text of line {@code line}, counted from 1, without its end of line. */
  public String line(int line) {
    List<String> lines = new ArrayList<>();
    Collections.addAll(lines, text.split("\n", -1));
    String found = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    return found.endsWith("\r") ? found.substring(0, found.length() - 1) : found;
  }

  /** The text that a span covers. */
  public String textOf(Span span) {
    return text.substring(span.start(), span.end());
  }
}
