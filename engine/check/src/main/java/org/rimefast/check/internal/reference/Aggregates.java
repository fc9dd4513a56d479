package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.rimefast.check.Evidence;
import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Aggregate.Function;

/** Makes one number of many, by the definitions. */
final class Aggregates {
  private Aggregates() {}

  /** One element that counts, certainly or perhaps, and its number. */
  private record Item(boolean certain, Outcome<Outcome.Interval> number) {
    double least() {
      return number.value().orElseThrow().least();
    }

    double most() {
      return number.value().orElseThrow().most();
    }
  }

  static Outcome<Outcome.Interval> of(Value.Aggregate aggregate, Scope scope, String quote) {
    List<Item> items = new ArrayList<>();
    Outcome<Outcome.Interval> trouble = Outcome.nothing();
    for (int handle : scope.facts().members(aggregate.variable().noun())) {
      Scope inner = scope.with(aggregate.variable(), handle);
      Evidence counts =
          aggregate
              .where()
              .map(where -> new ConditionExplainer(inner, true).explain(where))
              .orElse(Reasons.ALWAYS);
      if (counts.truth() == Truth.FALSE) {
        continue;
      }
      Outcome<Outcome.Interval> number =
          aggregate.of().isPresent()
              ? new ValueFinder(inner).number(aggregate.of().get())
              : Outcome.of(new Outcome.Interval(1, 1));
      items.add(new Item(counts.truth() == Truth.TRUE, number));
      trouble = trouble.and(number).and(Reasons.outcome(counts));
    }
    return finish(aggregate, items, trouble, quote);
  }

  private static Outcome<Outcome.Interval> finish(
      Value.Aggregate aggregate,
      List<Item> items,
      Outcome<Outcome.Interval> trouble,
      String quote) {
    boolean anyMissing = items.stream().anyMatch(item -> item.number().value().isEmpty());
    boolean anyUncertain = items.stream().anyMatch(item -> !item.certain());
    boolean noneCertain = items.stream().noneMatch(Item::certain);
    Function function = aggregate.function();
    if (trouble.failure().isPresent() || anyMissing) {
      return Outcome.without(trouble);
    }
    if (function == Function.COUNT) {
      double certain = (double) items.stream().filter(Item::certain).count();
      return found(certain, items.size(), trouble);
    }
    if (function == Function.TOTAL) {
      return found(
          sum(items, item -> item.certain() ? item.least() : Math.min(0, item.least())),
          sum(items, item -> item.certain() ? item.most() : Math.max(0, item.most())),
          trouble);
    }
    if (noneCertain && !anyUncertain) {
      return Outcome.none("\"" + quote + "\" has no value: there are none to look at");
    }
    if (noneCertain || (function == Function.AVERAGE && anyUncertain)) {
      return Outcome.<Outcome.Interval>none("\"" + quote + "\" depends on which of them count")
          .and(trouble);
    }
    return switch (function) {
      case AVERAGE ->
          found(
              sum(items, Item::least) / items.size(),
              sum(items, Item::most) / items.size(),
              trouble);
      case SMALLEST ->
          found(
              items.stream().mapToDouble(Item::least).min().orElseThrow(),
              items.stream().filter(Item::certain).mapToDouble(Item::most).min().orElseThrow(),
              trouble);
      case LARGEST ->
          found(
              items.stream().filter(Item::certain).mapToDouble(Item::least).max().orElseThrow(),
              items.stream().mapToDouble(Item::most).max().orElseThrow(),
              trouble);
      case COUNT, TOTAL -> throw new IllegalStateException("done above: " + function);
    };
  }

  /** Adds one after the other, as the hot pass does, so that both round alike. */
  private static double sum(List<Item> items, ToDoubleFunction<Item> number) {
    double sum = 0;
    for (Item item : items) {
      sum += number.applyAsDouble(item);
    }
    return sum;
  }

  private static Outcome<Outcome.Interval> found(
      double least, double most, Outcome<Outcome.Interval> trouble) {
    return Outcome.of(new Outcome.Interval(least, most)).and(trouble);
  }
}
