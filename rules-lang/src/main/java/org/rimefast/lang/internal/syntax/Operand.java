package org.rimefast.lang.internal.syntax;

import java.util.List;
import org.rimefast.lang.source.Span;

/** What stands on one side of a comparison, or around a verb. */
public sealed interface Operand permits Phrase, Operand.Chain, Operand.Minus {
  /** The text it was read from. */
  Span span();

  /** Does {@code visitor}'s part for this kind of node. */
  <R> R accept(Visitor<R> visitor);

  /** The signs and words of arithmetic. */
  enum Operator {
    PLUS,
    MINUS,
    TIMES,
    DIVIDED_BY
  }

  /**
   * Operands of one rank joined from left to right.
   *
   * @param operands two or more
   * @param operators one fewer than operands
   */
  record Chain(List<Operand> operands, List<Operator> operators, Span span) implements Operand {
    /** Copies the lists. */
    public Chain {
      operands = List.copyOf(operands);
      operators = List.copyOf(operators);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitChain(this);
    }
  }

  /** A minus sign before a phrase. */
  record Minus(Phrase phrase, Span span) implements Operand {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitMinus(this);
    }
  }

  /** One method for each kind. */
  interface Visitor<R> {
    R visitPhrase(Phrase phrase);

    R visitChain(Chain chain);

    R visitMinus(Minus minus);
  }
}
