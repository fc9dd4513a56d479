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
    int first = statement.get(0).getType();
    boolean header = first == RimeLexer.STANDARD || first == RimeLexer.WAIVERS;
    boolean table = first == RimeLexer.TABLE;
    boolean beforeInputs = table;
    int depth = 0;
    List<Piece> pieces = new ArrayList<>(statement.size());
    for (int i = 0; i < statement.size(); i++) {
      Token token = statement.get(i);
      int type = token.getType();
      depth += type == RimeLexer.LEFT ? 1 : type == RimeLexer.RIGHT ? -1 : 0;
      boolean part =
          (type == RimeLexer.BY && beforeInputs)
              || (type == RimeLexer.OTHERWISE && table && depth == 0);
      beforeInputs &= type != RimeLexer.BY;
      boolean goesOn = goesOn(statement, i);
      Kind kind = part ? Kind.PART : goesOn ? Kind.KEYWORD : kind(type, header);
      pieces.add(new Piece(kind, LexicalProblems.span(token)));
    }
    return pieces;
  }

  /** The second word of a part: the end of a period, and {@code to} before a bound. */
  private static boolean goesOn(List<Token> statement, int i) {
    int last = i < 1 ? Token.EOF : statement.get(i - 1).getType();
    boolean period = i >= 2 && statement.get(i - 2).getType() == RimeParser.FROM;
    return (statement.get(i).getType() == RimeParser.UNTIL && period)
        || last == RimeParser.DOWN
        || last == RimeParser.UP;
  }

  private static Kind kind(int type, boolean header) {
    return switch (type) {
      case RimeLexer.STANDARD,
          RimeLexer.LET,
          RimeLexer.RULE,
          RimeLexer.INSPECT,
          RimeLexer.WAIVERS,
          RimeLexer.WAIVE,
          RimeLexer.CASE,
          RimeLexer.CASES,
          RimeLexer.INCLUDE,
          RimeLexer.WITHDRAW,
          RimeLexer.TABLE,
          RimeParser.IN ->
          Kind.STATEMENT;
      case RimeParser.PLAN,
          RimeParser.SET,
          RimeParser.REMOVE,
          RimeParser.ADD,
          RimeParser.EXPECT,
          RimeParser.BUILDS,
          RimeParser.SEEN ->
          Kind.PART;
      case RimeLexer.BLOCK, RimeLexer.UNCLOSED_BLOCK -> Kind.BLOCK;
      // Within a rule, these two are words like any other.
      case RimeLexer.TITLE, RimeLexer.CAUTION -> header ? Kind.PART : Kind.VALUE;
      case RimeLexer.SEVERITY,
          RimeLexer.STAGE,
          RimeLexer.BECAUSE,
          RimeLexer.SOURCE,
          RimeParser.ASK,
          RimeParser.ANSWER,
          RimeParser.READING,
          RimeParser.IN_PLAN,
          RimeParser.APPROVED,
          RimeParser.FROM,
          RimeParser.UNTIL,
          RimeParser.DOWN,
          RimeParser.UP ->
          Kind.PART;
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
      case RimeLexer.BAR -> Kind.BAR;
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
