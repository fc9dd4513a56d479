package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;

/**
 * Reads rule text into statements. Each statement is parsed on its own, so that a fault in one
 * never hides the next.
 */
public final class StatementReader {
  /** What was read, and what could not be. */
  public record Statements(List<Statement> statements, List<Diagnostic> diagnostics) {
    /** Copies the lists. */
    public Statements {
      statements = List.copyOf(statements);
      diagnostics = List.copyOf(diagnostics);
    }
  }

  /** The pieces of one statement, and whether they follow the grammar. */
  public record Written(List<Piece> pieces, boolean readable) {
    /** Copies the list. */
    public Written {
      pieces = List.copyOf(pieces);
    }
  }

  /** The statements of a text as they stand, and why some of them cannot be read. */
  public record Outline(List<Written> statements, List<Diagnostic> diagnostics) {
    /** Copies the lists. */
    public Outline {
      statements = List.copyOf(statements);
      diagnostics = List.copyOf(diagnostics);
    }
  }

  private final SourceText source;
  private final int nesting;
  private final int errors;
  private final List<Statement> statements = new ArrayList<>();
  private final List<Diagnostic> diagnostics = new ArrayList<>();

  private StatementReader(SourceText source, int nesting, int errors) {
    this.source = source;
    this.nesting = nesting;
    this.errors = errors;
  }

  /**
   * Reads a text, file by file: no statement runs over the end of one.
   *
   * @param nesting how deep parentheses may stand
   * @param errors how many statements that cannot be read are told in detail
   */
  public static Statements read(SourceText source, int nesting, int errors) {
    StatementReader reader = new StatementReader(source, nesting, errors);
    runs(source).forEach(reader::readRun);
    return new Statements(reader.statements, reader.diagnostics);
  }

  /**
   * Reads one file of a text.
   *
   * @param part which one
   * @param nesting how deep parentheses may stand
   * @param errors how many statements that cannot be read are told in detail
   */
  public static Statements read(SourceText source, int part, int nesting, int errors) {
    StatementReader reader = new StatementReader(source, nesting, errors);
    new Tokens(source, part).statements().forEach(reader::readRun);
    return new Statements(reader.statements, reader.diagnostics);
  }

  private static List<Tokens.Run> runs(SourceText source) {
    List<Tokens.Run> runs = new ArrayList<>();
    for (int part = 0; part < source.parts().size(); part++) {
      runs.addAll(new Tokens(source, part).statements());
    }
    return runs;
  }

  /**
   * Reads a text only as far as laying it out takes.
   *
   * @param nesting how deep parentheses may stand
   * @param errors how many statements that cannot be read are told in detail
   */
  public static Outline outline(SourceText source, int nesting, int errors) {
    StatementReader reader = new StatementReader(source, nesting, errors);
    List<Written> written = new ArrayList<>();
    for (Tokens.Run run : runs(source)) {
      written.add(new Written(Pieces.of(run.tokens()), reader.tree(run).isPresent()));
    }
    return new Outline(written, reader.diagnostics);
  }

  /** The pieces of each statement, whether or not they follow the grammar. */
  public static List<List<Piece>> pieces(SourceText source) {
    List<List<Piece>> pieces = new ArrayList<>();
    runs(source).forEach(run -> pieces.add(Pieces.of(run.tokens())));
    return pieces;
  }

  /** The same of one file of a text. */
  public static List<List<Piece>> pieces(SourceText source, int part) {
    List<List<Piece>> pieces = new ArrayList<>();
    new Tokens(source, part).statements().forEach(run -> pieces.add(Pieces.of(run.tokens())));
    return pieces;
  }

  private void readRun(Tokens.Run run) {
    Optional<ParserRuleContext> tree = tree(run);
    if (tree.isEmpty()) {
      return;
    }
    TreeBuilder builder = new TreeBuilder(source, run.tokens());
    Statement statement = builder.statement(tree.get());
    diagnostics.addAll(builder.diagnostics());
    if (builder.diagnostics().isEmpty()) {
      statements.add(statement);
    }
  }

  /** The parse tree of a statement; empty, with a diagnostic, if it does not follow the grammar. */
  private Optional<ParserRuleContext> tree(Tokens.Run run) {
    Optional<Diagnostic> problem = new LexicalProblems(source, nesting).first(run);
    if (problem.isPresent()) {
      diagnostics.add(problem.get());
      return Optional.empty();
    }
    SyntaxProblems problems = new SyntaxProblems(source, run.tokens());
    RimeParser parser = new RimeParser(new CommonTokenStream(new ListTokenSource(run.tokens())));
    parser.removeErrorListeners();
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    parser.setErrorHandler(new BailErrorStrategy());
    try {
      return Optional.of(parse(parser, run.tokens().get(0)));
    } catch (ParseCancellationException cancelled) {
      if (diagnostics.size() > errors) {
        diagnostics.add(uncounted(run.tokens().get(0)));
        return Optional.empty();
      }
      parser.reset();
      parser.getInterpreter().setPredictionMode(PredictionMode.LL);
      parser.setErrorHandler(new DefaultErrorStrategy());
      parser.addErrorListener(problems);
      try {
        return Optional.of(parse(parser, run.tokens().get(0)));
      } catch (ParseCancellationException again) {
        diagnostics.add(problems.found());
        return Optional.empty();
      }
    }
  }

  /** Stands for a fault that will only be counted, so that nobody waits for its words. */
  private static Diagnostic uncounted(Token first) {
    return LexicalProblems.error(
        DiagnosticCode.UNREADABLE,
        LexicalProblems.span(first),
        "This statement cannot be read.",
        "Put the faults before it right and compile again.");
  }

  /** The parse tree of a statement that begins so. */
  static ParserRuleContext parse(RimeParser parser, Token first) {
    return switch (first.getType()) {
      case RimeLexer.STANDARD -> parser.standardStatement();
      case RimeLexer.LET -> parser.letStatement();
      case RimeLexer.TABLE -> parser.tableStatement();
      case RimeLexer.CASE -> parser.caseStatement();
      case RimeLexer.CASES -> parser.casesStatement();
      case RimeLexer.INSPECT -> parser.inspectStatement();
      case RimeLexer.WAIVERS -> parser.waiversStatement();
      case RimeLexer.WAIVE -> parser.waiveStatement();
      case RimeLexer.INCLUDE -> parser.includeStatement();
      case RimeParser.IN -> parser.inRuleStatement();
      case RimeLexer.WITHDRAW -> parser.withdrawStatement();
      default -> parser.ruleStatement();
    };
  }
}
