package org.rimefast.plan.internal.json;

/** Turns rising byte offsets of a UTF-8 text into lines and columns; columns count characters. */
final class LineCounter {
  private final byte[] text;
  private int offset;
  private int line = 1;
  private int column = 1;

  LineCounter(byte[] text, int start) {
    this.text = text;
    this.offset = start;
  }

  /** Goes on to {@code target}, which must not lie before the last one. */
  void advance(int target) {
    int end = Math.min(target, text.length);
    int at = offset;
    while (at < end) {
      byte b = text[at++];
      if (b == '\n' || (b == '\r' && !(at < text.length && text[at] == '\n'))) {
        line++;
        column = 1;
      } else if ((b & 0xC0) != 0x80) {
        column++;
      }
    }
    offset = at;
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }
}
