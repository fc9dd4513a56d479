package org.rimefast.lang.internal.check;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;

/**
 * Counts how many definitions a condition stands for, so that terms of terms cannot make a short
 * text into endless work.
 */
final class TermUses implements Condition.Visitor<Integer>, Value.Visitor<Integer> {
  private final IdentityHashMap<Object, Integer> sizes;

  /**
   * A counter.
   *
   * @param sizes what each known term stands for, itself counted in, and each table; by identity
   */
  TermUses(IdentityHashMap<Object, Integer> sizes) {
    this.sizes = sizes;
  }

  int count(Condition condition) {
    return condition.accept(this);
  }

  int count(List<Value> values) {
    return values.stream().mapToInt(value -> value.accept(this)).sum();
  }

  private int sum(List<Condition> parts) {
    return parts.stream().mapToInt(this::count).sum();
  }

  private int sum(Optional<Condition> part) {
    return part.map(this::count).orElse(0);
  }

  private int arguments(List<Argument> arguments) {
    return arguments.stream().mapToInt(this::argument).sum();
  }

  private int argument(Argument argument) {
    if (argument instanceof Value value) {
      return value.accept(this);
    }
    if (argument instanceof Argument.Along along) {
      return arguments(along.arguments());
    }
    return argument instanceof Argument.Those those ? sum(those.where()) : 0;
  }

  @Override
  public Integer visitAnd(Condition.And and) {
    return sum(and.parts());
  }

  @Override
  public Integer visitOr(Condition.Or or) {
    return sum(or.parts());
  }

  @Override
  public Integer visitNot(Condition.Not not) {
    return count(not.part());
  }

  @Override
  public Integer visitCompare(Condition.Compare compare) {
    return compare.left().accept(this) + compare.right().accept(this);
  }

  @Override
  public Integer visitHolds(Condition.Holds holds) {
    return arguments(holds.arguments());
  }

  @Override
  public Integer visitIsA(Condition.IsA isA) {
    return isA.term().map(term -> sizes.getOrDefault(term, 1)).orElse(0);
  }

  @Override
  public Integer visitSame(Condition.Same same) {
    return 0;
  }

  @Override
  public Integer visitAnswered(Condition.Answered answered) {
    return 0;
  }

  @Override
  public Integer visitQuantified(Condition.Quantified quantified) {
    return sum(quantified.where()) + count(quantified.body());
  }

  @Override
  public Integer visitLiteral(Value.Literal literal) {
    return 0;
  }

  @Override
  public Integer visitWord(Value.Word word) {
    return 0;
  }

  @Override
  public Integer visitText(Value.Text text) {
    return 0;
  }

  @Override
  public Integer visitNamed(Value.Named named) {
    return 0;
  }

  @Override
  public Integer visitOf(Value.Of of) {
    return arguments(of.arguments());
  }

  @Override
  public Integer visitArithmetic(Value.Arithmetic arithmetic) {
    return arithmetic.left().accept(this) + arithmetic.right().accept(this);
  }

  @Override
  public Integer visitLookup(Value.Lookup lookup) {
    return sizes.getOrDefault(lookup.table(), 1);
  }

  @Override
  public Integer visitConditional(Value.Conditional conditional) {
    return count(conditional.condition())
        + conditional.then().accept(this)
        + conditional.otherwise().accept(this);
  }

  @Override
  public Integer visitAggregate(Value.Aggregate aggregate) {
    return sum(aggregate.where()) + aggregate.of().map(value -> value.accept(this)).orElse(0);
  }
}
