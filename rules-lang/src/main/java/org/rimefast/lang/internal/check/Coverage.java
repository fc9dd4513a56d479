package org.rimefast.lang.internal.check;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/**
 * Whether the rows of a table speak of every case, and each case of one row only.
 *
 * <p>Every input is cut into parts that no row divides, so that a case is one part of each input.
 * Rows that have no case in common leave a gap exactly if they have fewer cases together than there
 * are, which is counted and not tried out.
 */
final class Coverage {
  /** How many parts the cases for {@code otherwise} may fall into. */
  static final int MOST_CASES = 1_000;

  private static final int MOST_STEPS = 100_000;
  private static final int SHOWN = 3;

  private final List<Axis> axes = new ArrayList<>();
  private final List<String> names;
  private final List<List<BitSet>> rows = new ArrayList<>();
  private int steps;

  /**
   * The coverage of some rows.
   *
   * @param names what the inputs are called
   */
  Coverage(List<Value> inputs, List<String> names, List<Table.Row> rows) {
    this.names = names;
    for (int i = 0; i < inputs.size(); i++) {
      int column = i;
      axes.add(Axis.of(inputs.get(i), rows.stream().map(row -> row.cells().get(column)).toList()));
    }
    for (Table.Row row : rows) {
      List<BitSet> cells = new ArrayList<>();
      for (int i = 0; i < inputs.size(); i++) {
        cells.add(axes.get(i).of(row.cells().get(i)));
      }
      this.rows.add(cells);
    }
  }

  /**
   * What is wrong.
   *
   * @param named the table's name
   */
  List<Diagnostic> faults(Statement.Table statement, Span named) {
    List<Diagnostic> faults = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).stream().anyMatch(BitSet::isEmpty)) {
        faults.add(
            Problems.error(
                DiagnosticCode.UNREACHABLE_ROW,
                statement.rows().get(i).span(),
                "A cell of this row holds no whole number from 0 on, so the row is never reached.",
                "Take the row out, or widen the cell."));
      }
    }
    overlaps(statement, faults);
    if (!faults.isEmpty()) {
      return faults;
    }
    Optional<String> gap = gap();
    Optional<Span> otherwise = statement.otherwise().map(Statement.Cell::span);
    if (gap.isPresent() && otherwise.isEmpty()) {
      faults.add(
          Problems.error(
              DiagnosticCode.TABLE_GAP,
              named,
              English.sentence(gap.get()) + ": no row speaks of it.",
              "Add a row for it; or below the rows, for all that is left: otherwise and a result."));
    }
    if (gap.isEmpty() && otherwise.isPresent()) {
      faults.add(
          Problems.error(
              DiagnosticCode.UNREACHABLE_ROW,
              otherwise.get(),
              "The rows speak of every case, so \"otherwise\" is never reached.",
              "Take it out."));
    }
    return faults;
  }

  private void overlaps(Statement.Table statement, List<Diagnostic> faults) {
    int found = 0;
    for (int j = 1; j < rows.size() && found < SHOWN; j++) {
      for (int i = 0; i < j && found < SHOWN; i++) {
        Optional<List<Integer>> common = common(rows.get(i), rows.get(j));
        if (common.isPresent()) {
          found++;
          faults.add(
              Problems.related(
                  DiagnosticCode.TABLE_OVERLAP,
                  statement.rows().get(j).span(),
                  "Rows "
                      + (i + 1)
                      + " and "
                      + (j + 1)
                      + " both speak of "
                      + example(common.get())
                      + ".",
                  "Narrow one of them, so that each case has one row.",
                  List.of(
                      new Diagnostic.Related(
                          statement.rows().get(i).span(), "row " + (i + 1) + " is here"))));
        }
      }
    }
  }

  /** A case of both rows. */
  private static Optional<List<Integer>> common(List<BitSet> one, List<BitSet> other) {
    List<Integer> parts = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      BitSet both = (BitSet) one.get(i).clone();
      both.and(other.get(i));
      if (both.isEmpty()) {
        return Optional.empty();
      }
      parts.add(both.nextSetBit(0));
    }
    return Optional.of(parts);
  }

  /** A case that no row has, if there is one; rows have no case in common. */
  private Optional<String> gap() {
    BitSet all = new BitSet();
    all.set(0, rows.size());
    if (covered(all, 0).equals(cases(0))) {
      return Optional.empty();
    }
    List<Integer> parts = new ArrayList<>();
    BitSet left = all;
    for (int i = 0; i < axes.size(); i++) {
      for (int part = 0; part < axes.get(i).size(); part++) {
        BitSet with = with(left, i, part);
        if (!covered(with, i + 1).equals(cases(i + 1))) {
          parts.add(part);
          left = with;
          break;
        }
      }
    }
    return Optional.of(example(parts));
  }

  /** Those of some rows that have a part of an input. */
  private BitSet with(BitSet some, int input, int part) {
    BitSet with = new BitSet();
    some.stream().filter(row -> rows.get(row).get(input).get(part)).forEach(with::set);
    return with;
  }

  /** How many cases there are from an input on. */
  private BigInteger cases(int from) {
    BigInteger all = BigInteger.ONE;
    for (Axis axis : axes.subList(from, axes.size())) {
      all = all.multiply(BigInteger.valueOf(axis.size()));
    }
    return all;
  }

  /** How many of these some rows have. */
  private BigInteger covered(BitSet some, int from) {
    BigInteger sum = BigInteger.ZERO;
    for (int row = some.nextSetBit(0); row >= 0; row = some.nextSetBit(row + 1)) {
      BigInteger own = BigInteger.ONE;
      for (BitSet cell : rows.get(row).subList(from, axes.size())) {
        own = own.multiply(BigInteger.valueOf(cell.cardinality()));
      }
      sum = sum.add(own);
    }
    return sum;
  }

  private String example(List<Integer> parts) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      said.add(names.get(i) + " " + axes.get(i).example(parts.get(i)));
    }
    return String.join(" and ", said);
  }

  /**
   * Puts in {@code cases} all cases that no row has.
   *
   * @return false if they fall into too many parts
   */
  boolean rest(List<List<Table.Cell>> cases) {
    BitSet all = new BitSet();
    all.set(0, rows.size());
    steps = 0;
    return rest(all, List.of(), cases);
  }

  private boolean rest(BitSet some, List<Table.Cell> before, List<List<Table.Cell>> cases) {
    int input = before.size();
    if (++steps > MOST_STEPS || cases.size() > MOST_CASES) {
      return false;
    }
    if (some.isEmpty()) {
      List<Table.Cell> cells = new ArrayList<>(before);
      while (cells.size() < axes.size()) {
        cells.add(new Table.Cell.Any());
      }
      cases.add(cells);
      return cases.size() <= MOST_CASES;
    }
    if (input == axes.size() || covered(some, input).equals(cases(input))) {
      return true;
    }
    Map<BitSet, BitSet> alike = new LinkedHashMap<>();
    for (int part = 0; part < axes.get(input).size(); part++) {
      alike.computeIfAbsent(with(some, input, part), rows -> new BitSet()).set(part);
    }
    for (Map.Entry<BitSet, BitSet> group : alike.entrySet()) {
      List<Table.Cell> cells = new ArrayList<>(before);
      cells.add(axes.get(input).cell(group.getValue()));
      if (!rest(group.getKey(), cells, cases)) {
        return false;
      }
    }
    return true;
  }
}
