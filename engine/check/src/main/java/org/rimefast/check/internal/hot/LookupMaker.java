package org.rimefast.check.internal.hot;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;

/** Makes the nodes of tables. */
final class LookupMaker {
  private LookupMaker() {}

  /** All rows of a table; the cases for {@code otherwise} are rows too. */
  private static List<Table.Row> rows(Table table) {
    List<Table.Row> rows = new ArrayList<>(table.rows());
    table
        .otherwise()
        .ifPresent(
            last ->
                last.cases()
                    .forEach(cells -> rows.add(new Table.Row(cells, last.result(), last.span()))));
    return rows;
  }

  static double[] numbers(Table table) {
    return rows(table).stream()
        .mapToDouble(row -> Words.si((Value.Literal) row.result()))
        .toArray();
  }

  static int[] words(Table table) {
    List<String> list = ((ValueType.Choice) table.type()).words();
    return rows(table).stream()
        .mapToInt(row -> list.indexOf(((Value.Word) row.result()).word()))
        .toArray();
  }

  static Lookups.Rows rows(
      Table table,
      Nodes.Find owner,
      int own,
      Nodes.@Nullable Read[] numbers,
      Nodes.@Nullable Choose[] words,
      int slots) {
    List<Table.Row> rows = rows(table);
    Lookups.Cell[][] cells = new Lookups.Cell[rows.size()][];
    for (int i = 0; i < cells.length; i++) {
      List<Table.Cell> row = rows.get(i).cells();
      cells[i] = new Lookups.Cell[row.size()];
      for (int j = 0; j < row.size(); j++) {
        cells[i][j] = cell(row.get(j), table.inputs().get(j).type());
      }
    }
    return new Lookups.Rows(owner, own, numbers, words, cells, slots);
  }

  private static Lookups.Cell cell(Table.Cell cell, ValueType type) {
    if (cell instanceof Table.Cell.Words words) {
      List<String> list = ((ValueType.Choice) type).words();
      boolean[] in = new boolean[list.size()];
      words.words().forEach(word -> in[list.indexOf(word)] = true);
      return new Lookups.WordCell(in);
    }
    return cell instanceof Table.Cell.Numbers numbers
        ? ranges(numbers.ranges())
        : (inputs, input) -> true;
  }

  private static Lookups.Cell ranges(List<Table.Range> ranges) {
    int count = ranges.size();
    double[] low = new double[count];
    double[] high = new double[count];
    boolean[] withLow = new boolean[count];
    boolean[] withHigh = new boolean[count];
    for (int i = 0; i < count; i++) {
      Table.End from = ranges.get(i).low().orElse(null);
      Table.End to = ranges.get(i).high().orElse(null);
      low[i] = from == null ? Double.NEGATIVE_INFINITY : Words.si(from.limit());
      high[i] = to == null ? Double.POSITIVE_INFINITY : Words.si(to.limit());
      withLow[i] = from == null || from.included();
      withHigh[i] = to == null || to.included();
    }
    return new Lookups.NumberCell(low, withLow, high, withHigh);
  }
}
