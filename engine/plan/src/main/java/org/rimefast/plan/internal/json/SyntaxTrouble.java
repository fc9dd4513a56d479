package org.rimefast.plan.internal.json;

import com.fasterxml.jackson.core.JsonToken;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.internal.json.Node.Container;
import org.rimefast.plan.internal.json.Node.Structure;

/**
 * Says in words what is wrong with a text that is not JSON. It follows the parser from token to
 * token; when the parser gives up, it looks at what stands after the last good token.
 */
final class SyntaxTrouble {
  private static final String NUMBERS =
      "Write numbers with digits, one point and an optional minus sign: 1200, 0.5, -38.";

  private final byte[] text;
  private final Scan scan;
  private @Nullable JsonToken last;
  private int lastOffset;
  private boolean insideText;

  SyntaxTrouble(byte[] text, int start) {
    this.text = text;
    this.scan = new Scan(text);
    this.lastOffset = start;
  }

  /** What was found, and where. */
  record Found(int offset, String message, String remedy) {}

  void at(JsonToken token, int offset) {
    last = token;
    lastOffset = offset;
  }

  /** The parser is about to read the text of the last token. */
  void insideText() {
    insideText = true;
  }

  void afterText() {
    insideText = false;
  }

  /** Where the name or value starts that is longer than {@code limit}. */
  int startOfLong(int limit) {
    if (insideText) {
      return lastOffset;
    }
    int at = skipSeparators(afterLast());
    // The parser looks at a value while it reads the name before it.
    if (at < text.length && text[at] == '"') {
      int end = scan.endOfText(at);
      if (end - at - 2 <= limit) {
        at = skipSeparators(end);
      }
    }
    return at;
  }

  private int skipSeparators(int from) {
    int at = scan.skipSpace(from);
    while (at < text.length && (text[at] == ',' || text[at] == ':')) {
      at = scan.skipSpace(at + 1);
    }
    return at;
  }

  /**
   * What is wrong after the last good token.
   *
   * @param container the innermost object or list that is still open
   */
  Found explain(@Nullable Container container) {
    if (insideText) {
      return brokenText(lastOffset);
    }
    int at = scan.skipSpace(afterLast());
    if (at >= text.length) {
      return end(at, container);
    }
    if (last == JsonToken.FIELD_NAME) {
      return afterName(at, container);
    }
    boolean first = last == null || last == JsonToken.START_OBJECT || last == JsonToken.START_ARRAY;
    if (first) {
      return container instanceof Structure
          ? name(at, container, '{')
          : value(at, container, container == null ? ' ' : '[');
    }
    if (container == null) {
      return scan.isComment(at) ? comment(at) : afterEnd(at);
    }
    if (text[at] != ',') {
      return afterValue(at, container);
    }
    int following = scan.skipSpace(at + 1);
    return container instanceof Structure
        ? name(following, container, ',')
        : value(following, container, ',');
  }

  /** The text goes on after the outermost value. */
  static Found afterEnd(int at) {
    return new Found(
        at,
        "There is more text after the end of the plan.",
        "A file holds one plan: one object in braces { } and nothing after it.");
  }

  private Found afterName(int at, @Nullable Container container) {
    if (at >= text.length) {
      return end(at, container);
    }
    if (text[at] == ':') {
      return value(scan.skipSpace(at + 1), container, ':');
    }
    return scan.isComment(at)
        ? comment(at)
        : new Found(
            at,
            "A colon is missing between a name and its value.",
            "Write \"name\": value, with straight quotes and a colon.");
  }

  private Found afterValue(int at, Container container) {
    if (scan.isComment(at)) {
      return comment(at);
    }
    if (text[at] == '}' || text[at] == ']') {
      return wrongBracket(at, container);
    }
    if (isNumber(last)) {
      return afterNumber(at);
    }
    return new Found(
        at,
        "A comma is missing before " + scan.shown(at) + ".",
        last == JsonToken.VALUE_STRING
            ? "Put a comma between two values; inside a text, write \\\" for a double quote."
            : "Put a comma between two values.");
  }

  private static boolean isNumber(@Nullable JsonToken token) {
    return token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT;
  }

  private Found afterNumber(int at) {
    if (text[at] == '"') {
      return new Found(
          at,
          "A comma is missing before " + scan.shown(at) + ".",
          "Put a comma between two values.");
    }
    String number = scan.string(lastOffset, afterLast());
    String word = scan.string(at, scan.endOfWord(at));
    return !word.isEmpty() && Character.isLetter(word.charAt(0))
        ? new Found(
            lastOffset,
            "The number " + number + " is followed by the word " + word + ".",
            "Put a value with a unit in quotes: \"" + number + " " + word + "\".")
        : new Found(
            at,
            "The number " + number + " is followed by " + scan.shown(at) + ".",
            NUMBERS + " A fraction goes in quotes with its unit: \"5/8 in\".");
  }

  private static Found wrongBracket(int at, Container container) {
    return container instanceof Structure
        ? new Found(at, "An object is closed with ].", "Close an object { with }.")
        : new Found(at, "A list is closed with }.", "Close a list [ with ].");
  }

  private Found name(int at, Container container, char before) {
    if (at >= text.length) {
      return end(at, container);
    }
    byte c = text[at];
    if (c == '"') {
      // The parser looks at a value while it reads the name before it.
      int end = scan.endOfText(at);
      return scan.isWhole(at, end) ? afterName(scan.skipSpace(end), container) : brokenText(at);
    }
    if (before == ',' && c == '}') {
      return trailingComma(at);
    }
    if (c == ']') {
      return wrongBracket(at, container);
    }
    if (scan.isComment(at)) {
      return comment(at);
    }
    if (c == ',') {
      return twoCommas(at);
    }
    if (isNumber(last) && Character.isDigit(c)) {
      return new Found(
          lastOffset,
          "A number is written with a comma.",
          "Write it without one; the sign before decimals is a point: 1200.5.");
    }
    return new Found(
        at,
        "A name in straight double quotes is missing before " + scan.shown(at) + ".",
        "Write each member of an object as \"name\": value.");
  }

  private Found value(int at, @Nullable Container container, char before) {
    if (at >= text.length) {
      return end(at, container);
    }
    byte c = text[at];
    if (c == '"') {
      return brokenText(at);
    }
    if (scan.isComment(at)) {
      return comment(at);
    }
    if (c == '}' || c == ']') {
      if (before == ',') {
        return trailingComma(at);
      }
      return container == null || before == ':'
          ? new Found(
              at, "A value is missing before " + scan.shown(at) + ".", "Write a value here.")
          : wrongBracket(at, container);
    }
    if (c == ',') {
      return before == ':'
          ? new Found(at, "A value is missing before the comma.", "Write a value here.")
          : twoCommas(at);
    }
    if (c == '\'') {
      return new Found(
          at, "Text stands in single quotes.", "Put text in straight double quotes: \"text\".");
    }
    return word(at);
  }

  private Found word(int at) {
    String word = scan.string(at, scan.endOfWord(at));
    String bare = word.startsWith("-") || word.startsWith("+") ? word.substring(1) : word;
    if (bare.equals("NaN") || bare.equals("Infinity")) {
      return new Found(
          at,
          "\"" + word + "\" is not a number that a plan can hold.",
          "Leave out a value that is unknown.");
    }
    if (!word.isEmpty() && "+-.0123456789".indexOf(word.charAt(0)) >= 0) {
      return new Found(at, "\"" + word + "\" is not a number as JSON writes it.", NUMBERS);
    }
    if (!word.isEmpty() && Character.isLetter(word.charAt(0))) {
      return new Found(
          at,
          "The word " + word + " stands here without quotes.",
          "Put text in straight double quotes: \"" + word + "\".");
    }
    return new Found(
        at, scan.shown(at) + " cannot stand here.", "Write a number, a text in quotes, { or [.");
  }

  private Found brokenText(int at) {
    int i = at + 1;
    while (i < text.length && text[i] != '"') {
      int c = text[i] & 0xFF;
      if (c == '\\') {
        if (i + 1 < text.length && "\"\\/bfnrtu".indexOf(text[i + 1]) < 0) {
          return new Found(
              i,
              "A backslash in a text is followed by " + scan.shown(i + 1) + ".",
              "Write \\\\ for a backslash; other signs need none.");
        }
        if (i + 1 < text.length && text[i + 1] == 'u' && !scan.isHex(i + 2)) {
          return new Found(
              i, "\\u in a text must be followed by four hex digits.", "Write the sign itself.");
        }
        i += 2;
        continue;
      }
      if (c < 0x20) {
        return new Found(
            i,
            c == '\n' || c == '\r'
                ? "A text runs over the end of its line."
                : "A text holds a control character.",
            "Close the text with a straight double quote on the same line.");
      }
      i++;
    }
    return new Found(
        at, "The text that starts here is never closed.", "Close it with a straight double quote.");
  }

  private Found end(int at, @Nullable Container container) {
    if (container == null) {
      return new Found(
          at, "There is no plan in the file.", "A plan is one object in braces: { ... }.");
    }
    String opened =
        container.place() == null ? "" : " that starts in line " + container.place().line();
    return new Found(
        at,
        "The file ends inside " + container.kind() + opened + ".",
        container instanceof Structure ? "Close it with }." : "Close it with ].");
  }

  private static Found trailingComma(int at) {
    return new Found(
        at, "There is a comma after the last value.", "Take the comma before the bracket out.");
  }

  private static Found twoCommas(int at) {
    return new Found(at, "There is a comma without a value before it.", "Take the comma out.");
  }

  private static Found comment(int at) {
    return new Found(at, "A comment stands here.", "Plans have no comments; take it out.");
  }

  /** Where the last good token ends. */
  private int afterLast() {
    if (last == null) {
      return lastOffset;
    }
    int at = lastOffset;
    switch (last) {
      case START_OBJECT, START_ARRAY, END_OBJECT, END_ARRAY -> at++;
      case FIELD_NAME, VALUE_STRING -> at = scan.endOfText(at);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
        while (at < text.length && scan.isNumberByte(at)) {
          at++;
        }
      }
      default -> at = scan.endOfWord(at);
    }
    return Math.min(at, text.length);
  }
}
