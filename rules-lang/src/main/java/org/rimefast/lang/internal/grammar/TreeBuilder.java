package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Sentence;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.QuantityParser.Parsed;

/** Builds statements from parse trees that have no faults. */
final class TreeBuilder {
  private final SourceText source;
  private final List<Token> tokens;
  private final ClauseBuilder clauses;

  TreeBuilder(SourceText source, List<Token> tokens) {
    this.source = source;
    this.tokens = tokens;
    this.clauses = new ClauseBuilder(source);
  }

  /** What is wrong with the statement although it can be read. */
  List<Diagnostic> diagnostics() {
    return clauses.diagnostics();
  }

  Statement statement(ParserRuleContext tree) {
    if (tree instanceof RimeParser.StandardStatementContext header) {
      return header(header);
    }
    if (tree instanceof RimeParser.LetStatementContext let) {
      return let(let);
    }
    if (tree instanceof RimeParser.IncludeStatementContext include) {
      Token name = include.TEXT().getSymbol();
      return new Statement.Include(new Word(unquoted(name), span(name)), whole());
    }
    if (tree instanceof RimeParser.InRuleStatementContext
        || tree instanceof RimeParser.WithdrawStatementContext) {
      return new AmendmentBuilder(this, clauses, tokens).amendment(tree);
    }
    if (tree instanceof RimeParser.CasesStatementContext cases) {
      return new Statement.CaseFile(word(cases.name), whole());
    }
    if (tree instanceof RimeParser.CaseStatementContext found) {
      return new CaseBuilder(source, this::folded).build(found, text(found.text()), whole());
    }
    if (tree instanceof RimeParser.TableStatementContext table) {
      return table(table);
    }
    if (tree instanceof RimeParser.RuleStatementContext rule) {
      return rule(rule);
    }
    return new SiteBuilder(this, clauses, source, whole()).statement(tree);
  }

  Span whole() {
    return span(tokens.get(0)).to(span(tokens.get(tokens.size() - 1)));
  }

  private Statement header(RimeParser.StandardStatementContext tree) {
    List<Statement.BuildsOn> builds = new ArrayList<>();
    for (RimeParser.BuildsOnContext base : tree.buildsOn()) {
      builds.add(
          new Statement.BuildsOn(
              word(base.name), edition(base.edition()), ClauseBuilder.spanOf(base)));
    }
    return new Statement.Header(
        word(tree.name),
        edition(tree.edition()),
        headerFields(tree.headerField()),
        builds,
        whole());
  }

  static Word edition(RimeParser.EditionContext edition) {
    Token token = edition.getStart();
    return edition instanceof RimeParser.TextEditionContext
        ? new Word(unquoted(token), span(token))
        : word(token);
  }

  private Statement let(RimeParser.LetStatementContext tree) {
    List<Word> name = words(tree.word());
    if (tree.letValue() instanceof RimeParser.TermValueContext term) {
      return new Statement.Term(
          name,
          words(term.word()),
          Optional.ofNullable(term.whereClause()).map(w -> clauses.condition(w.condition())),
          fields(tree.field()),
          whole());
    }
    RimeParser.NumberValueContext number = (RimeParser.NumberValueContext) tree.letValue();
    Statement.Number value = number(number.literal, number.MINUS());
    return new Statement.Let(name, value.quantity(), value.span(), fields(tree.field()), whole());
  }

  /** A number with its unit, and the minus sign before it if there is one. */
  Statement.Number number(Token literal, @Nullable TerminalNode minus) {
    Span span = span(literal);
    String written = source.textOf(span);
    if (minus != null) {
      span = span(minus.getSymbol()).to(span);
      written = "-" + written;
    }
    return new Statement.Number(quantity(written), span);
  }

  static List<Word> words(List<RimeParser.WordContext> trees) {
    List<Word> words = new ArrayList<>();
    for (RimeParser.WordContext tree : trees) {
      words.add(word(tree.getStart()));
    }
    return words;
  }

  private Statement table(RimeParser.TableStatementContext tree) {
    List<Word> name = new ArrayList<>();
    tree.tableWord().forEach(word -> name.add(word(word.getStart())));
    List<Operand> inputs = new ArrayList<>();
    tree.operand().forEach(input -> inputs.add(clauses.operand(input)));
    CellBuilder cells = new CellBuilder(source);
    return new Statement.Table(
        name,
        inputs,
        cells.rows(tree.row()),
        Optional.ofNullable(tree.cell()).map(cells::cell),
        fields(tree.field()),
        whole());
  }

  private Statement rule(RimeParser.RuleStatementContext tree) {
    return new Statement.Rule(
        word(tree.id),
        text(tree.text()),
        sentence(tree.sentence()),
        folded(ClauseBuilder.spanOf(tree.sentence())),
        fields(tree.field()),
        whole());
  }

  private static List<Statement.Field> fields(List<RimeParser.FieldContext> trees) {
    List<Statement.Field> fields = new ArrayList<>();
    trees.forEach(tree -> fields.add(field(tree)));
    return fields;
  }

  static Statement.Field field(RimeParser.FieldContext tree) {
    if (tree instanceof RimeParser.TextFieldContext field) {
      return new Statement.Field(word(field.key), text(field.text()));
    }
    RimeParser.WordFieldContext field = (RimeParser.WordFieldContext) tree;
    return new Statement.Field(word(field.key), word(field.WORD().getSymbol()));
  }

  static List<Statement.Field> headerFields(List<RimeParser.HeaderFieldContext> trees) {
    List<Statement.Field> fields = new ArrayList<>();
    for (RimeParser.HeaderFieldContext field : trees) {
      fields.add(new Statement.Field(word(field.key), text(field.text())));
    }
    return fields;
  }

  private Sentence sentence(RimeParser.SentenceContext tree) {
    if (tree instanceof RimeParser.ForEachSentenceContext sentence) {
      return new Sentence(
          true,
          clauses.phrase(sentence.phrase()),
          Optional.ofNullable(sentence.whereClause()).map(w -> clauses.condition(w.condition())),
          Optional.of(clauses.operand(sentence.operand())),
          word(sentence.MUST().getSymbol()),
          ClauseBuilder.isDenied(sentence.predicate()),
          clauses.afterMust(sentence.predicate()),
          Optional.ofNullable(sentence.guard()).map(this::guard),
          ClauseBuilder.spanOf(tree));
    }
    RimeParser.PlainSentenceContext sentence = (RimeParser.PlainSentenceContext) tree;
    return new Sentence(
        false,
        clauses.subject(sentence.subject()),
        Optional.ofNullable(sentence.whereClause()).map(w -> clauses.condition(w.condition())),
        Optional.empty(),
        word(sentence.MUST().getSymbol()),
        ClauseBuilder.isDenied(sentence.predicate()),
        clauses.afterMust(sentence.predicate()),
        Optional.ofNullable(sentence.guard()).map(this::guard),
        ClauseBuilder.spanOf(tree));
  }

  private Sentence.Guard guard(RimeParser.GuardContext tree) {
    return new Sentence.Guard(word(tree.key), clauses.condition(tree.condition()));
  }

  /**
   * A stretch on one line, without comments and texts in triple quotes, spaced the same however it
   * was laid out.
   */
  String folded(ParserRuleContext tree) {
    return folded(ClauseBuilder.spanOf(tree));
  }

  /** The pieces within a stretch on one line. */
  String folded(Span stretch) {
    StringBuilder folded = new StringBuilder();
    Piece.Kind earlier = Piece.Kind.KEYWORD;
    Piece.Kind left = Piece.Kind.KEYWORD;
    for (Piece piece : Pieces.of(tokens)) {
      if (piece.span().start() < stretch.start()
          || piece.span().end() > stretch.end()
          || piece.kind() == Piece.Kind.BLOCK) {
        continue;
      }
      boolean apart = !folded.isEmpty() && Piece.isApart(earlier, left, piece.kind());
      folded.append(apart ? " " : "");
      String written = source.textOf(piece.span());
      // Of all but texts, only quantities can hold spaces, which mean the same however many.
      folded.append(piece.kind() == Piece.Kind.TEXT ? written : written.replaceAll("\\s+", " "));
      earlier = left;
      left = piece.kind();
    }
    return folded.toString();
  }

  static Word word(Token token) {
    return new Word(token.getText(), span(token));
  }

  /** Texts that follow each other make one, with a space between. */
  static Word text(RimeParser.TextContext tree) {
    List<String> parts = new ArrayList<>();
    tree.TEXT().forEach(part -> parts.add(unquoted(part.getSymbol())));
    return new Word(String.join(" ", parts), ClauseBuilder.spanOf(tree));
  }

  static String unquoted(Token token) {
    String text = token.getText();
    return text.substring(1, text.length() - 1);
  }

  /** A quantity that the tokens have found to be one. */
  static Quantity quantity(String written) {
    Parsed parsed = QuantityParser.parse(written);
    if (parsed instanceof Parsed.Ok ok) {
      return ok.quantity();
    }
    throw new IllegalStateException("not a quantity: " + written);
  }
}
