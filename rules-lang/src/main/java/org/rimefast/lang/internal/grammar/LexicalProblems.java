package org.rimefast.lang.internal.grammar;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.QuantityParser.Parsed;

/** What can be wrong with single words and signs, before any sentence is looked at. */
final class LexicalProblems {
  /** Signs that word processors put in, and the plain ones. */
  private static final Map<String, String> TYPOGRAPHIC =
      Map.ofEntries(
          Map.entry("\u2265", ">="),
          Map.entry("\u2264", "<="),
          Map.entry("\u2260", "!="),
          Map.entry("\u2212", "-"),
          Map.entry("\u2013", "-"),
          Map.entry("\u2014", "-"),
          Map.entry("\u2011", "-"),
          Map.entry("\u00d7", "times"),
          Map.entry("*", "times"),
          Map.entry("\u00f7", "divided by"),
          Map.entry("/", "divided by"),
          Map.entry("\u201c", "\""),
          Map.entry("\u201d", "\""),
          Map.entry("\u201e", "\""),
          Map.entry("\u00ab", "\""),
          Map.entry("\u00bb", "\""),
          Map.entry("\u2018", "'"),
          Map.entry("\u2019", "'"),
          Map.entry("&", "and"),
          Map.entry("|", "or"),
          Map.entry("\u00a0", " "),
          Map.entry("\u2009", " "),
          Map.entry("\u202f", " "),
          Map.entry("\u00b0", "deg"),
          Map.entry("\u00bd", "-1/2"),
          Map.entry("\u00bc", "-1/4"),
          Map.entry("\u00be", "-3/4"));

  private final SourceText source;
  private final int nesting;

  LexicalProblems(SourceText source, int nesting) {
    this.source = source;
    this.nesting = nesting;
  }

  /** The first problem of a statement, in the order of the text. */
  Optional<Diagnostic> first(Tokens.Run run) {
    List<Token> tokens = run.tokens();
    Token first = tokens.get(0);
    if (first.getType() == RimeLexer.INCLUDE && tokens.size() > 1 && isBareName(tokens.get(1))) {
      // That the name has no quotes says more than that it has a full stop.
      return Optional.of(
          error(
              DiagnosticCode.UNREADABLE,
              span(tokens.get(1)),
              "After \"include\" comes the name of a file in quotes.",
              "Write it as: include \"doors.rime\""));
    }
    Optional<Diagnostic> number = run.problems().stream().findFirst();
    int depth = 0;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      if (number.isPresent() && token.getStopIndex() + 1 >= number.get().span().end()) {
        return number;
      }
      Optional<Diagnostic> problem = ofToken(tokens, i);
      if (problem.isPresent()) {
        return problem;
      }
      depth += token.getType() == RimeLexer.LEFT ? 1 : token.getType() == RimeLexer.RIGHT ? -1 : 0;
      if (depth > nesting) {
        return Optional.of(
            error(
                DiagnosticCode.TOO_DEEP,
                span(token),
                "Parentheses stand more than " + nesting + " deep here.",
                "Split the sentence into several rules."));
      }
      if (i == 0 && !Tokens.isStatementWord(first)) {
        return Optional.of(stray(first));
      }
    }
    return number;
  }

  private static boolean isBareName(Token token) {
    return token.getType() != RimeLexer.TEXT && token.getType() != RimeLexer.UNCLOSED_TEXT;
  }

  private Optional<Diagnostic> ofToken(List<Token> tokens, int i) {
    Token token = tokens.get(i);
    return switch (token.getType()) {
      case RimeLexer.UNCLOSED_TEXT ->
          Optional.of(
              error(
                  DiagnosticCode.UNCLOSED_TEXT,
                  span(token),
                  "This text has no closing quote on its line.",
                  "Close it with \"; a long text goes on with another text in quotes on the next"
                      + " line."));
      case RimeLexer.UNCLOSED_BLOCK ->
          Optional.of(
              error(
                  DiagnosticCode.UNCLOSED_TEXT,
                  span(token),
                  "This text in triple quotes is never closed.",
                  "Close it with \"\"\" behind its last line."));
      case RimeLexer.OTHER ->
          Optional.of(
              isCase(tokens) && "./_#".contains(token.getText())
                  ? unquoted(token)
                  : i > 0 && tokens.get(i - 1).getType() == RimeLexer.NUMBER
                      ? afterNumber(tokens.get(i - 1), token)
                      : character(token));
      case RimeLexer.BAR ->
          tokens.get(0).getType() == RimeLexer.TABLE
              ? emptyCell(tokens, i)
              : Optional.of(character(token));
      case RimeLexer.WORD -> capital(tokens, i);
      default -> Optional.empty();
    };
  }

  /** Two bars side by side end a row and begin one, which stands on a line of its own. */
  private Optional<Diagnostic> emptyCell(List<Token> tokens, int i) {
    Token left = tokens.get(i - 1);
    Span between = new Span(left.getStartIndex(), tokens.get(i).getStopIndex() + 1);
    String text = source.textOf(between);
    return left.getType() == RimeLexer.BAR && text.indexOf('\n') < 0 && text.indexOf('\r') < 0
        ? Optional.of(
            error(
                DiagnosticCode.WRONG_ROW,
                between,
                "A cell of this row is empty.",
                "Write \"any\" where it does not matter; a further row begins on a line of its own."))
        : Optional.empty();
  }

  /** A sign that is meant for a unit, such as the degree sign or the mark for feet. */
  private Diagnostic afterNumber(Token number, Token token) {
    int start = number.getStartIndex();
    int end = token.getStopIndex() + 1;
    String text = source.text();
    while (end < text.length() && end < start + 40 && Character.isLetter(text.charAt(end))) {
      end++;
    }
    boolean mark = token.getText().equals("'");
    Parsed parsed =
        QuantityParser.parse(mark ? number.getText() + "' 0" : text.substring(start, end));
    if (parsed instanceof Parsed.Problem problem
        && (mark || problem.help().startsWith("Write " + number.getText()))) {
      String message = mark ? "Feet and inches are not written with marks." : problem.message();
      return error(
          mark ? DiagnosticCode.UNKNOWN_UNIT : DiagnosticCode.TYPOGRAPHIC_SIGN,
          new Span(start, mark ? token.getStopIndex() + 1 : end),
          message,
          problem.help());
    }
    return character(token);
  }

  private Diagnostic character(Token token) {
    Span span = span(token);
    String sign = source.textOf(span);
    String plain = TYPOGRAPHIC.get(sign);
    if (plain != null) {
      boolean space = plain.equals(" ");
      return new Diagnostic(
          DiagnosticCode.TYPOGRAPHIC_SIGN,
          Diagnostic.Level.ERROR,
          span,
          space
              ? "This is a typographic space, which rule text does not use."
              : "Rule text does not use the sign " + sign + ".",
          space ? "Write a plain space." : "Write " + plain + " in its place.",
          List.of(),
          List.of(new Diagnostic.Fix(span, plain)));
    }
    if (sign.equals("%")) {
      return error(
          DiagnosticCode.UNKNOWN_CHARACTER,
          span,
          "The sign % stands after a number only.",
          "Write a number before it, such as 60 %.");
    }
    int codePoint = source.text().codePointAt(span.start());
    int length = Character.charCount(codePoint);
    return error(
        DiagnosticCode.UNKNOWN_CHARACTER,
        new Span(span.start(), span.start() + length),
        "Rule text does not use the character "
            + (Character.isISOControl(codePoint)
                ? String.format(Locale.ROOT, "U+%04X", codePoint)
                : "\"" + Character.toString(codePoint) + "\"")
            + " outside quoted text.",
        "Take it out.");
  }

  private Optional<Diagnostic> capital(List<Token> tokens, int i) {
    Token token = tokens.get(i);
    boolean approver = i > 1 && tokens.get(i - 2).getType() == RimeParser.APPROVED;
    if (approver || (i > 0 && isTextWord(tokens.get(i - 1).getType()))) {
      // That the text has no quotes says more than that a word of it has a capital.
      return Optional.empty();
    }
    String word = token.getText();
    String lower = word.toLowerCase(Locale.ROOT);
    if (word.equals(lower)) {
      return Optional.empty();
    }
    if (i > 0 && tokens.get(i - 1).getType() == RimeLexer.NUMBER) {
      Parsed parsed = QuantityParser.parse(tokens.get(i - 1).getText() + " " + word);
      if (parsed instanceof Parsed.Problem problem) {
        return Optional.of(
            Tokens.bad(
                DiagnosticCode.UNKNOWN_UNIT,
                token.getStartIndex(),
                token.getStopIndex() + 1,
                problem));
      }
    }
    Span span = span(token);
    if (isCase(tokens)) {
      return Optional.of(
          new Diagnostic(
              DiagnosticCode.CAPITAL_LETTER,
              Diagnostic.Level.ERROR,
              span,
              "\"" + word + "\" has a capital letter and no quotes.",
              "What is named as in the plan stands in quotes: \"" + word + "\".",
              List.of(),
              List.of(new Diagnostic.Fix(span, "\"" + word + "\""))));
    }
    return Optional.of(
        new Diagnostic(
            DiagnosticCode.CAPITAL_LETTER,
            Diagnostic.Level.ERROR,
            span,
            "\"" + word + "\" has a capital letter.",
            "Write it in lower case: " + lower + ".",
            List.of(),
            List.of(new Diagnostic.Fix(span, lower))));
  }

  private static boolean isCase(List<Token> tokens) {
    return tokens.get(0).getType() == RimeLexer.CASE;
  }

  private static Diagnostic unquoted(Token token) {
    return error(
        DiagnosticCode.UNKNOWN_CHARACTER,
        span(token),
        "The sign " + token.getText() + " stands in quoted text only.",
        "Names of files and what is named as in the plan stand in quotes: plan \"small.json\".");
  }

  private static boolean isTextWord(int type) {
    return type == RimeParser.ASK
        || type == RimeLexer.TITLE
        || type == RimeLexer.CAUTION
        || type == RimeLexer.BECAUSE
        || type == RimeLexer.SOURCE;
  }

  private static Diagnostic stray(Token token) {
    return error(
        DiagnosticCode.STRAY_TEXT,
        span(token),
        "A statement begins with \"standard\", \"include\", \"let\", \"table\", \"rule\", \"inspect\", \"in rule\","
            + " \"withdraw\" or \"case\" at the start of a line.",
        "Begin with: standard cold-steel-modules edition 2026-11; a file of waivers with: waivers for"
            + " cold-steel-modules");
  }

  static Diagnostic error(DiagnosticCode code, Span span, String headline, String help) {
    return new Diagnostic(code, Diagnostic.Level.ERROR, span, headline, help, List.of(), List.of());
  }

  static Span span(Token token) {
    return new Span(token.getStartIndex(), token.getStopIndex() + 1);
  }
}
