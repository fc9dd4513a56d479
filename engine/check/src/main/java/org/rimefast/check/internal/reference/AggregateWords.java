package org.rimefast.check.internal.reference;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;

/** How counts, totals and the like are spoken of. */
final class AggregateWords {
  private AggregateWords() {}

  /** What one of its elements is called: a term where the sentence has one. */
  static String singular(Value.Aggregate aggregate) {
    return conditions(aggregate).stream()
        .filter(
            condition ->
                condition instanceof Condition.IsA isA
                    && isA.subject().equals(new Reference.Bound(aggregate.variable())))
        .findFirst()
        .flatMap(condition -> ((Condition.IsA) condition).term())
        .map(Term::singular)
        .orElse(aggregate.variable().noun().singular());
  }

  /** The condition behind {@code per face}: each element's own link leads to a certain element. */
  static Optional<Condition.Same> per(Value.Aggregate aggregate) {
    return conditions(aggregate).stream()
        .filter(
            condition ->
                condition instanceof Condition.Same same
                    && same.left() instanceof Reference.Linked linked
                    && linked.owner().equals(new Reference.Bound(aggregate.variable())))
        .findFirst()
        .map(Condition.Same.class::cast);
  }

  private static List<Condition> conditions(Value.Aggregate aggregate) {
    return aggregate.where().map(AggregateWords::flat).orElse(List.of());
  }

  private static List<Condition> flat(Condition condition) {
    return condition instanceof Condition.And and
        ? and.parts().stream().flatMap(part -> flat(part).stream()).toList()
        : List.of(condition);
  }

  /**
   * Why there is no smallest, largest, average or nearest one.
   *
   * @param any true if there are such elements in the plan, but none of them counts
   */
  static String nothing(Value.Aggregate aggregate, boolean any) {
    String what =
        switch (aggregate.function()) {
          case SMALLEST -> "smallest " + number(aggregate);
          case LARGEST -> "largest " + number(aggregate);
          case AVERAGE -> "average " + number(aggregate);
          case NEAREST -> "nearest one";
          case COUNT, TOTAL -> throw new IllegalStateException("0 is a number: " + aggregate);
        };
    boolean besides = aggregate.where().orElse(null) instanceof Condition.Not;
    boolean nearest = aggregate.function() == Value.Aggregate.Function.NEAREST;
    return "there is no "
        + (nearest && besides ? "other " : any ? "such " : "")
        + singular(aggregate)
        + ", so there is no "
        + what;
  }

  private static String number(Value.Aggregate aggregate) {
    Value of = aggregate.of().orElse(null);
    if (of instanceof Value.Lookup lookup) {
      return lookup.table().name();
    }
    return of instanceof Value.Of each && each.arguments().isEmpty()
        ? each.property().pattern()
        : "value";
  }
}
