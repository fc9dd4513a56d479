package org.rimefast.lang.internal.grammar;

import java.util.Map;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/** The words that mean something of their own in a case, and nothing in other statements. */
final class CaseWords {
  private static final Map<String, Integer> TYPES =
      Map.ofEntries(
          Map.entry("plan", RimeParser.PLAN),
          Map.entry("set", RimeParser.SET),
          Map.entry("remove", RimeParser.REMOVE),
          Map.entry("add", RimeParser.ADD),
          Map.entry("expect", RimeParser.EXPECT),
          Map.entry("to", RimeParser.TO),
          Map.entry("of", RimeParser.OF),
          Map.entry("every", RimeParser.EVERY),
          Map.entry("met", RimeParser.MET),
          Map.entry("broken", RimeParser.BROKEN),
          Map.entry("undecided", RimeParser.UNDECIDED),
          Map.entry("error", RimeParser.ERROR_WORD),
          Map.entry("nothing", RimeParser.NOTHING),
          Map.entry("applicable", RimeParser.APPLICABLE),
          Map.entry("want", RimeParser.WANT),
          Map.entry("within", RimeParser.WITHIN),
          Map.entry("tolerance", RimeParser.TOLERANCE));

  private CaseWords() {}

  /** The token as a case reads it. */
  static Token retyped(Token token) {
    Integer type = token.getType() == RimeLexer.WORD ? TYPES.get(token.getText()) : null;
    if (type == null) {
      return token;
    }
    CommonToken retyped = new CommonToken(token);
    retyped.setType(type);
    return retyped;
  }

  /** True if the word begins a step of a case. */
  static boolean beginsStep(int type) {
    return switch (type) {
      case RimeParser.PLAN, RimeParser.SET, RimeParser.REMOVE, RimeParser.ADD, RimeParser.EXPECT ->
          true;
      default -> false;
    };
  }
}
