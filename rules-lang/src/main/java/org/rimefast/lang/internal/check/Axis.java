package org.rimefast.lang.internal.check;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Rational;

/**
 * All that one input of a table can be, cut into parts that no cell of its column divides: the
 * words of its list; or the limits of its cells and what lies between them, below and above.
 */
final class Axis {
  /**
   * A part. Words have a word; a limit has the same end twice; what lies between has two ends, or
   * one of them only.
   */
  private record Part(@Nullable String word, Table.@Nullable End low, Table.@Nullable End high) {
    boolean isLimit() {
      return low != null && low.included();
    }
  }

  private final boolean whole;
  private final List<Part> parts;

  private Axis(boolean whole, List<Part> parts) {
    this.whole = whole;
    this.parts = parts;
  }

  /** The axis of an input with these cells in its column. */
  static Axis of(Value input, List<Table.Cell> column) {
    List<Part> parts = new ArrayList<>();
    if (input.type() instanceof ValueType.Choice choice) {
      choice.words().forEach(word -> parts.add(new Part(word, null, null)));
      return new Axis(false, parts);
    }
    boolean whole = ((ValueType.Number) input.type()).whole();
    TreeMap<Rational, Value.Literal> limits = new TreeMap<>();
    for (Table.Cell cell : column) {
      if (cell instanceof Table.Cell.Numbers numbers) {
        for (Table.Range range : numbers.ranges()) {
          range.low().ifPresent(end -> limits.putIfAbsent(Ranges.at(end), end.limit()));
          range.high().ifPresent(end -> limits.putIfAbsent(Ranges.at(end), end.limit()));
        }
      }
    }
    Table.End before = null;
    for (Value.Literal limit : limits.values()) {
      Table.End open = new Table.End(limit, false);
      Table.End closed = new Table.End(limit, true);
      parts.add(new Part(null, before, open));
      parts.add(new Part(null, closed, closed));
      before = open;
    }
    parts.add(new Part(null, before, null));
    if (whole) {
      parts.removeIf(part -> firstWhole(part) == null);
    }
    return new Axis(whole, parts);
  }

  int size() {
    return parts.size();
  }

  /** The least whole number of a part, from 0 on; null if it has none. */
  private static @Nullable BigInteger firstWhole(Part part) {
    BigInteger first = BigInteger.ZERO;
    Table.End low = part.low();
    if (low != null) {
      Rational at = Ranges.at(low);
      BigInteger floor = floor(at);
      BigInteger next = low.included() && at.isWhole() ? floor : floor.add(BigInteger.ONE);
      first = first.max(next);
    }
    Table.End high = part.high();
    if (high == null) {
      return first;
    }
    int order = Rational.of(new BigDecimal(first)).compareTo(Ranges.at(high));
    return order < 0 || (order == 0 && high.included()) ? first : null;
  }

  private static BigInteger floor(Rational number) {
    BigInteger[] parts = number.numerator().divideAndRemainder(number.denominator());
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  /** The parts that a cell has. */
  BitSet of(Table.Cell cell) {
    BitSet set = new BitSet(parts.size());
    for (int i = 0; i < parts.size(); i++) {
      set.set(i, has(cell, parts.get(i)));
    }
    return set;
  }

  private static boolean has(Table.Cell cell, Part part) {
    if (cell instanceof Table.Cell.Words words) {
      return words.words().contains(part.word());
    }
    return !(cell instanceof Table.Cell.Numbers numbers)
        || numbers.ranges().stream().anyMatch(range -> has(range, part));
  }

  /** No range ends within a part, so it has all of the part or nothing. */
  private static boolean has(Table.Range range, Part part) {
    return startsBefore(range.low(), part) && endsAfter(range.high(), part);
  }

  private static boolean startsBefore(Optional<Table.End> low, Part part) {
    if (low.isEmpty()) {
      return true;
    }
    Table.End from = part.low();
    if (from == null) {
      return false;
    }
    int order = Ranges.at(low.get()).compareTo(Ranges.at(from));
    return order < 0 || (order == 0 && (low.get().included() || !from.included()));
  }

  private static boolean endsAfter(Optional<Table.End> high, Part part) {
    if (high.isEmpty()) {
      return true;
    }
    Table.End to = part.high();
    if (to == null) {
      return false;
    }
    int order = Ranges.at(high.get()).compareTo(Ranges.at(to));
    return order > 0 || (order == 0 && (high.get().included() || !to.included()));
  }

  /** A cell that has these parts and no others. */
  Table.Cell cell(BitSet set) {
    if (set.cardinality() == parts.size()) {
      return new Table.Cell.Any();
    }
    if (parts.get(0).word() != null) {
      List<String> words = new ArrayList<>();
      set.stream().forEach(i -> words.add(String.valueOf(parts.get(i).word())));
      return new Table.Cell.Words(words);
    }
    List<Table.Range> ranges = new ArrayList<>();
    int i = set.nextSetBit(0);
    while (i >= 0) {
      int end = set.nextClearBit(i);
      ranges.add(
          new Table.Range(
              Optional.ofNullable(parts.get(i).low()),
              Optional.ofNullable(parts.get(end - 1).high())));
      i = set.nextSetBit(end);
    }
    return new Table.Cell.Numbers(ranges);
  }

  /** Says one value of a part: {@code covered}, {@code 80 %}, {@code between 50 % and 80 %}. */
  String example(int i) {
    Part part = parts.get(i);
    if (part.word() != null) {
      return part.word();
    }
    BigInteger number = whole ? firstWhole(part) : null;
    if (number != null) {
      return number.toString();
    }
    Table.End low = part.low();
    Table.End high = part.high();
    if (part.isLimit() && low != null) {
      return text(low);
    }
    if (low != null && high != null) {
      return "between " + text(low) + " and " + text(high);
    }
    return high != null ? "less than " + text(high) : low != null ? "more than " + text(low) : "0";
  }

  private static String text(Table.End end) {
    return end.limit().quantity().text();
  }
}
