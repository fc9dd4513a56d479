package org.rimefast.report.internal;

import java.util.List;

/** Columns of short texts: the first to the left and cut if need be, the others to the right. */
final class Table {
  private static final int LEAST = 10;

  private Table() {}

  static void write(Page page, List<List<String>> rows) {
    int[] widths = widths(rows);
    widths[0] = Math.min(widths[0], room(page, widths));
    StringBuilder lines = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder("  ");
      for (int i = 0; i < widths.length; i++) {
        String cell = i == 0 ? shortened(row.get(0), widths[0]) : VisibleText.of(row.get(i));
        String gap = " ".repeat(widths[i] - Page.length(cell));
        line.append(i == 0 ? cell + gap : "  " + gap + cell);
      }
      lines.append(line.toString().stripTrailing()).append('\n');
    }
    page.verbatim(lines.toString());
  }

  private static int[] widths(List<List<String>> rows) {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], Page.length(VisibleText.of(row.get(i))));
      }
    }
    return widths;
  }

  /** What the other columns leave for the first. */
  private static int room(Page page, int[] widths) {
    int room = page.width() - 2;
    for (int i = 1; i < widths.length; i++) {
      room -= widths[i] + 2;
    }
    return Math.max(LEAST, room);
  }

  /** The end of a name tells files apart, so that is what stays. */
  private static String shortened(String name, int width) {
    String shown = VisibleText.of(name);
    int length = Page.length(shown);
    return length <= width
        ? shown
        : "..." + shown.substring(shown.offsetByCodePoints(0, length - width + 3));
  }
}
