package org.rimefast.lang.internal.format;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.grammar.StatementReader.Written;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.source.SourceText;

/** Lays out a whole text: statements, and the comments between them. */
public final class TextLayout {
  private final SourceText source;
  private final List<Written> statements;
  private final Lines lines = new Lines();

  private TextLayout(SourceText source, List<Written> statements) {
    this.source = source;
    this.statements = statements;
  }

  /**
   * The text, laid out anew.
   *
   * @throws IllegalStateException if it would not read as before; that is our own bug
   */
  public static String write(SourceText source, List<Written> statements) {
    TextLayout layout = new TextLayout(source, statements);
    layout.write();
    String written = layout.lines.toString();
    if (!everything(source).equals(everything(new SourceText(source.name(), written)))) {
      throw new IllegalStateException(source.name() + " would not read as before");
    }
    return written;
  }

  private void write() {
    Gap before = gapAfter(-1);
    comments(before.comments());
    boolean blank = before.comments().isEmpty() || before.blankAtEnd();
    for (int i = 0; i < statements.size(); i++) {
      if (blank) {
        lines.blank();
      }
      Gap gap = gapAfter(i);
      int own = ofStatement(gap);
      List<Gap.Comment> ofStatement = gap.comments().subList(0, own);
      if (statements.get(i).readable()) {
        StatementLayout.write(source, statements.get(i).pieces(), lines);
        behind(ofStatement);
      } else {
        lines.line(0, asItStands(i, ofStatement));
      }
      List<Gap.Comment> between = gap.comments().subList(own, gap.comments().size());
      if (!between.isEmpty()) {
        lines.blank();
      }
      comments(between);
      blank = between.isEmpty() || gap.blankAtEnd();
    }
  }

  /** How many comments belong to the statement before them: one behind it, and indented ones. */
  private static int ofStatement(Gap gap) {
    int count = 0;
    for (Gap.Comment comment : gap.comments()) {
      if (!comment.behind() && !comment.indented()) {
        break;
      }
      count++;
    }
    return count;
  }

  private void behind(List<Gap.Comment> comments) {
    for (Gap.Comment comment : comments) {
      if (comment.behind()) {
        lines.behind(source.textOf(comment.span()));
      } else {
        lines.line(StatementLayout.PART, source.textOf(comment.span()));
      }
    }
  }

  private void comments(List<Gap.Comment> comments) {
    for (int i = 0; i < comments.size(); i++) {
      if (i > 0 && comments.get(i).afterBlank()) {
        lines.blank();
      }
      lines.line(0, source.textOf(comments.get(i).span()));
    }
  }

  /** A statement and its comments, from the start of its first line, untouched. */
  private String asItStands(int i, List<Gap.Comment> comments) {
    int start = startOf(i);
    while (start > 0 && " \t".indexOf(source.text().charAt(start - 1)) >= 0) {
      start--;
    }
    int end = comments.isEmpty() ? endOf(i) : comments.get(comments.size() - 1).span().end();
    return source.text().substring(start, end);
  }

  private Gap gapAfter(int i) {
    int start = i < 0 ? 0 : endOf(i);
    int end = i + 1 < statements.size() ? startOf(i + 1) : source.text().length();
    return Gap.read(source.text(), start, end);
  }

  private int startOf(int i) {
    return statements.get(i).pieces().get(0).span().start();
  }

  private int endOf(int i) {
    List<Piece> pieces = statements.get(i).pieces();
    return pieces.get(pieces.size() - 1).span().end();
  }

  /** All pieces and comments in order, and where statements begin. */
  private static List<String> everything(SourceText source) {
    List<String> all = new ArrayList<>();
    int end = 0;
    for (List<Piece> statement : StatementReader.pieces(source)) {
      boolean first = true;
      for (Piece piece : statement) {
        commentsBetween(source, end, piece.span().start(), all);
        String written = source.textOf(piece.span());
        String folded = piece.kind().isText() ? written : written.replaceAll("[ \t\r\n]+", " ");
        all.add((first ? "statement " : "") + piece.kind() + " " + folded);
        end = piece.span().end();
        first = false;
      }
    }
    commentsBetween(source, end, source.text().length(), all);
    return all;
  }

  private static void commentsBetween(SourceText source, int from, int to, List<String> all) {
    for (Gap.Comment comment : Gap.read(source.text(), from, to).comments()) {
      all.add(source.textOf(comment.span()));
    }
  }
}
