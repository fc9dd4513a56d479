package org.rimefast.cli;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** {@code rimefast standards}. */
final class StandardsCommand {
  private final Checks checks;
  private final Output out;

  StandardsCommand(Checks checks, Output out) {
    this.checks = checks;
    this.out = out;
  }

  /** Lists what is shipped, and gives the exit code. */
  int run() {
    List<String[]> rows = new ArrayList<>();
    for (String name : checks.shippedNames()) {
      Standard standard = compiled(name);
      int rules = standard.rules().size();
      rows.add(
          new String[] {
            name, standard.edition(), rules == 1 ? "1 rule" : rules + " rules", standard.title()
          });
    }
    out.print(rows.isEmpty() ? "No standard is shipped with this program.\n" : table(rows));
    return ExitCode.SOUND;
  }

  private Standard compiled(String name) {
    SourceText text =
        checks
            .shipped(name)
            .orElseThrow(() -> new IllegalStateException("standard " + name + " is not there"));
    Compilation compilation = checks.compile(text, FileFinder.shipped(checks));
    return compilation
        .standard()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "the shipped standard "
                        + name
                        + " does not compile: "
                        + compilation.diagnostics().get(0).headline()));
  }

  private static String table(List<String[]> rows) {
    StringBuilder table = new StringBuilder();
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.length; column++) {
        line.append(row[column]);
        if (column < row.length - 1) {
          line.append(" ".repeat(width(rows, column) - row[column].length() + 2));
        }
      }
      table.append(line.toString().stripTrailing()).append('\n');
    }
    return table.toString();
  }

  private static int width(List<String[]> rows, int column) {
    int width = 0;
    for (String[] row : rows) {
      width = Math.max(width, row[column].length());
    }
    return width;
  }
}
