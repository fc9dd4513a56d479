package org.rimefast.lang.internal.message;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;

/** Writes what a table says, in the words that rows are written in. */
public final class TableText {
  private TableText() {}

  /** Its rows, and {@code otherwise} if it has one, each on its own. */
  public static List<String> rows(Table table) {
    List<String> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      List<String> cells = new ArrayList<>(row.cells().stream().map(TableText::cell).toList());
      cells.add(result(row.result()));
      rows.add("| " + String.join(" | ", cells) + " |");
    }
    table.otherwise().ifPresent(last -> rows.add("otherwise " + result(last.result())));
    return rows;
  }

  private static String result(Value value) {
    return value instanceof Value.Literal literal
        ? literal.quantity().text()
        : ((Value.Word) value).word();
  }

  private static String cell(Table.Cell cell) {
    if (cell instanceof Table.Cell.Words words) {
      return String.join(" or ", words.words());
    }
    return cell instanceof Table.Cell.Numbers numbers
        ? numbers.ranges().stream().map(TableText::range).collect(Collectors.joining(" or "))
        : "any";
  }

  private static String range(Table.Range range) {
    if (range.low().isPresent() && range.low().equals(range.high())) {
      return text(range.low().get());
    }
    List<String> ends = new ArrayList<>();
    range.low().ifPresent(end -> ends.add((end.included() ? ">= " : "> ") + text(end)));
    range.high().ifPresent(end -> ends.add((end.included() ? "<= " : "< ") + text(end)));
    return String.join(" and ", ends);
  }

  private static String text(Table.End end) {
    return end.limit().quantity().text();
  }
}
