package org.rimefast.lang.internal.meaning;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.units.Rational;

/** Finds how conditions and values move when one number, wherever it stands, becomes another. */
final class Directions implements Condition.Visitor<Direction>, Value.Visitor<Direction> {
  private final Predicate<Value> isChanged;
  private final Direction number;
  private final Signs signs;

  /**
   * For one change.
   *
   * @param isChanged true of the values that are the changed number
   * @param before what it was, in SI units
   * @param after what it is
   */
  Directions(Predicate<Value> isChanged, Rational before, Rational after) {
    this.isChanged = isChanged;
    this.number = after.compareTo(before) > 0 ? Direction.UP : Direction.DOWN;
    this.signs = new Signs(isChanged, before, after);
  }

  Direction of(Optional<Condition> condition) {
    return condition.map(part -> part.accept(this)).orElse(Direction.STILL);
  }

  private Direction joined(List<Condition> parts) {
    Direction all = Direction.STILL;
    for (Condition part : parts) {
      all = all.with(part.accept(this));
    }
    return all;
  }

  @Override
  public Direction visitAnd(Condition.And and) {
    return joined(and.parts());
  }

  @Override
  public Direction visitOr(Condition.Or or) {
    return joined(or.parts());
  }

  @Override
  public Direction visitNot(Condition.Not not) {
    return not.part().accept(this).reversed();
  }

  @Override
  public Direction visitCompare(Condition.Compare compare) {
    Direction left = compare.left().accept(this);
    Direction right = compare.right().accept(this);
    return switch (compare.comparison()) {
      case AT_LEAST, MORE_THAN -> left.with(right.reversed());
      case AT_MOST, LESS_THAN -> left.reversed().with(right);
      case EQUAL, NOT_EQUAL -> {
        Direction both = left.with(right.reversed());
        yield both == Direction.STILL || both == Direction.UNKNOWN ? both : Direction.ASIDE;
      }
    };
  }

  @Override
  public Direction visitHolds(Condition.Holds holds) {
    Direction all = Direction.STILL;
    for (int i = 0; i < holds.arguments().size(); i++) {
      Direction one = of(holds.arguments().get(i));
      boolean widens = holds.relation().slots().get(i) instanceof Slot.Of of && of.widens();
      all = all.with(one == Direction.STILL || widens ? one : Direction.UNKNOWN);
    }
    return all;
  }

  private Direction of(Argument argument) {
    if (argument instanceof Value value) {
      return value.accept(this);
    }
    if (argument instanceof Argument.Those those) {
      return of(those.where());
    }
    Direction all = Direction.STILL;
    if (argument instanceof Argument.Along along) {
      for (Argument one : along.arguments()) {
        all = all.with(of(one));
      }
    }
    return all;
  }

  /** Amendments change what a rule's own sentence says, and not what its terms mean. */
  @Override
  public Direction visitIsA(Condition.IsA isA) {
    return Direction.STILL;
  }

  @Override
  public Direction visitSame(Condition.Same same) {
    return Direction.STILL;
  }

  /** The limit of a reading is not amended. */
  @Override
  public Direction visitAnswered(Condition.Answered answered) {
    return Direction.STILL;
  }

  @Override
  public Direction visitQuantified(Condition.Quantified quantified) {
    Direction where = of(quantified.where());
    Direction body = quantified.body().accept(this);
    return switch (quantified.quantifier()) {
      case EACH, ALL_BUT -> where.reversed().with(body);
      case SOME, AT_LEAST -> where.with(body);
      case NO, AT_MOST -> where.with(body).reversed();
      case EXACTLY ->
          where == Direction.STILL && body == Direction.STILL ? Direction.STILL : Direction.UNKNOWN;
    };
  }

  @Override
  public Direction visitLiteral(Value.Literal literal) {
    return isChanged.test(literal) ? number : Direction.STILL;
  }

  @Override
  public Direction visitWord(Value.Word word) {
    return Direction.STILL;
  }

  @Override
  public Direction visitText(Value.Text text) {
    return Direction.STILL;
  }

  @Override
  public Direction visitNamed(Value.Named named) {
    return isChanged.test(named) ? number : Direction.STILL;
  }

  /** What a measure makes of the value at its slot is its own affair. */
  @Override
  public Direction visitOf(Value.Of of) {
    boolean still = of.arguments().stream().allMatch(argument -> of(argument) == Direction.STILL);
    return still ? Direction.STILL : Direction.UNKNOWN;
  }

  @Override
  public Direction visitArithmetic(Value.Arithmetic arithmetic) {
    Direction left = arithmetic.left().accept(this);
    Direction right = arithmetic.right().accept(this);
    return switch (arithmetic.operator()) {
      case PLUS -> left.with(right);
      case MINUS -> left.with(right.reversed());
      case TIMES ->
          times(left, signs.of(arithmetic.right())).with(times(right, signs.of(arithmetic.left())));
      case DIVIDED_BY -> {
        int divisor = signs.of(arithmetic.right());
        boolean isNumber =
            arithmetic.right() instanceof Value.Literal
                || arithmetic.right() instanceof Value.Named;
        // A quotient falls as its divisor rises, as long as neither changes its sign. A divisor
        // that
        // is counted or summed may come to be zero, and then there is no quotient.
        Direction byDivisor =
            right == Direction.STILL
                ? Direction.STILL
                : divisor == 0 || !isNumber
                    ? Direction.UNKNOWN
                    : times(right, signs.of(arithmetic.left())).reversed();
        yield times(left, divisor).with(byDivisor);
      }
    };
  }

  private static Direction times(Direction direction, int sign) {
    if (direction == Direction.STILL) {
      return direction;
    }
    return sign == 0 ? Direction.UNKNOWN : sign > 0 ? direction : direction.reversed();
  }

  @Override
  public Direction visitAggregate(Value.Aggregate aggregate) {
    Direction where = of(aggregate.where());
    Direction value = aggregate.of().map(of -> of.accept(this)).orElse(Direction.STILL);
    Direction byWhere =
        switch (aggregate.function()) {
          case COUNT -> where;
          // Of none there is no smallest or largest: what was broken may come to be undecided.
          case SMALLEST, NEAREST, LARGEST -> where == Direction.STILL ? where : Direction.UNKNOWN;
          case TOTAL -> times(where, aggregate.of().map(signs::of).orElse(0));
          case AVERAGE -> where == Direction.STILL ? where : Direction.UNKNOWN;
        };
    return byWhere.with(value);
  }

  /** Amendments change what a rule's own sentence says, and not what a table says. */
  @Override
  public Direction visitLookup(Value.Lookup lookup) {
    return Direction.STILL;
  }

  /** Which of the two values it is must not change, or all may. */
  @Override
  public Direction visitConditional(Value.Conditional conditional) {
    return conditional.condition().accept(this) == Direction.STILL
        ? conditional.then().accept(this).with(conditional.otherwise().accept(this))
        : Direction.UNKNOWN;
  }
}
