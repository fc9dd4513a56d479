package org.rimefast.lang.internal.syntax;

import java.util.List;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.Span;
import org.rimefast.units.Quantity;

/** A run of words, numbers, texts and parentheses whose meaning the vocabulary gives. */
public record Phrase(List<Item> items, Span span) implements Operand {
  /** Copies the list. */
  public Phrase {
    items = List.copyOf(items);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.visitPhrase(this);
  }

  /** One part of a phrase. */
  public sealed interface Item {
    /** The text it was read from. */
    Span span();
  }

  /** A word. */
  public record WordItem(String text, Span span) implements Item {}

  /** A number with or without a unit. */
  public record QuantityItem(Quantity quantity, Span span) implements Item {}

  /** Quoted text. */
  public record TextItem(String text, Span span) implements Item {}

  /** {@code at least} and the like. */
  public record BoundItem(Bound bound, Span span) implements Item {}

  /** {@code (where ...)}. */
  public record WhereItem(Clause condition, Span span) implements Item {}

  /** Parentheses around a condition or a value. */
  public record GroupItem(Clause condition, Span span) implements Item {}

  /**
   * {@code (if ... then ... otherwise ...)}.
   *
   * @param otherwise another such item, alone in a phrase, after {@code otherwise if}
   */
  public record ConditionalItem(Clause condition, Operand then, Operand otherwise, Span span)
      implements Item {}

  /** Words that set a bound. */
  public enum Bound {
    AT_LEAST("at least"),
    AT_MOST("at most"),
    MORE_THAN("more than"),
    LESS_THAN("less than"),
    EXACTLY("exactly");

    private final String words;

    Bound(String words) {
      this.words = words;
    }

    /** The comparison that it stands for. */
    public Comparison comparison() {
      return switch (this) {
        case AT_LEAST -> Comparison.AT_LEAST;
        case AT_MOST -> Comparison.AT_MOST;
        case MORE_THAN -> Comparison.MORE_THAN;
        case LESS_THAN -> Comparison.LESS_THAN;
        case EXACTLY -> Comparison.EQUAL;
      };
    }

    /** As written. */
    public String words() {
      return words;
    }
  }
}
