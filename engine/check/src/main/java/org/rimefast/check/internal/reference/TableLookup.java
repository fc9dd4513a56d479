package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.rimefast.check.Evidence;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;

/** Looks a table up, row by row, and says which rows may hold and why. */
final class TableLookup {
  private static final int SHOWN = 3;

  /** What is known of an input. */
  private record Input(Outcome<Outcome.Interval> number, Outcome<String> word) {
    boolean isKnown() {
      return number.value().isPresent() || word.value().isPresent();
    }

    Outcome<?> outcome() {
      return number.and(word);
    }
  }

  /** A row that may hold, or {@code otherwise}. */
  private record Possible(String name, Value result, Span span) {}

  private final Value.Lookup lookup;
  private final Table table;
  private final Scope scope;

  TableLookup(Value.Lookup lookup, Scope scope) {
    this.lookup = lookup;
    this.table = lookup.table();
    this.scope = scope;
  }

  Outcome<Outcome.Interval> number() {
    return find(
        result -> Words.si((Value.Literal) result),
        all ->
            Optional.of(
                new Outcome.Interval(
                    all.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                    all.stream().mapToDouble(Double::doubleValue).max().orElseThrow())));
  }

  Outcome<String> word() {
    return find(
        result -> ((Value.Word) result).word(),
        all -> new HashSet<>(all).size() == 1 ? Optional.of(all.get(0)) : Optional.empty());
  }

  /**
   * The result of the rows that may hold.
   *
   * @param each what one row gives
   * @param joined what is known of the result if each of several may hold
   */
  private <E, T> Outcome<T> find(Function<Value, E> each, Function<List<E>, Optional<T>> joined) {
    Outcome<Integer> owner = ElementFinder.find(lookup.owner(), scope);
    if (owner.value().isEmpty()) {
      return Outcome.without(owner);
    }
    Scope inner = scope.alone(owner.value().get());
    List<Input> inputs = table.inputs().stream().map(value -> input(value, inner)).toList();
    List<Possible> possible = possible(inputs);
    if (possible.isEmpty()) {
      return Outcome.failed(
          "no row of the table \"" + table.name() + "\" speaks of " + said(inputs, inner));
    }
    List<E> results = possible.stream().map(row -> each.apply(row.result())).toList();
    boolean same = new HashSet<>(results).size() == 1;
    if (!same && !inputs.stream().allMatch(Input::isKnown)) {
      Outcome<T> open = Outcome.nothing();
      for (Input input : inputs) {
        open = input.isKnown() ? open : open.and(input.outcome());
      }
      return open;
    }
    Optional<T> result = joined.apply(results);
    List<Evidence.Fact> facts = new ArrayList<>();
    facts.add(new Evidence.Fact("table " + table.name(), rows(possible)));
    Outcome<T> found =
        new Outcome<>(result, Optional.empty(), List.of(), List.of(), List.of())
            .and(Outcome.seen(facts))
            .and(Outcome.seen(seen(inputs, inner)));
    return result.isPresent()
        ? found.and(owner)
        : found.and(
            Outcome.none(
                "within the plan's tolerance more than one row of the table \""
                    + table.name()
                    + "\" may hold"));
  }

  private static Input input(Value value, Scope inner) {
    ValueFinder values = new ValueFinder(inner);
    return value.type() instanceof ValueType.Number
        ? new Input(values.number(value), Outcome.nothing())
        : new Input(Outcome.nothing(), values.text(value));
  }

  private List<Possible> possible(List<Input> inputs) {
    List<Possible> possible = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      Table.Row row = table.rows().get(i);
      if (mayHold(row.cells(), inputs)) {
        possible.add(new Possible("row " + (i + 1) + ": ", row.result(), row.span()));
      }
    }
    table
        .otherwise()
        .filter(last -> last.cases().stream().anyMatch(cells -> mayHold(cells, inputs)))
        .ifPresent(last -> possible.add(new Possible("otherwise ", last.result(), last.span())));
    return possible;
  }

  private static boolean mayHold(List<Table.Cell> cells, List<Input> inputs) {
    for (int i = 0; i < cells.size(); i++) {
      if (!mayHold(cells.get(i), inputs.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean mayHold(Table.Cell cell, Input input) {
    if (cell instanceof Table.Cell.Words words) {
      return input.word().value().map(words.words()::contains).orElse(true);
    }
    return !(cell instanceof Table.Cell.Numbers numbers)
        || input
            .number()
            .value()
            .map(number -> numbers.ranges().stream().anyMatch(range -> mayLie(number, range)))
            .orElse(true);
  }

  /** True unless all of the interval certainly lies below the range or all of it above. */
  private static boolean mayLie(Outcome.Interval number, Table.Range range) {
    boolean below =
        range.low().isPresent()
            && is(
                number,
                range.low().get().included() ? Comparison.LESS_THAN : Comparison.AT_MOST,
                range.low().get());
    boolean above =
        range.high().isPresent()
            && is(
                number,
                range.high().get().included() ? Comparison.MORE_THAN : Comparison.AT_LEAST,
                range.high().get());
    return !below && !above;
  }

  private static boolean is(Outcome.Interval number, Comparison comparison, Table.End end) {
    double limit = Words.si(end.limit());
    return Intervals.compare(comparison, number.least(), number.most(), limit, limit) == Truth.TRUE;
  }

  /** {@code row 2: flush or covered | >= 50 % | 2-1/2 in}. */
  private String rows(List<Possible> possible) {
    String said =
        possible.stream().limit(SHOWN).map(this::row).collect(Collectors.joining("; or "));
    int more = possible.size() - SHOWN;
    return more > 0 ? said + "; or " + more + " more" : said;
  }

  private String row(Possible row) {
    String text = scope.source().textOf(row.span()).replaceAll("\\s+", " ");
    return row.name() + text.replaceAll("^\\| ?| ?\\|$", "");
  }

  /** What the inputs are. */
  private List<Evidence.Fact> seen(List<Input> inputs, Scope inner) {
    List<Evidence.Fact> facts = new ArrayList<>();
    Describer describer = new Describer(inner);
    for (int i = 0; i < inputs.size(); i++) {
      String name = describer.value(table.inputs().get(i));
      int column = i;
      inputs
          .get(i)
          .number()
          .value()
          .ifPresent(
              number ->
                  facts.add(new Evidence.Fact(name, Printing.interval(number, unit(column)))));
      inputs.get(i).word().value().ifPresent(word -> facts.add(new Evidence.Fact(name, word)));
    }
    return facts;
  }

  private String said(List<Input> inputs, Scope inner) {
    return seen(inputs, inner).stream()
        .map(fact -> fact.name() + " " + fact.value())
        .collect(Collectors.joining(" and "));
  }

  /** The unit that the author of a column wrote first, else the plan's or the vocabulary's. */
  private Unit unit(int column) {
    ValueType.Number type = (ValueType.Number) table.inputs().get(column).type();
    for (Table.Row row : table.rows()) {
      if (row.cells().get(column) instanceof Table.Cell.Numbers numbers) {
        for (Table.Range range : numbers.ranges()) {
          Optional<Table.End> end = range.low().or(range::high);
          if (end.isPresent()
              && end.get().limit().quantity().unit().dimension().equals(type.dimension())) {
            return end.get().limit().quantity().unit();
          }
        }
      }
    }
    return type.dimension().equals(Dimension.LENGTH)
        ? scope.facts().plan().units()
        : type.example();
  }
}
