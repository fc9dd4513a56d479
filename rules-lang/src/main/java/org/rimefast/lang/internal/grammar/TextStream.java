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
  private final int from;
  private final int to;
  private int at;

  /** The stretch of a text from one offset to another; nothing beyond it can be seen. */
  TextStream(String text, String name, int from, int to) {
    this.text = text;
    this.name = name;
    this.from = from;
    this.to = to;
    this.at = from;
  }

  @Override
  public String getText(Interval interval) {
    int start = Math.min(interval.a, to);
    int end = Math.min(interval.b + 1, to);
    return start >= end ? "" : text.substring(start, end);
  }

  @Override
  public void consume() {
    if (at >= to) {
      throw new IllegalStateException("reading past the end");
    }
    at++;
  }

  @Override
  public int LA(int offset) {
    int index = offset > 0 ? at + offset - 1 : at + offset;
    if (offset == 0 || index < from) {
      return 0;
    }
    return index >= to ? IntStream.EOF : text.charAt(index);
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
    at = Math.min(index, to);
  }

  @Override
  public int size() {
    return to;
  }

  @Override
  public String getSourceName() {
    return name;
  }
}
