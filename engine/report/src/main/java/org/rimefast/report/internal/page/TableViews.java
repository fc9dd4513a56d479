package org.rimefast.report.internal.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.rule.Table;

/** Makes of a table what a page shows: its canonical text, taken apart into cells. */
final class TableViews {
  private static final String OTHERWISE = "otherwise ";

  private TableViews() {}

  static StandardView.TableView view(Table table, Paraphrase paraphrase) {
    Paraphrase.Result said = paraphrase.ofTable(table);
    List<String> lines = said.text().map(text -> text.lines().toList()).orElse(List.of());
    List<List<String>> rows = new ArrayList<>();
    Optional<String> otherwise = Optional.empty();
    for (String line : lines) {
      String row = line.strip();
      if (row.startsWith("|")) {
        rows.add(cells(row));
      } else if (row.startsWith(OTHERWISE)) {
        otherwise = Optional.of(row.substring(OTHERWISE.length()));
      }
    }
    return new StandardView.TableView(
        Anchors.table(table.name()),
        table.name(),
        table.noun().singular(),
        lines.isEmpty() ? List.of() : inputs(lines.get(0), table),
        rows,
        otherwise,
        said.text().isPresent() ? Optional.empty() : Optional.of(RuleViews.said(said)),
        table.because(),
        table.source());
  }

  private static List<String> cells(String row) {
    List<String> cells = new ArrayList<>();
    for (String cell : row.substring(1, row.length() - 1).split("\\|", -1)) {
      cells.add(cell.strip());
    }
    return cells;
  }

  /** What stands behind {@code by}; numbered, should a comma within one of them hide its end. */
  private static List<String> inputs(String head, Table table) {
    String by = " by ";
    int from = head.indexOf(by, "table ".length() + table.name().length()) + by.length();
    List<String> inputs = List.of(head.substring(from).split(", ", -1));
    if (inputs.size() == table.inputs().size()) {
      return inputs;
    }
    List<String> numbered = new ArrayList<>();
    for (int i = 1; i <= table.inputs().size(); i++) {
      numbered.add("input " + i + " of: " + head.substring(from));
    }
    return numbered;
  }
}
