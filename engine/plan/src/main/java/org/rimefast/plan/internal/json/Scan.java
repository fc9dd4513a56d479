package org.rimefast.plan.internal.json;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Where the pieces of a text end that may or may not be JSON. */
final class Scan {
  private final byte[] text;

  Scan(byte[] text) {
    this.text = text;
  }

  int endOfWord(int at) {
    int end = at;
    while (end < text.length && isWordByte(text[end])) {
      end++;
    }
    return end;
  }

  String string(int from, int to) {
    return new String(text, from, Math.min(to - from, 40), StandardCharsets.UTF_8);
  }

  boolean isComment(int at) {
    return text[at] == '#'
        || (text[at] == '/'
            && at + 1 < text.length
            && (text[at + 1] == '/' || text[at + 1] == '*'));
  }

  boolean isHex(int at) {
    for (int i = at; i < at + 4; i++) {
      if (i >= text.length || Character.digit(text[i], 16) < 0) {
        return false;
      }
    }
    return true;
  }

  /** The character at an offset, as a message shows it. */
  String shown(int at) {
    if (at >= text.length) {
      return "the end of the file";
    }
    int c = text[at] & 0xFF;
    if (c < 0x20 || c == 0x7F) {
      return String.format(Locale.ROOT, "the control character U+%04X", c);
    }
    int length = c < 0x80 ? 1 : c < 0xE0 ? 2 : c < 0xF0 ? 3 : 4;
    return c == '"'
        ? "the text that starts here"
        : "\"" + string(at, Math.min(at + length, text.length)) + "\"";
  }

  static boolean isWordByte(byte b) {
    return b < 0 || Character.isLetterOrDigit(b) || b == '+' || b == '-' || b == '.' || b == '_';
  }

  boolean isNumberByte(int at) {
    byte b = text[at];
    boolean exponent =
        (b == 'e' || b == 'E') && at + 1 < text.length && "+-0123456789".indexOf(text[at + 1]) >= 0;
    return exponent || "+-.0123456789".indexOf(b) >= 0;
  }

  /** Where a text ends that starts with a quote at {@code at}; past the end if it does not. */
  int endOfText(int at) {
    int end = at + 1;
    while (end < text.length && text[end] != '"') {
      end += text[end] == '\\' ? 2 : 1;
    }
    return end + 1;
  }

  boolean isWhole(int at, int end) {
    if (end > text.length) {
      return false;
    }
    for (int i = at + 1; i < end - 1; i++) {
      if (text[i] >= 0 && text[i] < 0x20) {
        return false;
      }
      if (text[i] == '\\') {
        i++;
        if ("\"\\/bfnrtu".indexOf(text[i]) < 0 || (text[i] == 'u' && !isHex(i + 1))) {
          return false;
        }
      }
    }
    return true;
  }

  int skipSpace(int from) {
    int at = from;
    while (at < text.length
        && (text[at] == ' ' || text[at] == '\t' || text[at] == '\n' || text[at] == '\r')) {
      at++;
    }
    return at;
  }
}
