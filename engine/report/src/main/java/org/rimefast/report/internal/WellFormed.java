package org.rimefast.report.internal;

/** Text that UTF-8 can carry. */
final class WellFormed {
  private static final char REPLACEMENT = '\uFFFD';

  private WellFormed() {}

  /** The text with each lone surrogate replaced by U+FFFD, as the Unicode standard advises. */
  static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isSurrogate(text.charAt(i))) {
        return replaced(text);
      }
    }
    return text;
  }

  private static String replaced(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    int at = 0;
    while (at < text.length()) {
      int character = text.codePointAt(at);
      boolean lone = Character.getType(character) == Character.SURROGATE;
      clean.appendCodePoint(lone ? REPLACEMENT : character);
      at += Character.charCount(character);
    }
    return clean.toString();
  }
}
