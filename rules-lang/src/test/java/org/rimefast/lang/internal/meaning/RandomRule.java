package org.rimefast.lang.internal.meaning;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Typed rules made at random, with a constant that stands in some of them once or more. */
final class RandomRule {
  static final ValueType.Number LENGTH = new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE);
  static final ValueType.Number NUMBER = new ValueType.Number(Dimension.NUMBER, Units.ONE);
  static final Noun BOX = new Noun("box", "box", "boxes", List.of());
  static final Property DEPTH = new Property("depth", "depth", BOX, List.of(), LENGTH);
  static final Property OFFSET = new Property("offset", "offset", BOX, List.of(), LENGTH);
  static final Relation WITHIN =
      new Relation(
          "within",
          Relation.Form.BE,
          "within _ of _",
          "within _ of _",
          BOX,
          List.of(new Slot.Of(LENGTH, true), new Slot.Element(BOX)));
  static final String CHANGED = "limit";

  private static final Span SPAN = new Span(0, 1);

  private final Random random;
  private final Constant constant;

  RandomRule(Random random, int millimetres) {
    this.random = random;
    this.constant =
        new Constant(CHANGED, length(millimetres), Optional.empty(), Optional.empty(), SPAN);
  }

  Rule rule() {
    Variable subject = new Variable(0, BOX);
    return new Rule(
        "r",
        "t",
        subject,
        random.nextBoolean() ? Optional.of(condition(2, 1)) : Optional.empty(),
        random.nextInt(4) == 0 ? Optional.of(condition(1, 1)) : Optional.empty(),
        condition(3, 1),
        Severity.HOLD,
        "layout",
        "b",
        "s",
        "sentence",
        SPAN,
        SPAN);
  }

  static Value.Literal length(int millimetres) {
    return new Value.Literal(
        new Quantity(Rational.of(millimetres), Units.MILLIMETRE, millimetres + " mm"),
        LENGTH,
        SPAN);
  }

  private static Value.Literal number(int number) {
    return new Value.Literal(
        new Quantity(Rational.of(number), Units.ONE, Integer.toString(number)), NUMBER, SPAN);
  }

  private Condition condition(int depth, int variables) {
    int kind = depth == 0 ? 0 : random.nextInt(8);
    return switch (kind) {
      case 1 ->
          new Condition.And(
              List.of(condition(depth - 1, variables), condition(depth - 1, variables)), SPAN);
      case 2 ->
          new Condition.Or(
              List.of(condition(depth - 1, variables), condition(depth - 1, variables)), SPAN);
      case 3 -> new Condition.Not(condition(depth - 1, variables), SPAN);
      case 4, 5 -> quantified(depth, variables);
      case 6 ->
          new Condition.Holds(
              WITHIN, it(variables), List.of(value(depth - 1, variables), it(variables)), SPAN);
      default -> compare(depth, variables);
    };
  }

  private Condition quantified(int depth, int variables) {
    Quantifier quantifier = Quantifier.values()[random.nextInt(Quantifier.values().length)];
    boolean counted =
        quantifier != Quantifier.EACH
            && quantifier != Quantifier.SOME
            && quantifier != Quantifier.NO;
    return new Condition.Quantified(
        quantifier,
        counted ? 1 + random.nextInt(2) : 0,
        new Variable(variables, BOX),
        random.nextInt(4) == 0,
        random.nextBoolean() ? Optional.of(condition(depth - 1, variables + 1)) : Optional.empty(),
        condition(depth - 1, variables + 1),
        SPAN);
  }

  private Condition compare(int depth, int variables) {
    int kind = random.nextInt(9);
    Comparison comparison =
        kind < 8
            ? List.of(
                    Comparison.AT_LEAST,
                    Comparison.MORE_THAN,
                    Comparison.AT_MOST,
                    Comparison.LESS_THAN)
                .get(kind % 4)
            : Comparison.EQUAL;
    boolean plain = depth > 0 && random.nextInt(4) == 0;
    return plain
        ? new Condition.Compare(
            plain(depth - 1, variables), comparison, plain(depth - 1, variables), SPAN)
        : new Condition.Compare(value(depth, variables), comparison, value(depth, variables), SPAN);
  }

  /** A length. */
  private Value value(int depth, int variables) {
    int kind = depth == 0 ? random.nextInt(5) : random.nextInt(11);
    return switch (kind) {
      case 0, 1 -> new Value.Of(DEPTH, it(variables), List.of(), SPAN);
      case 2 -> new Value.Of(OFFSET, it(variables), List.of(), SPAN);
      case 3 -> length(random.nextInt(7) - 3);
      case 4 -> new Value.Named(constant, SPAN);
      case 5 -> arithmetic(Value.Arithmetic.Operator.PLUS, depth, variables);
      case 6 -> arithmetic(Value.Arithmetic.Operator.MINUS, depth, variables);
      case 7 ->
          new Value.Arithmetic(
              Value.Arithmetic.Operator.TIMES,
              plain(depth - 1, variables),
              value(depth - 1, variables),
              LENGTH,
              SPAN);
      case 8 ->
          new Value.Arithmetic(
              Value.Arithmetic.Operator.DIVIDED_BY,
              value(depth - 1, variables),
              plain(depth - 1, variables),
              LENGTH,
              SPAN);
      case 9 ->
          new Value.Conditional(
              condition(depth - 1, variables),
              value(depth - 1, variables),
              value(depth - 1, variables),
              LENGTH,
              SPAN);
      default -> {
        Value.Aggregate.Function[] all = Value.Aggregate.Function.values();
        yield new Value.Aggregate(
            all[1 + random.nextInt(all.length - 1)],
            new Variable(variables, BOX),
            Optional.of(condition(depth - 1, variables + 1)),
            Optional.of(value(depth - 1, variables + 1)),
            LENGTH,
            SPAN);
      }
    };
  }

  private Value arithmetic(Value.Arithmetic.Operator operator, int depth, int variables) {
    return new Value.Arithmetic(
        operator, value(depth - 1, variables), value(depth - 1, variables), LENGTH, SPAN);
  }

  /** A plain number. */
  private Value plain(int depth, int variables) {
    int kind = depth <= 0 ? 0 : random.nextInt(4);
    return switch (kind) {
      case 1 ->
          new Value.Aggregate(
              Value.Aggregate.Function.COUNT,
              new Variable(variables, BOX),
              Optional.of(condition(depth - 1, variables + 1)),
              Optional.empty(),
              NUMBER,
              SPAN);
      case 2 ->
          new Value.Arithmetic(
              Value.Arithmetic.Operator.DIVIDED_BY,
              value(depth - 1, variables),
              value(depth - 1, variables),
              NUMBER,
              SPAN);
      default -> number(random.nextInt(5) - 2);
    };
  }

  private Reference it(int variables) {
    return new Reference.Bound(new Variable(random.nextInt(variables), BOX));
  }
}
