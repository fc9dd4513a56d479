package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Finds the words that begin a part of an inspect item or of a waiver. In all other statements, and
 * where what stands behind them says otherwise, they are words like any other.
 */
final class OwnWords {
  private OwnWords() {}

  /** The tokens of one statement, with such words marked. */
  static List<Token> marked(List<Token> statement) {
    int kind = statement.get(0).getType();
    if (kind != RimeLexer.INSPECT && kind != RimeLexer.WAIVE) {
      return statement;
    }
    List<Token> marked = new ArrayList<>(statement.subList(0, Math.min(2, statement.size())));
    for (int i = 2; i < statement.size(); i++) {
      Token token = statement.get(i);
      Token next = i + 1 < statement.size() ? statement.get(i + 1) : null;
      int follows = next == null ? Token.EOF : next.getType();
      int type = token.getType();
      if (type == RimeLexer.WORD && kind == RimeLexer.INSPECT) {
        type = ofInspect(token.getText(), follows);
      } else if (type == RimeLexer.WORD) {
        type = ofWaiver(token.getText(), follows, next == null ? "" : next.getText());
      }
      marked.add(type == token.getType() ? token : retyped(token, type));
    }
    return marked;
  }

  private static int ofInspect(String word, int follows) {
    return switch (word) {
      case "ask" -> RimeParser.ASK;
      case "answer" -> RimeParser.ANSWER;
      case "reading" -> beginsLimit(follows) ? RimeParser.READING : RimeLexer.WORD;
      default -> RimeLexer.WORD;
    };
  }

  private static boolean beginsLimit(int type) {
    return switch (type) {
      case RimeLexer.AT,
          RimeLexer.MORE_WORD,
          RimeLexer.LESS_WORD,
          RimeLexer.EXACTLY,
          RimeLexer.NUMBER,
          RimeLexer.AT_LEAST_SIGN,
          RimeLexer.AT_MOST_SIGN,
          RimeLexer.MORE_SIGN,
          RimeLexer.LESS_SIGN,
          RimeLexer.EQUAL_SIGN,
          RimeLexer.NOT_EQUAL_SIGN ->
          true;
      default -> false;
    };
  }

  private static int ofWaiver(String word, int follows, String next) {
    return switch (word) {
      case "approved" -> RimeParser.APPROVED;
      case "until" -> RimeParser.UNTIL;
      case "from" -> follows == RimeLexer.NUMBER ? RimeParser.FROM : RimeLexer.WORD;
      case "in" -> next.equals("plan") ? RimeParser.IN_PLAN : RimeLexer.WORD;
      case "down" -> next.equals("to") ? RimeParser.DOWN : RimeLexer.WORD;
      case "up" -> next.equals("to") ? RimeParser.UP : RimeLexer.WORD;
      default -> RimeLexer.WORD;
    };
  }

  private static Token retyped(Token token, int type) {
    CommonToken retyped = new CommonToken(token);
    retyped.setType(type);
    return retyped;
  }
}
