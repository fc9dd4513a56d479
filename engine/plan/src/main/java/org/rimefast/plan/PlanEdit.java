package org.rimefast.plan;

import java.util.Optional;

/** One change in a plan's text; see {@link PlanEdits}. */
public sealed interface PlanEdit {
  /** What {@code visitor} makes of it. */
  <T> T accept(Visitor<T> visitor);

  /** Gives a value, whether or not there was one. */
  record Set(Target target, Value value) implements PlanEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.set(this);
    }
  }

  /** Takes away what is there; what is not there cannot be taken away. */
  record Remove(Target target) implements PlanEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.remove(this);
    }
  }

  /**
   * Adds to a list of the plan.
   *
   * @param list {@code boxes}; made if the plan has none
   * @param json one entry, or a list of entries
   */
  record Add(String list, String json) implements PlanEdit {
    @Override
    public <T> T accept(Visitor<T> visitor) {
      return visitor.add(this);
    }
  }

  /**
   * What is changed.
   *
   * @param field a field in words, {@code foam thickness}, or as the plan has it; all of the
   *     element if empty
   * @param element the id of an element, an item of a row among them; or a face ({@code left wall},
   *     {@code roof}), or {@code room}; or, without a field, a JSON pointer (RFC 6901), which
   *     begins with a slash
   */
  record Target(Optional<String> field, String element) {}

  /** A new value: its kind, and a text without quotes, a number or any JSON. */
  record Value(Kind kind, String text) {
    /** How the text is read. */
    public enum Kind {
      TEXT,
      /** A JSON number; a number that JSON spells otherwise becomes a text. */
      NUMBER,
      JSON
    }
  }

  /** One method for each kind of edit. */
  interface Visitor<T> {
    /** A value is given. */
    T set(Set edit);

    /** Something is taken away. */
    T remove(Remove edit);

    /** Entries are added to a list. */
    T add(Add edit);
  }
}
