package org.rimefast.lang.internal.meaning;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Rational;

/**
 * Whether a value is above or below zero whatever the plan: 1 for one that is never below, -1 for
 * one that is never above, 0 for one of which that is not known. What a plan gives, such as a
 * length, may be of either sign.
 */
final class Signs implements Value.Visitor<Integer> {
  private final Predicate<Value> isChanged;
  private final Rational before;
  private final Rational after;

  Signs(Predicate<Value> isChanged, Rational before, Rational after) {
    this.isChanged = isChanged;
    this.before = before;
    this.after = after;
  }

  int of(Value value) {
    return value.accept(this);
  }

  private int number(Value value, Value.Literal literal) {
    int one = literal.quantity().si().compareTo(Rational.ZERO);
    if (!isChanged.test(value)) {
      return Integer.signum(one);
    }
    int was = before.compareTo(Rational.ZERO);
    int is = after.compareTo(Rational.ZERO);
    return Integer.signum(was) == Integer.signum(is) ? Integer.signum(is) : 0;
  }

  @Override
  public Integer visitLiteral(Value.Literal literal) {
    return number(literal, literal);
  }

  @Override
  public Integer visitNamed(Value.Named named) {
    return number(named, named.constant().value());
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
  public Integer visitOf(Value.Of of) {
    return 0;
  }

  @Override
  public Integer visitArithmetic(Value.Arithmetic arithmetic) {
    int left = of(arithmetic.left());
    int right = of(arithmetic.right());
    return switch (arithmetic.operator()) {
      case PLUS -> left == right ? left : 0;
      case MINUS -> left == -right ? left : 0;
      case TIMES, DIVIDED_BY -> left * right;
    };
  }

  @Override
  public Integer visitAggregate(Value.Aggregate aggregate) {
    return switch (aggregate.function()) {
      case COUNT -> 1;
      case TOTAL, SMALLEST, NEAREST, LARGEST, AVERAGE -> aggregate.of().map(this::of).orElse(0);
    };
  }

  @Override
  public Integer visitLookup(Value.Lookup lookup) {
    List<Integer> signs =
        Stream.concat(
                lookup.table().rows().stream().map(Table.Row::result),
                lookup.table().otherwise().stream().map(Table.Otherwise::result))
            .map(this::of)
            .distinct()
            .toList();
    return signs.size() == 1 ? signs.get(0) : 0;
  }

  @Override
  public Integer visitConditional(Value.Conditional conditional) {
    int then = of(conditional.then());
    return then == of(conditional.otherwise()) ? then : 0;
  }
}
