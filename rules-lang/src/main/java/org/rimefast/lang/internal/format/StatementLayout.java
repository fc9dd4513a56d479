package org.rimefast.lang.internal.format;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.format.Wrapping.Break;
import org.rimefast.lang.internal.format.Wrapping.Word;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Piece.Kind;
import org.rimefast.lang.source.SourceText;

/** Lays out one statement that follows the grammar. */
final class StatementLayout {
  static final int PART = 2;
  private static final int CONTINUED = 4;

  private final SourceText source;
  private final List<Piece> pieces;
  private final Lines lines;
  private final int sentenceStart;
  private final int changeStart;
  private final TableRows rows;
  private final List<Word> words = new ArrayList<>();
  private int indent;
  private int depth;
  private boolean inSentence;

  private StatementLayout(SourceText source, List<Piece> pieces, Lines lines) {
    this.source = source;
    this.pieces = pieces;
    this.lines = lines;
    this.sentenceStart = sentenceStart();
    this.rows = TableRows.of(source, pieces);
    // What is waived stands in the first line, and can be a long list or a condition.
    this.inSentence = textOf(0).equals("waive");
    this.changeStart = textOf(0).equals("in") ? 4 : -1;
  }

  static void write(SourceText source, List<Piece> pieces, Lines lines) {
    new StatementLayout(source, pieces, lines).write();
  }

  private void write() {
    for (int i = 0; i < pieces.size(); i++) {
      // The first word of what an amendment changes goes on in its line, even if it is "severity".
      Kind kind = i == changeStart ? Kind.VALUE : pieces.get(i).kind();
      boolean row = rows.beginsRow(i);
      boolean beginsPart =
          i > 0 && (kind == Kind.PART || row || (i == sentenceStart && canBeginLine(i)));
      if (i == sentenceStart || i == changeStart || kind == Kind.PART || row) {
        // What a table depends on can be as long as a sentence.
        boolean inputs = kind == Kind.PART && textOf(i).equals("by");
        inSentence = i == sentenceStart || i == changeStart || inputs;
      }
      Gap gap = gapBefore(i);
      if (beginsPart || !gap.comments().isEmpty() || isFurtherText(i)) {
        flush();
        indent = beginsPart ? PART : CONTINUED;
        comments(gap);
      }
      word(i);
    }
    flush();
  }

  /** The first piece after id and title of a rule or inspect item; -1 in other statements. */
  private int sentenceStart() {
    if (!textOf(0).equals("rule") && !textOf(0).equals("inspect")) {
      return -1;
    }
    int at = 2;
    while (at < pieces.size() && pieces.get(at).kind() == Kind.TEXT) {
      at++;
    }
    return at;
  }

  /** At the start of a line, these words would begin a statement. */
  private boolean canBeginLine(int i) {
    return pieces.get(i).kind() != Kind.STATEMENT;
  }

  /** A long text that goes on in further quotes: its author chose where. */
  private boolean isFurtherText(int i) {
    return !inSentence
        && i > 0
        && pieces.get(i).kind() == Kind.TEXT
        && pieces.get(i - 1).kind() == Kind.TEXT;
  }

  private Gap gapBefore(int i) {
    return i == 0
        ? new Gap(List.of(), false)
        : Gap.read(source.text(), pieces.get(i - 1).span().end(), pieces.get(i).span().start());
  }

  private void comments(Gap gap) {
    for (Gap.Comment comment : gap.comments()) {
      if (comment.behind()) {
        lines.behind(source.textOf(comment.span()));
      } else {
        lines.line(indent, source.textOf(comment.span()));
      }
    }
  }

  private void word(int i) {
    Kind kind = pieces.get(i).kind();
    Kind left = kindAt(i - 1);
    boolean apart = Piece.isApart(kindAt(i - 2), left, kind);
    if (kind == Kind.RIGHT) {
      depth--;
    }
    boolean breakable = inSentence && apart && canBeginLine(i);
    String text = rows.before(i) + textOf(i);
    words.add(new Word(text, apart, breakable ? breakBefore(left, kind) : Break.NEVER, depth));
    if (kind == Kind.LEFT) {
      depth++;
    }
  }

  private static Break breakBefore(Kind left, Kind kind) {
    return switch (kind) {
      // The two words of "otherwise if" stay together.
      case TURN -> left == Kind.CHOICE ? Break.NEVER : Break.BEST;
      case WHERE, CHOICE, SIGN, OPERATOR, LEFT -> Break.FAIR;
      case MINUS ->
          left == Kind.KEYWORD || left == Kind.CHOICE || left == Kind.SIGN
              ? Break.NEVER
              : Break.FAIR;
      default -> left == Kind.COMMA ? Break.FAIR : Break.NEVER;
    };
  }

  private Kind kindAt(int i) {
    return i < 0 ? Kind.KEYWORD : pieces.get(i).kind();
  }

  private String textOf(int i) {
    return folded(source, pieces.get(i));
  }

  static String folded(SourceText source, Piece piece) {
    String written = source.textOf(piece.span());
    // A quantity is one piece, with any white space between its number and its unit.
    return piece.kind().isText() ? written : written.replaceAll("[ \t\r\n]+", " ");
  }

  private void flush() {
    Wrapping.write(words, indent, CONTINUED, lines);
    words.clear();
  }
}
