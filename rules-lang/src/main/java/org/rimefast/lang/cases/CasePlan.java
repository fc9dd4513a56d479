package org.rimefast.lang.cases;

import org.rimefast.lang.source.Span;

/** Where the plan of a case comes from. */
public sealed interface CasePlan {
  /** The words that say so. */
  Span span();

  /** What {@code visitor} makes of it. */
  <T> T accept(Visitor<T> visitor);

  /**
   * A file.
   *
   * @param name relative to the folder of the text that the case stands in, with forward slashes;
   *     never out of that folder
   */
  record File(String name, Span span) implements CasePlan {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.file(this);
    }
  }

  /**
   * A plan in the case itself.
   *
   * @param json its text
   */
  record Inline(String json, Span span) implements CasePlan {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.inline(this);
    }
  }

  /** One method for each way. */
  interface Visitor<T> {
    /** A file. */
    T file(File file);

    /** A plan in the case itself. */
    T inline(Inline inline);
  }
}
