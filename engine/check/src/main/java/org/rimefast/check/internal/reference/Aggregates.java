package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.rimefast.check.Evidence;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Arithmetics;
import org.rimefast.check.internal.Sparing;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Aggregate.Function;

/** Makes one number of many, by the definitions. */
final class Aggregates {
  private static final int SHOWN = 3;

  private Aggregates() {}

  /** One element that counts, certainly or perhaps, and its number. */
  private record Item(int handle, boolean certain, Outcome<Outcome.Interval> number) {
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
    Asked asked =
        Asked.of(scope, aggregate.variable(), Sparing.of(scope.words(), aggregate).orElse(null));
    for (int handle : asked.handles()) {
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
          Arithmetics.adds(aggregate.function()) && scope.facts().standsForMany(handle)
              ? Reasons.howMany(scope.facts(), handle)
              : aggregate.of().isPresent()
                  ? new ValueFinder(inner).number(aggregate.of().get())
                  : Outcome.of(new Outcome.Interval(1, 1));
      items.add(new Item(handle, counts.truth() == Truth.TRUE, number));
      boolean nearest = aggregate.function() == Function.NEAREST;
      trouble = trouble.and(nearest ? number.withoutFacts() : number).and(Reasons.outcome(counts));
    }
    boolean any = scope.facts().members(aggregate.variable().noun()).length > 0;
    Outcome<Outcome.Interval> result = finish(aggregate, items, trouble, quote, any);
    return result.value().isPresent() && aggregate.function() == Function.NEAREST
        ? result.and(nearest(aggregate, items, scope))
        : result;
  }

  /** Which element is the nearest, or those that can be it. */
  private static Outcome<Void> nearest(Value.Aggregate aggregate, List<Item> items, Scope scope) {
    double most = items.stream().filter(Item::certain).mapToDouble(Item::most).min().orElseThrow();
    List<Item> nearest = items.stream().filter(item -> item.least() <= most).toList();
    String names =
        nearest.stream()
            .limit(SHOWN)
            .map(item -> scope.facts().name(item.handle()).label())
            .collect(Collectors.joining(" or "));
    String more = nearest.size() > SHOWN ? " or " + (nearest.size() - SHOWN) + " more" : "";
    Evidence.Fact fact =
        new Evidence.Fact("nearest " + AggregateWords.singular(aggregate), names + more);
    Outcome<Void> seen = Outcome.seen(List.of(fact));
    return nearest.size() == 1 ? seen.and(nearest.get(0).number().onlyFacts()) : seen;
  }

  private static Outcome<Outcome.Interval> finish(
      Value.Aggregate aggregate,
      List<Item> items,
      Outcome<Outcome.Interval> trouble,
      String quote,
      boolean any) {
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
      return Outcome.none(AggregateWords.nothing(aggregate, any));
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
      case SMALLEST, NEAREST ->
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
