package org.rimefast.report.internal;

import java.util.Locale;

/**
 * Makes characters visible that would otherwise act on the terminal or reorder the line: a plan's
 * text comes from anyone.
 */
public final class VisibleText {
  private VisibleText() {}

  /** The text with every such character written as {@code <U+202E>}. */
  public static String of(String text) {
    int at = firstHidden(text);
    if (at == text.length()) {
      return text;
    }
    StringBuilder visible = new StringBuilder(text.length() + 16).append(text, 0, at);
    while (at < text.length()) {
      int character = text.codePointAt(at);
      if (isHidden(character)) {
        visible.append("<U+").append(hex(character)).append('>');
      } else {
        visible.appendCodePoint(character);
      }
      at += Character.charCount(character);
    }
    return visible.toString();
  }

  /** True for controls, format characters (bidirectional ones among them) and lone surrogates. */
  static boolean isHidden(int character) {
    if (character >= ' ' && character < 0x7f) {
      return false;
    }
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  /** Four digits or more: {@code 202E}. */
  static String hex(int character) {
    String digits = Integer.toHexString(character).toUpperCase(Locale.ROOT);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  private static int firstHidden(String text) {
    int at = 0;
    while (at < text.length()) {
      int character = text.codePointAt(at);
      if (isHidden(character)) {
        return at;
      }
      at += Character.charCount(character);
    }
    return at;
  }
}
