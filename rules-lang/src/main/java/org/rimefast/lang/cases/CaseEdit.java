package org.rimefast.lang.cases;

import java.util.Optional;
import org.rimefast.lang.source.Span;

/** One change that a case makes in its plan. */
public sealed interface CaseEdit {
  /** The edit as it is written, on one line; what stands in triple quotes is left out. */
  String written();

  /** Where it stands. */
  Span span();

  /** What {@code visitor} makes of it. */
  <T> T accept(Visitor<T> visitor);

  /** {@code set along of "R-1" to 1720 mm}: gives a value, whether or not there was one. */
  record Set(Target target, NewValue value, String written, Span span) implements CaseEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.set(this);
    }
  }

  /** {@code remove depth of "R-2"}: takes away what is there. */
  record Remove(Target target, String written, Span span) implements CaseEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.remove(this);
    }
  }

  /**
   * {@code add to boxes """ {...} """}.
   *
   * @param list the plan's list
   * @param json the new entry, or a list of them
   */
  record Add(String list, String json, String written, Span span) implements CaseEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.add(this);
    }
  }

  /**
   * What is changed.
   *
   * @param field a field in words: {@code foam thickness}; all of the element if empty
   * @param element the id of an element, or the name of a face, or {@code room}; if there is no
   *     field, it may be a JSON pointer, which begins with a slash
   */
  record Target(Optional<String> field, String element) {
    /** True if the element is given as a JSON pointer (RFC 6901). */
    public boolean isPointer() {
      return field.isEmpty() && element.startsWith("/");
    }
  }

  /**
   * A new value.
   *
   * @param kind how to read the text
   * @param text a text without quotes, a number or any JSON
   */
  record NewValue(Kind kind, String text) {
    /** How a new value is written. */
    public enum Kind {
      /** A text, or a quantity such as {@code 60 %}. */
      TEXT,
      /** A number without a unit. */
      NUMBER,
      /** JSON, in triple quotes. */
      JSON
    }
  }

  /** One method for each kind of edit. */
  interface Visitor<T> {
    /** A value is given. */
    T set(Set edit);

    /** Something is taken away. */
    T remove(Remove edit);

    /** An entry is added to a list. */
    T add(Add edit);
  }
}
