package org.rimefast.lang.internal.syntax;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.Span;

/** A condition, or what stands after {@code must}. */
public sealed interface Clause {
  /** The text it was read from. */
  Span span();

  /** Does {@code visitor}'s part for this kind of node. */
  <R> R accept(Visitor<R> visitor);

  /** {@code and} or {@code or}. */
  record Conjunction(boolean isAnd, Span span) {}

  /**
   * Parts joined by {@code and}, {@code or}, or (which is a mistake) both.
   *
   * @param parts two or more
   * @param conjunctions one fewer than parts
   */
  record Joined(List<Clause> parts, List<Conjunction> conjunctions, Span span) implements Clause {
    /** Copies the lists. */
    public Joined {
      parts = List.copyOf(parts);
      conjunctions = List.copyOf(conjunctions);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitJoined(this);
    }
  }

  /** {@code not} before a part. */
  record Negated(Clause part, Span span) implements Clause {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitNegated(this);
    }
  }

  /** Parentheses around what stands after {@code must}. */
  record Grouped(Clause part, List<With> with, Span span) implements Clause {
    /** Copies the list. */
    public Grouped {
      with = List.copyOf(with);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitGrouped(this);
    }
  }

  /**
   * One plain statement.
   *
   * @param subject what it is said of; empty after {@code must}, and where verb and subject stand
   *     in one phrase
   * @param tail what is said
   * @param with comparisons after {@code with}
   */
  record Leaf(Optional<Operand> subject, Tail tail, List<With> with, Span span) implements Clause {
    /** Copies the list. */
    public Leaf {
      with = List.copyOf(with);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitLeaf(this);
    }
  }

  /**
   * {@code (for each box (where ...), ...)}: what follows the comma is asked of as many as said.
   */
  record ForMany(Phrase many, Clause part, Span span) implements Clause {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitForMany(this);
    }
  }

  /** A sign of comparison and what stands after it. */
  record Sign(Comparison comparison, Operand right, Span span) {}

  /** {@code with} and a comparison. */
  record With(Operand operand, Optional<Sign> sign, Span span) {}

  /** What a plain statement says. */
  sealed interface Tail {
    /**
     * {@code is}, {@code are} or {@code be}, and a value, a comparison or a relation.
     *
     * @param operand what follows, unless a sign does
     */
    record Be(Word verb, boolean not, Optional<Operand> operand, Optional<Sign> sign)
        implements Tail {}

    /**
     * {@code has}, {@code have} or {@code does not have}, and a comparison.
     *
     * @param verb the word that agrees with the subject: {@code does} if there is a {@code not}
     */
    record Have(Word verb, boolean not, Operand operand, Optional<Sign> sign) implements Tail {}

    /** {@code does not} or {@code do not}, and a verb. */
    record DoNot(Word verb, Operand operand) implements Tail {}

    /** A verb after {@code must}; in a condition, its subject too, or a group in parentheses. */
    record Verb(Operand operand) implements Tail {}

    /** A sign, with the subject on its left. */
    record Compare(Sign sign) implements Tail {}
  }

  /** One method for each kind. */
  interface Visitor<R> {
    R visitJoined(Joined joined);

    R visitNegated(Negated negated);

    R visitGrouped(Grouped grouped);

    R visitLeaf(Leaf leaf);

    R visitForMany(ForMany forMany);
  }
}
