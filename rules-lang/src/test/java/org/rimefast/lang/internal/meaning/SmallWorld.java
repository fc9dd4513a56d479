package org.rimefast.lang.internal.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Rational;

/**
 * A few boxes with exact numbers, and a plain evaluator over them, written for tests alone. A value
 * that is not there, such as the smallest of none, is empty; so is a truth that is not known.
 */
final class SmallWorld
    implements Condition.Visitor<Optional<Boolean>>, Value.Visitor<Optional<Rational>> {
  enum Said {
    MET,
    BROKEN,
    NOT_APPLICABLE,
    UNDECIDED
  }

  private final int[] depths;
  private final int[] offsets;
  private final Rational limit;
  private final List<Integer> bound = new ArrayList<>();

  private SmallWorld(int[] depths, int[] offsets, Rational limit) {
    this.depths = depths;
    this.offsets = offsets;
    this.limit = limit;
  }

  /** A world of up to three boxes; the same seed gives the same boxes, whatever the limit. */
  static SmallWorld of(long seed, Rational limit) {
    Random random = new Random(seed);
    int boxes = 1 + random.nextInt(3);
    int[] depths = new int[boxes];
    int[] offsets = new int[boxes];
    for (int i = 0; i < boxes; i++) {
      depths[i] = random.nextInt(9) - 2;
      offsets[i] = random.nextInt(7) - 3;
    }
    return new SmallWorld(depths, offsets, limit);
  }

  /** What a rule says of the first box. */
  Said ask(Rule rule) {
    bound.clear();
    bound.add(0);
    Optional<Boolean> where = rule.where().map(this::truth).orElse(Optional.of(true));
    Optional<Boolean> onlyIf = rule.onlyIf().map(this::truth).orElse(Optional.of(true));
    if (is(where, false) || is(onlyIf, false)) {
      return Said.NOT_APPLICABLE;
    }
    Optional<Boolean> must = truth(rule.requirement());
    if (is(must, true)) {
      return Said.MET;
    }
    return is(must, false) && is(where, true) && is(onlyIf, true) ? Said.BROKEN : Said.UNDECIDED;
  }

  private Optional<Boolean> truth(Condition condition) {
    return condition.accept(this);
  }

  private static boolean is(Optional<Boolean> truth, boolean value) {
    return truth.isPresent() && truth.get() == value;
  }

  private int element(Reference reference) {
    return bound.get(((Reference.Bound) reference).variable().index());
  }

  private static Optional<Boolean> all(List<Optional<Boolean>> parts) {
    if (parts.stream().anyMatch(part -> is(part, false))) {
      return Optional.of(false);
    }
    return parts.stream().allMatch(part -> is(part, true)) ? Optional.of(true) : Optional.empty();
  }

  private static Optional<Boolean> not(Optional<Boolean> part) {
    return part.map(value -> !value);
  }

  @Override
  public Optional<Boolean> visitAnd(Condition.And and) {
    return all(and.parts().stream().map(this::truth).toList());
  }

  @Override
  public Optional<Boolean> visitOr(Condition.Or or) {
    return not(all(or.parts().stream().map(part -> not(truth(part))).toList()));
  }

  @Override
  public Optional<Boolean> visitNot(Condition.Not not) {
    return not(truth(not.part()));
  }

  @Override
  public Optional<Boolean> visitCompare(Condition.Compare compare) {
    Optional<Rational> left = compare.left().accept(this);
    Optional<Rational> right = compare.right().accept(this);
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    int order = left.get().compareTo(right.get());
    return Optional.of(
        switch (compare.comparison()) {
          case AT_LEAST -> order >= 0;
          case MORE_THAN -> order > 0;
          case AT_MOST -> order <= 0;
          case LESS_THAN -> order < 0;
          case EQUAL -> order == 0;
          case NOT_EQUAL -> order != 0;
        });
  }

  /** Within a length of each other: by the difference of their offsets. */
  @Override
  public Optional<Boolean> visitHolds(Condition.Holds holds) {
    int other = element((Reference) holds.arguments().get(1));
    int gap = Math.abs(offsets[element(holds.subject())] - offsets[other]);
    return ((Value) holds.arguments().get(0))
        .accept(this)
        .map(reach -> millimetres(gap).compareTo(reach) <= 0);
  }

  @Override
  public Optional<Boolean> visitIsA(Condition.IsA isA) {
    throw new IllegalStateException("no kinds here");
  }

  @Override
  public Optional<Boolean> visitSame(Condition.Same same) {
    return Optional.of(element(same.left()) == element(same.right()));
  }

  @Override
  public Optional<Boolean> visitAnswered(Condition.Answered answered) {
    throw new IllegalStateException("no readings here");
  }

  /** Where it is not known which of the two is meant, nothing is known unless they are equal. */
  @Override
  public Optional<Rational> visitLookup(Value.Lookup lookup) {
    throw new AssertionError("a small world has no tables");
  }

  @Override
  public Optional<Rational> visitConditional(Value.Conditional conditional) {
    Optional<Boolean> first = truth(conditional.condition());
    Optional<Rational> then = conditional.then().accept(this);
    Optional<Rational> otherwise = conditional.otherwise().accept(this);
    if (first.isEmpty()) {
      return then.equals(otherwise) ? then : Optional.empty();
    }
    return first.get() ? then : otherwise;
  }

  @Override
  public Optional<Boolean> visitQuantified(Condition.Quantified quantified) {
    int sure = 0;
    int perhaps = 0;
    int failing = 0;
    int perhapsFailing = 0;
    for (int i = 0; i < depths.length; i++) {
      if (quantified.others() && i == bound.get(0)) {
        continue;
      }
      bound.add(i);
      Optional<Boolean> where = quantified.where().map(this::truth).orElse(Optional.of(true));
      Optional<Boolean> body = truth(quantified.body());
      bound.remove(bound.size() - 1);
      Optional<Boolean> holds = all(List.of(where, body));
      Optional<Boolean> fails = all(List.of(where, not(body)));
      sure += is(holds, true) ? 1 : 0;
      perhaps += is(holds, false) ? 0 : 1;
      failing += is(fails, true) ? 1 : 0;
      perhapsFailing += is(fails, false) ? 0 : 1;
    }
    int number = quantified.number();
    return switch (quantified.quantifier()) {
      case EACH -> atMost(failing, perhapsFailing, 0);
      case ALL_BUT -> atMost(failing, perhapsFailing, number);
      case SOME -> not(atMost(sure, perhaps, 0));
      case NO -> atMost(sure, perhaps, 0);
      case AT_LEAST -> not(atMost(sure, perhaps, number - 1));
      case AT_MOST -> atMost(sure, perhaps, number);
      case EXACTLY ->
          all(List.of(atMost(sure, perhaps, number), not(atMost(sure, perhaps, number - 1))));
    };
  }

  private static Optional<Boolean> atMost(int sure, int perhaps, int number) {
    return sure > number
        ? Optional.of(false)
        : perhaps <= number ? Optional.of(true) : Optional.empty();
  }

  private static Rational millimetres(int number) {
    return RandomRule.length(number).quantity().si();
  }

  @Override
  public Optional<Rational> visitLiteral(Value.Literal literal) {
    return Optional.of(literal.quantity().si());
  }

  @Override
  public Optional<Rational> visitNamed(Value.Named named) {
    return Optional.of(limit);
  }

  @Override
  public Optional<Rational> visitWord(Value.Word word) {
    throw new IllegalStateException("no words here");
  }

  @Override
  public Optional<Rational> visitText(Value.Text text) {
    throw new IllegalStateException("no texts here");
  }

  @Override
  public Optional<Rational> visitOf(Value.Of of) {
    int[] numbers = of.property().equals(RandomRule.DEPTH) ? depths : offsets;
    return Optional.of(millimetres(numbers[element(of.owner())]));
  }

  @Override
  public Optional<Rational> visitArithmetic(Value.Arithmetic arithmetic) {
    Optional<Rational> left = arithmetic.left().accept(this);
    Optional<Rational> right = arithmetic.right().accept(this);
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    return switch (arithmetic.operator()) {
      case PLUS -> Optional.of(left.get().plus(right.get()));
      case MINUS -> Optional.of(left.get().minus(right.get()));
      case TIMES -> Optional.of(left.get().times(right.get()));
      case DIVIDED_BY ->
          right.get().compareTo(Rational.ZERO) == 0
              ? Optional.empty()
              : Optional.of(left.get().dividedBy(right.get()));
    };
  }

  /** Where it is not known which elements count, nothing is known of the aggregate. */
  @Override
  public Optional<Rational> visitAggregate(Value.Aggregate aggregate) {
    List<Rational> values = new ArrayList<>();
    for (int i = 0; i < depths.length; i++) {
      bound.add(i);
      Optional<Boolean> where = aggregate.where().map(this::truth).orElse(Optional.of(true));
      Optional<Rational> value =
          aggregate.of().isPresent()
              ? aggregate.of().get().accept(this)
              : Optional.of(Rational.of(1));
      bound.remove(bound.size() - 1);
      if (where.isEmpty() || (where.get() && value.isEmpty())) {
        return Optional.empty();
      }
      if (where.get()) {
        values.add(value.orElseThrow());
      }
    }
    Rational total = Rational.ZERO;
    for (Rational value : values) {
      total = total.plus(value);
    }
    return switch (aggregate.function()) {
      case COUNT, TOTAL -> Optional.of(total);
      case SMALLEST, NEAREST -> values.stream().min(Rational::compareTo);
      case LARGEST -> values.stream().max(Rational::compareTo);
      case AVERAGE ->
          values.isEmpty()
              ? Optional.empty()
              : Optional.of(total.dividedBy(Rational.of(values.size())));
    };
  }
}
