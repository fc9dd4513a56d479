package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Rational;

/** Sets of numbers, exactly. */
final class Ranges {
  private Ranges() {}

  static Rational at(Table.End end) {
    return end.limit().quantity().si();
  }

  /** The numbers that compare so with a limit. */
  static Table.Range of(Comparison comparison, Value.Literal limit) {
    Optional<Table.End> with = Optional.of(new Table.End(limit, true));
    Optional<Table.End> without = Optional.of(new Table.End(limit, false));
    return switch (comparison) {
      case AT_LEAST -> new Table.Range(with, Optional.empty());
      case MORE_THAN -> new Table.Range(without, Optional.empty());
      case AT_MOST -> new Table.Range(Optional.empty(), with);
      case LESS_THAN -> new Table.Range(Optional.empty(), without);
      case EQUAL -> new Table.Range(with, with);
      case NOT_EQUAL -> throw new IllegalStateException("no range: " + limit);
    };
  }

  /** What all of them have in common. */
  static Optional<Table.Range> intersection(List<Table.Range> ranges) {
    Table.@Nullable End low = null;
    Table.@Nullable End high = null;
    for (Table.Range range : ranges) {
      Table.End from = range.low().orElse(null);
      if (from != null && (low == null || compareLow(from, low) > 0)) {
        low = from;
      }
      Table.End to = range.high().orElse(null);
      if (to != null && (high == null || compareHigh(to, high) < 0)) {
        high = to;
      }
    }
    Table.Range common = new Table.Range(Optional.ofNullable(low), Optional.ofNullable(high));
    return isEmpty(common) ? Optional.empty() : Optional.of(common);
  }

  private static boolean isEmpty(Table.Range range) {
    if (range.low().isEmpty() || range.high().isEmpty()) {
      return false;
    }
    int order = at(range.low().get()).compareTo(at(range.high().get()));
    return order > 0
        || (order == 0 && !(range.low().get().included() && range.high().get().included()));
  }

  /** What any of them has, in order and apart from each other. */
  static List<Table.Range> union(List<Table.Range> ranges) {
    List<Table.Range> sorted = new ArrayList<>(ranges);
    sorted.sort(
        Comparator.comparing(
            range -> range.low().orElse(null), Comparator.nullsFirst(Ranges::compareLow)));
    List<Table.Range> merged = new ArrayList<>();
    for (Table.Range range : sorted) {
      Table.Range last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && meets(last, range)) {
        merged.set(merged.size() - 1, new Table.Range(last.low(), farther(last, range)));
      } else {
        merged.add(range);
      }
    }
    return merged;
  }

  /** True if nothing lies between the first and the second, which does not begin before it. */
  private static boolean meets(Table.Range first, Table.Range second) {
    if (first.high().isEmpty() || second.low().isEmpty()) {
      return true;
    }
    int order = at(second.low().get()).compareTo(at(first.high().get()));
    return order < 0
        || (order == 0 && (second.low().get().included() || first.high().get().included()));
  }

  private static Optional<Table.End> farther(Table.Range first, Table.Range second) {
    if (first.high().isEmpty() || second.high().isEmpty()) {
      return Optional.empty();
    }
    return compareHigh(first.high().get(), second.high().get()) >= 0 ? first.high() : second.high();
  }

  private static int compareLow(Table.End a, Table.End b) {
    int order = at(a).compareTo(at(b));
    return order != 0 ? order : Boolean.compare(b.included(), a.included());
  }

  private static int compareHigh(Table.End a, Table.End b) {
    int order = at(a).compareTo(at(b));
    return order != 0 ? order : Boolean.compare(a.included(), b.included());
  }
}
