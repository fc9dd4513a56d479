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
   * Reads a text.
   *
   * @param nesting how deep parentheses may stand
   * @param errors how many statements that cannot be read are told in detail
   */
  public static Statements read(SourceText source, int nesting, int errors) {
    StatementReader reader = new StatementReader(source, nesting, errors);
    for (Tokens.Run run : new Tokens(source).statements()) {
      reader.readRun(run);
    }
    return new Statements(reader.statements, reader.diagnostics);
  }

  private void readRun(Tokens.Run run) {
    Optional<Diagnostic> problem = new LexicalProblems(source, nesting).first(run);
    if (problem.isPresent()) {
      diagnostics.add(problem.get());
      return;
    }
    SyntaxProblems problems = new SyntaxProblems(source, run.tokens());
    RimeParser parser = new RimeParser(new CommonTokenStream(new ListTokenSource(run.tokens())));
    parser.removeErrorListeners();
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    parser.setErrorHandler(new BailErrorStrategy());
    ParserRuleContext tree;
    try {
      tree = parse(parser, run.tokens().get(0));
    } catch (ParseCancellationException cancelled) {
      if (diagnostics.size() > errors) {
        diagnostics.add(uncounted(run.tokens().get(0)));
        return;
      }
      parser.reset();
      parser.getInterpreter().setPredictionMode(PredictionMode.LL);
      parser.setErrorHandler(new DefaultErrorStrategy());
      parser.addErrorListener(problems);
      try {
        tree = parse(parser, run.tokens().get(0));
      } catch (ParseCancellationException again) {
        diagnostics.add(problems.found());
        return;
      }
    }
    TreeBuilder builder = new TreeBuilder(source, run.tokens());
    Statement statement = builder.statement(tree);
    diagnostics.addAll(builder.diagnostics());
    if (builder.diagnostics().isEmpty()) {
      statements.add(statement);
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

  private static ParserRuleContext parse(RimeParser parser, Token first) {
    return switch (first.getType()) {
      case RimeLexer.STANDARD -> parser.standardStatement();
      case RimeLexer.LET -> parser.letStatement();
      default -> parser.ruleStatement();
    };
  }
}
