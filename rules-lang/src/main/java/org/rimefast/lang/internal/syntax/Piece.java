package org.rimefast.lang.internal.syntax;

import org.rimefast.lang.source.Span;

/** A word, number, text or sign as it stands, with no more meaning than laying it out takes. */
public record Piece(Kind kind, Span span) {

  /** What a piece is to a layout. */
  public enum Kind {
    /** {@code standard}, {@code rule} and the like: begins a statement if it begins a line. */
    STATEMENT,
    /** The word that begins a part, such as {@code severity}. */
    PART,
    /** Text in quotes. */
    TEXT,
    /** Text in triple quotes, over as many lines as its author chose. */
    BLOCK,
    /** A word or number with which a value can end. */
    VALUE,
    /** A word of the language after which a value can only begin. */
    KEYWORD,
    /** {@code must}, {@code with}, {@code if}, {@code unless}, {@code and} or {@code or}. */
    TURN,
    /** {@code where}. */
    WHERE,
    /** {@code then} or {@code otherwise}. */
    CHOICE,
    /** A sign of comparison. */
    SIGN,
    /** {@code +}, {@code times} or {@code divided}. */
    OPERATOR,
    MINUS,
    /** {@code |}, around the cells of a table. */
    BAR,
    LEFT,
    RIGHT,
    COMMA;

    /** True if a minus sign behind it takes away; behind all else it makes a number negative. */
    boolean endsValue() {
      return this == STATEMENT || this == TEXT || this == BLOCK || this == VALUE || this == RIGHT;
    }

    /** True if white space within it means something. */
    public boolean isText() {
      return this == TEXT || this == BLOCK;
    }
  }

  /**
   * True if a space belongs between two pieces that follow each other.
   *
   * @param earlier what stands before the left one; if nothing does, {@link Kind#KEYWORD}
   */
  public static boolean isApart(Kind earlier, Kind left, Kind right) {
    if (right == Kind.MINUS) {
      // Two minus signs side by side would begin a comment.
      return left != Kind.LEFT;
    }
    if (right == Kind.RIGHT || right == Kind.COMMA || left == Kind.LEFT) {
      return false;
    }
    return left != Kind.MINUS || earlier.endsValue();
  }
}
