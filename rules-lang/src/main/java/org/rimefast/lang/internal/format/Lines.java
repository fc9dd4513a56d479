package org.rimefast.lang.internal.format;

/** Lines as they are written, each ended by {@code \n}. */
final class Lines {
  private final StringBuilder text = new StringBuilder();

  void line(int indent, String words) {
    text.append(" ".repeat(indent)).append(words).append('\n');
  }

  /** An empty line, unless it would be the first. */
  void blank() {
    if (!text.isEmpty()) {
      text.append('\n');
    }
  }

  /** Puts a comment behind the last line. */
  void behind(String comment) {
    text.insert(text.length() - 1, " " + comment);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
