package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Tells the words of layers apart from the same words elsewhere: {@code in} before {@code rule},
 * {@code builds on} in a standard's first statement, {@code except}, {@code seen} and {@code hash}
 * in an amendment. Everywhere else they are words that a vocabulary can have.
 */
final class LayerWords {
  private LayerWords() {}

  /** True if a word and the next one, on the same line, are {@code in rule}. */
  static boolean isInRule(Token token, Token next, String text) {
    if (token.getType() != RimeLexer.WORD
        || next.getType() != RimeLexer.RULE
        || !token.getText().equals("in")) {
      return false;
    }
    String between = text.substring(token.getStopIndex() + 1, next.getStartIndex());
    return between.indexOf('\n') < 0 && between.indexOf('\r') < 0;
  }

  static Token in(Token token) {
    return typed(token, RimeParser.IN);
  }

  /** The tokens of one statement, with its words of layers marked. */
  static List<Token> marked(List<Token> tokens, String text) {
    return switch (tokens.get(0).getType()) {
      case RimeLexer.STANDARD -> header(tokens);
      case RimeParser.IN, RimeLexer.WITHDRAW -> amendment(tokens, text);
      default -> tokens;
    };
  }

  private static List<Token> header(List<Token> tokens) {
    List<Token> marked = new ArrayList<>(tokens);
    // The first words are the standard's name and edition, whatever they are.
    for (int i = 3; i + 1 < marked.size(); i++) {
      if (isWord(marked.get(i), "builds") && isWord(marked.get(i + 1), "on")) {
        marked.set(i, typed(marked.get(i), RimeParser.BUILDS));
        marked.set(i + 1, typed(marked.get(i + 1), RimeParser.ON));
      }
    }
    return marked;
  }

  private static List<Token> amendment(List<Token> tokens, String text) {
    List<Token> marked = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      Token next = tokens.get(Math.min(i + 1, tokens.size() - 1));
      int before = i == 0 ? Token.EOF : tokens.get(i - 1).getType();
      if (isWord(token, "except") && before == RimeLexer.COMMA) {
        marked.add(typed(token, RimeParser.EXCEPT));
      } else if (isWord(token, "seen")
          && (next.getType() == RimeLexer.EDITION || isWord(next, "hash"))) {
        marked.add(typed(token, RimeParser.SEEN));
      } else if (isWord(token, "hash") && isSeen(tokens, i)) {
        marked.add(typed(token, RimeParser.HASH));
        i = hash(tokens, i + 1, text, marked);
      } else {
        marked.add(token);
      }
    }
    return marked;
  }

  /** True behind {@code seen edition 2026-11}. */
  private static boolean isSeen(List<Token> tokens, int i) {
    return i >= 3 && tokens.get(i - 2).getType() == RimeLexer.EDITION;
  }

  /** Digits and letters that follow without a space are one word; gives the index of the last. */
  private static int hash(List<Token> tokens, int start, String text, List<Token> marked) {
    if (start >= tokens.size()) {
      return start;
    }
    int last = start;
    while (last + 1 < tokens.size()
        && tokens.get(last + 1).getStartIndex() == tokens.get(last).getStopIndex() + 1
        && Character.isLetterOrDigit(text.charAt(tokens.get(last + 1).getStartIndex()))) {
      last++;
    }
    Token first = tokens.get(start);
    boolean named = first.getType() == RimeLexer.NUMBER || first.getType() == RimeLexer.WORD;
    if (!named) {
      marked.add(first);
      return start;
    }
    CommonToken whole = new CommonToken(first);
    whole.setType(RimeLexer.WORD);
    whole.setStopIndex(tokens.get(last).getStopIndex());
    marked.add(whole);
    return last;
  }

  private static boolean isWord(Token token, String word) {
    return token.getType() == RimeLexer.WORD && token.getText().equals(word);
  }

  private static Token typed(Token token, int type) {
    CommonToken typed = new CommonToken(token);
    typed.setType(type);
    return typed;
  }
}
