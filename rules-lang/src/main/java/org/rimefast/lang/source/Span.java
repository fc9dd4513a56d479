package org.rimefast.lang.source;

/**
 * A stretch of rule text.
 *
 * @param start offset of the first character
 * @param end offset after the last character; not before {@code start}
 */
public record Span(int start, int end) {
  /** Refuses a span that ends before it starts. */
  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("span from " + start + " to " + end);
    }
  }

  /** The smallest span that holds both. */
  public Span to(Span other) {
    return new Span(Math.min(start, other.start), Math.max(end, other.end));
  }
}
