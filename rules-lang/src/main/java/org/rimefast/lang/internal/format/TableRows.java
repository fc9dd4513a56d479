package org.rimefast.lang.internal.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Piece.Kind;
import org.rimefast.lang.source.SourceText;

/** Where the rows of a table begin, and how wide their columns are. */
final class TableRows {
  /** A cell: the index of the bar that ends it, its column, and its width without spaces around. */
  private record Cell(int bar, int column, int width) {}

  private final Set<Integer> starts = new HashSet<>();
  private final Map<Integer, Integer> padding = new HashMap<>();

  private TableRows() {}

  /** Reads the pieces of a statement that follows the grammar; other statements have no rows. */
  static TableRows of(SourceText source, List<Piece> pieces) {
    TableRows rows = new TableRows();
    List<Cell> cells = new ArrayList<>();
    int start = -1;
    int column = 0;
    int cellStart = 0;
    List<Cell> row = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).kind() != Kind.BAR) {
        continue;
      }
      if (start < 0) {
        rows.starts.add(i);
        start = i;
        column = 0;
        row.clear();
      } else {
        row.add(new Cell(i, column, width(source, pieces, cellStart, i)));
        column++;
        boolean ends = i + 1 == pieces.size() || endsRow(pieces.get(i + 1).kind());
        if (ends) {
          if (!hasComment(source, pieces, start, i)) {
            cells.addAll(row);
          }
          start = -1;
        }
      }
      cellStart = i + 1;
    }
    rows.pad(cells);
    return rows;
  }

  private static boolean endsRow(Kind next) {
    return next == Kind.BAR || next == Kind.PART;
  }

  private static int width(SourceText source, List<Piece> pieces, int from, int bar) {
    int width = 0;
    for (int i = from; i < bar; i++) {
      Kind left = i == from ? Kind.BAR : pieces.get(i - 1).kind();
      Kind earlier = i - 2 < from ? Kind.KEYWORD : pieces.get(i - 2).kind();
      boolean apart = i > from && Piece.isApart(earlier, left, pieces.get(i).kind());
      String text = StatementLayout.folded(source, pieces.get(i));
      width += text.codePointCount(0, text.length()) + (apart ? 1 : 0);
    }
    return width;
  }

  /** A row with a comment in it goes over several lines and is left out of the columns. */
  private static boolean hasComment(SourceText source, List<Piece> pieces, int start, int end) {
    for (int i = start; i < end; i++) {
      Gap gap =
          Gap.read(source.text(), pieces.get(i).span().end(), pieces.get(i + 1).span().start());
      if (!gap.comments().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private void pad(List<Cell> cells) {
    Map<Integer, Integer> widest = new HashMap<>();
    cells.forEach(cell -> widest.merge(cell.column(), cell.width(), Math::max));
    for (Cell cell : cells) {
      padding.put(cell.bar(), widest.getOrDefault(cell.column(), 0) - cell.width());
    }
  }

  /** True if the piece with this index is the first of a row. */
  boolean beginsRow(int index) {
    return starts.contains(index);
  }

  /** How many spaces more stand before the piece with this index. */
  String before(int index) {
    return " ".repeat(padding.getOrDefault(index, 0));
  }
}
