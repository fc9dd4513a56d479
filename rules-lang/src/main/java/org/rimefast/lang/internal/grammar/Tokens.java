package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.QuantityParser.Parsed;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Cuts text into the tokens of statements, with numbers and their units joined. */
final class Tokens {
  /** The tokens of one statement, and the first thing wrong with them. */
  record Run(List<Token> tokens, List<Diagnostic> problems) {}

  private final String name;
  private final String text;
  private final int from;
  private final int to;

  /** The tokens of one file of a text. */
  Tokens(SourceText source, int part) {
    this.name = source.parts().get(part).name();
    this.text = source.text();
    this.from = source.spanOf(part).start();
    this.to = source.spanOf(part).end();
  }

  /** One run for each statement; a first run that begins with another word is stray text. */
  List<Run> statements() {
    RimeLexer lexer = new RimeLexer(new TextStream(text, name, from, to));
    lexer.removeErrorListeners();
    List<Run> runs = new ArrayList<>();
    List<Token> current = new ArrayList<>();
    Token token = lexer.nextToken();
    while (token.getType() != Token.EOF) {
      Token next = lexer.nextToken();
      Token word = LayerWords.isInRule(token, next, text) ? LayerWords.in(token) : token;
      if (beginsStatement(word) && !current.isEmpty()) {
        runs.add(join(current));
        current = new ArrayList<>();
      }
      // Only at the start of a line do the two words begin a statement.
      current.add(beginsStatement(word) ? word : token);
      token = next;
    }
    if (!current.isEmpty()) {
      runs.add(join(current));
    }
    return runs;
  }

  static boolean isStatementWord(Token token) {
    return switch (token.getType()) {
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
          true;
      default -> false;
    };
  }

  private boolean beginsStatement(Token token) {
    if (!isStatementWord(token)) {
      return false;
    }
    int at = token.getStartIndex() - 1;
    while (at >= from && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at--;
    }
    return at < from || text.charAt(at) == '\n' || text.charAt(at) == '\r';
  }

  private Run join(List<Token> read) {
    List<Token> tokens = LayerWords.marked(OwnWords.marked(read), text);
    List<Token> joined = new ArrayList<>(tokens.size());
    List<Diagnostic> problems = new ArrayList<>();
    boolean isCase = tokens.get(0).getType() == RimeLexer.CASE;
    // What is named may be called by any words.
    boolean inName = tokens.get(0).getType() == RimeLexer.LET;
    int i = 0;
    while (i < tokens.size()) {
      Token token = tokens.get(i);
      if (token.getType() != RimeLexer.NUMBER || followsName(joined)) {
        int following = i + 1 < tokens.size() ? tokens.get(i + 1).getType() : Token.EOF;
        Token word = isCase ? CaseWords.retyped(token) : token;
        joined.add(inName ? word : bound(word, following));
        inName &= token.getType() != RimeLexer.BE;
        i++;
        continue;
      }
      int end = quantityEnd(token);
      if (!endsToken(tokens, i, end)) {
        end = token.getStopIndex() + 1;
      }
      boolean hasUnit = end > token.getStopIndex() + 1;
      String written = text.substring(token.getStartIndex(), end);
      Parsed parsed = QuantityParser.parse(written);
      if (parsed instanceof Parsed.Problem problem) {
        problems.add(bad(DiagnosticCode.BAD_NUMBER, token.getStartIndex(), end, problem));
      }
      joined.add(hasUnit ? quantity(token, end) : token);
      i++;
      while (i < tokens.size() && tokens.get(i).getStartIndex() < end) {
        i++;
      }
    }
    return new Run(joined, problems);
  }

  /** False if the offset lies within a word, as between {@code in} and the mark behind it. */
  private static boolean endsToken(List<Token> tokens, int from, int end) {
    int last = from;
    while (last + 1 < tokens.size() && tokens.get(last + 1).getStartIndex() < end) {
      last++;
    }
    return tokens.get(last).getStopIndex() + 1 == end;
  }

  static Diagnostic bad(DiagnosticCode code, int start, int end, Parsed.Problem problem) {
    return new Diagnostic(
        code,
        Diagnostic.Level.ERROR,
        new Span(start, end),
        problem.message(),
        problem.help(),
        List.of(),
        List.of());
  }

  /** An edition such as {@code 2026-11} is a name, and a date is no number either. */
  private static boolean followsName(List<Token> before) {
    int last = before.isEmpty() ? Token.EOF : before.get(before.size() - 1).getType();
    return last == RimeLexer.EDITION || last == RimeParser.FROM || last == RimeParser.UNTIL;
  }

  /** The first word of {@code at least} and the like as what it is; any other as it stands. */
  private static Token bound(Token token, int following) {
    boolean most = following == RimeLexer.LEAST || following == RimeLexer.MOST;
    boolean than = following == RimeLexer.THAN;
    return switch (token.getType()) {
      case RimeLexer.AT -> most ? retyped(token, RimeParser.BOUND_AT) : token;
      case RimeLexer.MORE_WORD -> than ? retyped(token, RimeParser.BOUND_MORE) : token;
      case RimeLexer.LESS_WORD -> than ? retyped(token, RimeParser.BOUND_LESS) : token;
      default -> token;
    };
  }

  private static Token retyped(Token token, int type) {
    CommonToken other = new CommonToken(token);
    other.setType(type);
    return other;
  }

  private static Token quantity(Token number, int end) {
    CommonToken quantity = new CommonToken(number);
    quantity.setType(RimeParser.QUANTITY);
    quantity.setStopIndex(end - 1);
    return quantity;
  }

  /** The offset after the number and its unit; after the number alone if no unit follows. */
  private int quantityEnd(Token number) {
    int numberEnd = number.getStopIndex() + 1;
    int unitEnd = unitEnd(numberEnd);
    if (unitEnd > 0 && text.startsWith("ft", unitEnd - 2)) {
      int inches = skipSpace(unitEnd);
      int inchesEnd = digitsEnd(inches);
      if (inchesEnd > inches) {
        int end = unitEnd(inchesEnd);
        return end > 0 && text.startsWith("in", end - 2) ? end : unitEnd;
      }
    }
    return Math.max(numberEnd, unitEnd);
  }

  private int digitsEnd(int start) {
    int at = start;
    while (at < to && "0123456789-/.".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  /** The offset after the longest unit that starts at {@code start} or after space; 0 if none. */
  private int unitEnd(int start) {
    int longest = 0;
    int at = skipSpace(start);
    for (Unit unit : Units.all()) {
      longest = Math.max(longest, matchEnd(unit.symbol(), at));
    }
    return Math.max(longest, Math.max(matchEnd("day", at), matchEnd("days", at)));
  }

  private int matchEnd(String symbol, int start) {
    if (symbol.isEmpty()) {
      return 0;
    }
    int at = start;
    for (int i = 0; i < symbol.length(); i++) {
      char c = symbol.charAt(i);
      if (c == ' ') {
        int after = skipSpace(at);
        if (after == at) {
          return 0;
        }
        at = after;
      } else if (at < to && text.charAt(at) == c) {
        at++;
      } else {
        return 0;
      }
    }
    return isBoundary(at) || symbol.endsWith("%") ? at : 0;
  }

  private boolean isBoundary(int at) {
    if (at >= to) {
      return true;
    }
    char c = text.charAt(at);
    boolean hyphenated =
        (c == '-' || c == '\'') && at + 1 < to && Character.isLetterOrDigit(text.charAt(at + 1));
    return !Character.isLetterOrDigit(c) && !hyphenated && c != '/';
  }

  private int skipSpace(int start) {
    int at = start;
    while (at < to && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }
}
