package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Piece.Kind;

/** Tokens as pieces, for those who lay text out. */
final class Pieces {
  private Pieces() {}

  /** The pieces of one statement. */
  static List<Piece> of(List<Token> statement) {
    boolean header = statement.get(0).getType() == RimeLexer.STANDARD;
    List<Piece> pieces = new ArrayList<>(statement.size());
    for (Token token : statement) {
      pieces.add(new Piece(kind(token.getType(), header), LexicalProblems.span(token)));
    }
    return pieces;
  }

  private static Kind kind(int type, boolean header) {
    return switch (type) {
      case RimeLexer.STANDARD, RimeLexer.LET, RimeLexer.RULE, RimeLexer.CASE, RimeLexer.CASES ->
          Kind.STATEMENT;
      case RimeParser.PLAN, RimeParser.SET, RimeParser.REMOVE, RimeParser.ADD, RimeParser.EXPECT ->
          Kind.PART;
      case RimeLexer.BLOCK, RimeLexer.UNCLOSED_BLOCK -> Kind.BLOCK;
      // Within a rule, these two are words like any other.
      case RimeLexer.TITLE, RimeLexer.CAUTION -> header ? Kind.PART : Kind.VALUE;
      case RimeLexer.SEVERITY, RimeLexer.STAGE, RimeLexer.BECAUSE, RimeLexer.SOURCE -> Kind.PART;
      case RimeLexer.TEXT, RimeLexer.UNCLOSED_TEXT -> Kind.TEXT;
      case RimeLexer.MUST,
          RimeLexer.WITH,
          RimeLexer.IF,
          RimeLexer.UNLESS,
          RimeLexer.AND,
          RimeLexer.OR ->
          Kind.TURN;
      case RimeLexer.WHERE -> Kind.WHERE;
      case RimeLexer.THEN, RimeLexer.OTHERWISE -> Kind.CHOICE;
      case RimeLexer.AT_LEAST_SIGN,
          RimeLexer.AT_MOST_SIGN,
          RimeLexer.NOT_EQUAL_SIGN,
          RimeLexer.MORE_SIGN,
          RimeLexer.LESS_SIGN,
          RimeLexer.EQUAL_SIGN ->
          Kind.SIGN;
      case RimeLexer.PLUS, RimeLexer.TIMES, RimeLexer.DIVIDED -> Kind.OPERATOR;
      case RimeLexer.MINUS -> Kind.MINUS;
      case RimeLexer.LEFT -> Kind.LEFT;
      case RimeLexer.RIGHT -> Kind.RIGHT;
      case RimeLexer.COMMA -> Kind.COMMA;
      case RimeLexer.BE,
          RimeLexer.BETWEEN,
          RimeLexer.FOR,
          RimeLexer.NOT,
          RimeLexer.HAVE,
          RimeLexer.HAS,
          RimeLexer.IS,
          RimeLexer.ARE,
          RimeLexer.DOES,
          RimeLexer.DO,
          RimeLexer.LEAST,
          RimeLexer.MOST,
          RimeLexer.THAN,
          RimeLexer.EXACTLY,
          RimeLexer.BY,
          RimeParser.TO,
          RimeParser.OF,
          RimeParser.WITHIN ->
          Kind.KEYWORD;
      default -> Kind.VALUE;
    };
  }
}
