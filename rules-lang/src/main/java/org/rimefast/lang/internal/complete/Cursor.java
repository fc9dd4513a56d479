package org.rimefast.lang.internal.complete;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/**
 * A place in a text where something is about to be written.
 *
 * @param word the word that has been begun there, whole; empty if none has
 * @param startsLine true if the word begins in column 1
 * @param statement where the statement around it begins
 * @param before the text of that statement up to the word
 * @param pieces the pieces of that text; spans are offsets in it
 */
record Cursor(Span word, boolean startsLine, int statement, String before, List<Piece> pieces) {
  /** Copies the list. */
  Cursor {
    pieces = List.copyOf(pieces);
  }

  /** The place; empty within quotes and comments, where words of the language say nothing. */
  static Optional<Cursor> at(String text, Span file, List<List<Piece>> statements, int offset) {
    Span word = word(text, offset);
    boolean startsLine = word.start() == 0 || isLineEnd(text.charAt(word.start() - 1));
    int statement = statement(file, statements, word.start());
    String before = text.substring(statement, word.start());
    List<List<Piece>> read = StatementReader.pieces(new SourceText("", before));
    List<Piece> pieces = read.isEmpty() ? List.of() : read.get(0);
    int end = pieces.isEmpty() ? 0 : pieces.get(pieces.size() - 1).span().end();
    if (isUnclosed(before, pieces) || isComment(before.substring(end))) {
      return Optional.empty();
    }
    return Optional.of(new Cursor(word, startsLine, statement, before, pieces));
  }

  /** The piece before the word; empty if there is none in its statement. */
  String lastPiece() {
    return pieces.isEmpty() ? "" : textOf(pieces.get(pieces.size() - 1));
  }

  /** The word that the statement begins with. */
  String firstPiece() {
    return pieces.isEmpty() ? "" : textOf(pieces.get(0));
  }

  String textOf(Piece piece) {
    return before.substring(piece.span().start(), piece.span().end());
  }

  /** The text before it that a candidate can be put behind. */
  String stem() {
    boolean apart =
        before.isEmpty() || !Character.isLetterOrDigit(before.charAt(before.length() - 1));
    return apart ? before : before + " ";
  }

  private static Span word(String text, int offset) {
    int start = offset;
    while (start > 0 && isWordPart(text.charAt(start - 1))) {
      start--;
    }
    int end = offset;
    while (end < text.length() && isWordPart(text.charAt(end))) {
      end++;
    }
    // What begins with a digit is a number, and a number is not completed but followed.
    return start == offset || !Character.isLetter(text.charAt(start))
        ? new Span(offset, offset)
        : new Span(start, end);
  }

  private static boolean isWordPart(char c) {
    return Character.isLetterOrDigit(c) || c == '-' || c == '\'' || c == '.' || c == '/';
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  private static int statement(Span file, List<List<Piece>> statements, int offset) {
    int start = file.start();
    for (List<Piece> pieces : statements) {
      int first = pieces.get(0).span().start();
      if (first < offset) {
        start = first;
      }
    }
    return start;
  }

  private static boolean isUnclosed(String before, List<Piece> pieces) {
    if (pieces.isEmpty() || pieces.get(pieces.size() - 1).kind() != Piece.Kind.TEXT) {
      return false;
    }
    Span span = pieces.get(pieces.size() - 1).span();
    String text = before.substring(span.start(), span.end());
    return text.length() < 2 || !text.endsWith("\"");
  }

  /** True if a comment has begun that its line has not ended. */
  private static boolean isComment(String behindLastPiece) {
    int comment = behindLastPiece.lastIndexOf("--");
    return comment >= 0
        && behindLastPiece.substring(comment).chars().noneMatch(c -> c == '\n' || c == '\r');
  }
}
