package org.rimefast.lang.internal.grammar;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Recognizer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.units.QuantityParser;

/** Says in plain words why a statement cannot be read, and stops at the first fault. */
final class SyntaxProblems extends BaseErrorListener {
  /** Words that people write for must. */
  private static final Set<String> NOT_MUST =
      Set.of("should", "shall", "ought", "may", "can", "will", "needs", "cannot");

  private final SourceText source;
  private final List<Token> tokens;
  private @Nullable Diagnostic found;

  SyntaxProblems(SourceText source, List<Token> tokens) {
    this.source = source;
    this.tokens = tokens;
  }

  /** The fault. */
  Diagnostic found() {
    return Objects.requireNonNull(found, "a cancelled parse has a fault");
  }

  @Override
  public void syntaxError(
      Recognizer<?, ?> recognizer,
      @Nullable Object offending,
      int line,
      int column,
      String message,
      @Nullable RecognitionException exception) {
    Parser parser = (Parser) recognizer;
    Token token =
        exception != null && exception.getOffendingToken() != null
            ? exception.getOffendingToken()
            : parser.getCurrentToken();
    IntervalSet expected =
        exception != null && exception.getExpectedTokens() != null
            ? exception.getExpectedTokens()
            : parser.getExpectedTokens();
    found = diagnostic(token, expected, parser);
    throw new ParseCancellationException();
  }

  private Diagnostic diagnostic(Token token, IntervalSet expected, Parser parser) {
    Token before = before(token);
    boolean atEnd = token.getType() == Token.EOF || beginsPart(token.getType());
    Span span =
        atEnd
            ? new Span(before.getStopIndex() + 1, before.getStopIndex() + 1)
            : LexicalProblems.span(token);
    if (before.getType() == RimeLexer.NUMBER
        && token.getType() == RimeLexer.WORD
        && QuantityParser.parse(before.getText() + " " + token.getText())
            instanceof QuantityParser.Parsed.Problem problem
        && problem.kind() == QuantityParser.Parsed.Problem.Kind.UNIT) {
      return LexicalProblems.error(
          DiagnosticCode.UNKNOWN_UNIT, span, problem.message(), problem.help());
    }
    if (expected.contains(RimeLexer.MUST)) {
      for (Token word : tokens) {
        if (word.getType() == RimeLexer.WORD
            && NOT_MUST.contains(word.getText())
            && word.getStartIndex() <= before.getStartIndex()) {
          return notMust(word);
        }
      }
    }
    Optional<Diagnostic> layer =
        LayerMessages.of(
            tokens,
            span,
            atEnd ? "" : source.textOf(span),
            atEnd ? Token.EOF : token.getType(),
            before,
            expected,
            parser.getRuleInvocationStack());
    if (layer.isPresent()) {
      return layer.get();
    }
    SyntaxMessages messages =
        new SyntaxMessages(
            tokens.get(0).getType(),
            isTerm(before),
            atEnd ? "" : source.textOf(span),
            atEnd ? Token.EOF : token.getType(),
            before,
            expected,
            parser.getRuleInvocationStack());
    return LexicalProblems.error(
        DiagnosticCode.UNREADABLE, span, messages.headline(), messages.help());
  }

  /** True for a {@code let} whose condition has begun. */
  private boolean isTerm(Token before) {
    return tokens.get(0).getType() == RimeLexer.LET
        && tokens.stream()
            .anyMatch(
                token ->
                    token.getType() == RimeLexer.WHERE
                        && token.getStartIndex() <= before.getStartIndex());
  }

  private static Diagnostic notMust(Token word) {
    return new Diagnostic(
        DiagnosticCode.UNREADABLE,
        Diagnostic.Level.ERROR,
        LexicalProblems.span(word),
        "A rule says \"must\", not \"" + word.getText() + "\".",
        "Write \"must\"; how much it matters is said by its severity.",
        List.of(),
        List.of(new Diagnostic.Fix(LexicalProblems.span(word), "must")));
  }

  private boolean beginsPart(int type) {
    return tokens.get(0).getType() == RimeLexer.CASE
        ? CaseWords.beginsStep(type)
        : isFieldWord(type);
  }

  /** What such a word begins is never part of what stands before it. */
  private static boolean isFieldWord(int type) {
    return type == RimeLexer.SEVERITY
        || type == RimeLexer.STAGE
        || type == RimeLexer.BECAUSE
        || type == RimeLexer.SOURCE
        || type == RimeParser.SEEN
        || type == RimeParser.BUILDS
        || (type >= RimeParser.ASK && type <= RimeParser.UP);
  }

  /** The token before one; the last if that is the end. */
  private Token before(Token token) {
    Token before = tokens.get(0);
    for (Token candidate : tokens) {
      if (token.getType() != Token.EOF && candidate.getStartIndex() >= token.getStartIndex()) {
        break;
      }
      before = candidate;
    }
    return before;
  }
}
