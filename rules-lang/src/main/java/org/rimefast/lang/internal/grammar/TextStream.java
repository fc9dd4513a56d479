package org.rimefast.lang.internal.grammar;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * A string, read by UTF-16 code units, so that token places are string offsets. The streams that
 * come with the runtime count code points.
 */
final class TextStream implements CharStream {
  private final String text;
  private final String name;
  private int at;

  TextStream(String text, String name) {
    this.text = text;
    this.name = name;
  }

  @Override
  public String getText(Interval interval) {
    int start = Math.min(interval.a, text.length());
    int end = Math.min(interval.b + 1, text.length());
    return start >= end ? "" : text.substring(start, end);
  }

  @Override
  public void consume() {
    if (at >= text.length()) {
      throw new IllegalStateException("reading past the end");
    }
    at++;
  }

  @Override
  public int LA(int offset) {
    int index = offset > 0 ? at + offset - 1 : at + offset;
    if (offset == 0 || index < 0) {
      return 0;
    }
    return index >= text.length() ? IntStream.EOF : text.charAt(index);
  }

  @Override
  public int mark() {
    return -1;
  }

  @Override
  public void release(int marker) {}

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = Math.min(index, text.length());
  }

  @Override
  public int size() {
    return text.length();
  }

  @Override
  public String getSourceName() {
    return name;
  }
}
