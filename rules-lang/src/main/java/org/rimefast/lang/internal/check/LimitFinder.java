package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;

/**
 * Finds the limits that a requirement sets, and what the requirement would be with another number
 * in the place of one of them.
 *
 * <p>What else a requirement joins to its limit by {@code and} or {@code or} is left out; within
 * {@code each bracket ...} all of it stays, because there it says which elements are meant.
 */
final class LimitFinder implements Condition.Visitor<List<LimitFinder.Found>> {
  /**
   * A limit.
   *
   * @param asked which way it bounds the measured value: at least or at most
   * @param value the limit
   * @param with the condition with another number, both ends counted in
   */
  record Found(Comparison asked, Value value, Function<Value.Literal, Condition> with) {
    Found wrapped(Function<Condition, Condition> around) {
      return new Found(asked, value, literal -> around.apply(with.apply(literal)));
    }
  }

  private final boolean negated;
  private final boolean whole;

  private LimitFinder(boolean negated, boolean whole) {
    this.negated = negated;
    this.whole = whole;
  }

  static List<Found> in(Condition requirement) {
    return requirement.accept(new LimitFinder(false, false));
  }

  @Override
  public List<Found> visitAnd(Condition.And and) {
    return parts(and.parts(), !negated, parts -> new Condition.And(parts, and.span()));
  }

  @Override
  public List<Found> visitOr(Condition.Or or) {
    return parts(or.parts(), negated, parts -> new Condition.Or(parts, or.span()));
  }

  /**
   * The limits of several parts.
   *
   * @param allNeeded true if all of them must hold: then those that set other limits stay, because
   *     a waiver that bounds one number lets no other go
   */
  private List<Found> parts(
      List<Condition> parts, boolean allNeeded, Function<List<Condition>, Condition> joined) {
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      int place = i;
      for (Found one : parts.get(i).accept(this)) {
        found.add(
            one.wrapped(
                changed -> {
                  List<Condition> kept = new ArrayList<>();
                  for (int j = 0; j < parts.size(); j++) {
                    if (j == place) {
                      kept.add(changed);
                    } else if (whole || (allNeeded && isOfNumbers(parts.get(j)))) {
                      kept.add(parts.get(j));
                    }
                  }
                  return kept.size() == 1 ? kept.get(0) : joined.apply(kept);
                }));
      }
    }
    return found;
  }

  private static boolean isOfNumbers(Condition part) {
    return !in(part).isEmpty()
        || (part instanceof Condition.Compare compare
            && compare.left().type() instanceof ValueType.Number);
  }

  @Override
  public List<Found> visitNot(Condition.Not not) {
    return not.part().accept(new LimitFinder(!negated, whole)).stream()
        .map(one -> one.wrapped(changed -> new Condition.Not(changed, not.span())))
        .toList();
  }

  @Override
  public List<Found> visitCompare(Condition.Compare compare) {
    boolean isEquality =
        compare.comparison() == Comparison.EQUAL || compare.comparison() == Comparison.NOT_EQUAL;
    if (isEquality || !(compare.left().type() instanceof ValueType.Number)) {
      return List.of();
    }
    if (isFixed(compare.left()) && isFixed(compare.right())) {
      return List.of();
    }
    boolean limitLeft = isFixed(compare.left());
    boolean floor =
        (compare.comparison() == Comparison.AT_LEAST
                || compare.comparison() == Comparison.MORE_THAN)
            != limitLeft;
    Value limit = limitLeft ? compare.left() : compare.right();
    return List.of(
        new Found(
            floor != negated ? Comparison.AT_LEAST : Comparison.AT_MOST,
            limit,
            literal -> with(compare, limitLeft, floor, literal)));
  }

  private Condition with(
      Condition.Compare compare, boolean limitLeft, boolean floor, Value.Literal literal) {
    Value measured = limitLeft ? compare.right() : compare.left();
    Value limit = limitLeft ? compare.left() : compare.right();
    Value.Literal here = new Value.Literal(literal.quantity(), literal.type(), limit.span());
    // Under a negation what is no worse must be false, the number itself counted out.
    Comparison sign =
        negated
            ? (floor ? Comparison.MORE_THAN : Comparison.LESS_THAN)
            : (floor ? Comparison.AT_LEAST : Comparison.AT_MOST);
    return new Condition.Compare(
        measured, sign, Typing.adapt(here, measured.type()), compare.span());
  }

  /** True for a value that the standard gives and no measuring changes. */
  private static boolean isFixed(Value value) {
    if (value instanceof Value.Arithmetic sum) {
      return isFixed(sum.left()) && isFixed(sum.right());
    }
    if (value instanceof Value.Conditional choice) {
      return isFixed(choice.then()) && isFixed(choice.otherwise());
    }
    return value instanceof Value.Literal
        || value instanceof Value.Named
        || value instanceof Value.Lookup;
  }

  @Override
  public List<Found> visitHolds(Condition.Holds holds) {
    return List.of();
  }

  @Override
  public List<Found> visitSame(Condition.Same same) {
    return List.of();
  }

  @Override
  public List<Found> visitIsA(Condition.IsA isA) {
    return List.of();
  }

  @Override
  public List<Found> visitQuantified(Condition.Quantified quantified) {
    boolean turned =
        switch (quantified.quantifier()) {
          case NO, AT_MOST -> !negated;
          default -> negated;
        };
    if (quantified.quantifier() == Condition.Quantified.Quantifier.EXACTLY) {
      return List.of();
    }
    return quantified.body().accept(new LimitFinder(turned, true)).stream()
        .map(
            one ->
                one.wrapped(
                    body ->
                        new Condition.Quantified(
                            quantified.quantifier(),
                            quantified.number(),
                            quantified.variable(),
                            quantified.others(),
                            quantified.where(),
                            body,
                            quantified.span())))
        .toList();
  }

  @Override
  public List<Found> visitAnswered(Condition.Answered answered) {
    return answered.question().limit().stream()
        .map(
            limit -> {
              boolean floor =
                  limit.comparison() == Comparison.AT_LEAST
                      || limit.comparison() == Comparison.MORE_THAN;
              Comparison asked = floor ? Comparison.AT_LEAST : Comparison.AT_MOST;
              return new Found(
                  asked,
                  limit.value(),
                  literal ->
                      new Condition.Answered(
                          answered.subject(),
                          answered.question().withLimit(new Question.Limit(asked, literal)),
                          answered.span()));
            })
        .toList();
  }
}
