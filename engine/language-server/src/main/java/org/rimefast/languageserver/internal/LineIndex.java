package org.rimefast.languageserver.internal;

import java.util.Arrays;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.rimefast.lang.source.Span;

/**
 * Lines of a text as the protocol counts them: from 0, ended by {@code \n}, {@code \r\n} or {@code
 * \r}; characters are UTF-16 code units, as offsets are.
 */
final class LineIndex {
  private final String text;
  private final int[] starts;

  LineIndex(String text) {
    this.text = text;
    int[] found = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean last =
          c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
      if (last) {
        if (count == found.length) {
          found = Arrays.copyOf(found, count * 2);
        }
        found[count++] = i + 1;
      }
    }
    starts = Arrays.copyOf(found, count);
  }

  /** The offset of a position; a position past the end of its line or text is taken as that end. */
  int offset(Position position) {
    int line = position.getLine();
    if (line < 0) {
      return 0;
    }
    if (line >= starts.length) {
      return text.length();
    }
    int end = line + 1 < starts.length ? starts[line + 1] : text.length();
    while (end > starts[line] && isLineEnd(text.charAt(end - 1))) {
      end--;
    }
    return Math.min(starts[line] + Math.max(0, position.getCharacter()), end);
  }

  Position position(int offset) {
    int found = Arrays.binarySearch(starts, offset);
    int line = found >= 0 ? found : -found - 2;
    return new Position(line, offset - starts[line]);
  }

  Range range(Span span) {
    return new Range(position(span.start()), position(span.end()));
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
