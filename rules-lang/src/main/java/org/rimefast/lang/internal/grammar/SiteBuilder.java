package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Builds what is asked and allowed on site: inspect items and waivers. */
final class SiteBuilder {
  private final TreeBuilder trees;
  private final ClauseBuilder clauses;
  private final SourceText source;
  private final Span whole;

  SiteBuilder(TreeBuilder trees, ClauseBuilder clauses, SourceText source, Span whole) {
    this.trees = trees;
    this.clauses = clauses;
    this.source = source;
    this.whole = whole;
  }

  Statement statement(ParserRuleContext tree) {
    if (tree instanceof RimeParser.InspectStatementContext inspect) {
      return inspect(inspect);
    }
    if (tree instanceof RimeParser.WaiversStatementContext waivers) {
      return new Statement.Waivers(
          TreeBuilder.word(waivers.name), TreeBuilder.headerFields(waivers.headerField()), whole);
    }
    return waive((RimeParser.WaiveStatementContext) tree);
  }

  private Statement inspect(RimeParser.InspectStatementContext tree) {
    Optional<Statement.Limit> limit = Optional.empty();
    List<Statement.Field> fields = new ArrayList<>();
    for (RimeParser.InspectFieldContext field : tree.inspectField()) {
      if (field instanceof RimeParser.ReadingFieldContext reading) {
        Statement.Limit found = limit(reading);
        limit = limit.isPresent() ? limit : Optional.of(found);
        fields.add(new Statement.Field(found.key(), new Word(found.text(), found.valueSpan())));
      } else {
        fields.add(inspectField(field));
      }
    }
    Span subject = span(tree.FOR().getSymbol()).to(ClauseBuilder.spanOf(tree.phrase()));
    if (tree.whereClause() != null) {
      subject = subject.to(ClauseBuilder.spanOf(tree.whereClause()));
    }
    return new Statement.Inspect(
        TreeBuilder.word(tree.id),
        TreeBuilder.text(tree.text()),
        clauses.phrase(tree.phrase()),
        where(tree.whereClause()),
        trees.folded(subject),
        subject,
        limit,
        fields,
        whole);
  }

  private static Statement.Field inspectField(RimeParser.InspectFieldContext tree) {
    if (tree instanceof RimeParser.AskFieldContext ask) {
      return new Statement.Field(TreeBuilder.word(ask.key), TreeBuilder.text(ask.text()));
    }
    if (tree instanceof RimeParser.AnswerFieldContext answer) {
      return new Statement.Field(
          TreeBuilder.word(answer.key), TreeBuilder.word(answer.WORD().getSymbol()));
    }
    return TreeBuilder.field(((RimeParser.SharedInspectFieldContext) tree).field());
  }

  private Statement.Limit limit(RimeParser.ReadingFieldContext tree) {
    Span whole = ClauseBuilder.spanOf(tree);
    Word key = TreeBuilder.word(tree.key);
    if (tree.readingLimit() instanceof RimeParser.LiteralLimitContext literal) {
      Token minus = literal.MINUS() == null ? null : literal.MINUS().getSymbol();
      Span span = span(literal.literal);
      String written = source.textOf(span);
      if (minus != null) {
        span = span(minus).to(span);
        written = "-" + written;
      }
      return new Statement.Limit(
          key,
          comparison(literal.readingBound()),
          Optional.of(TreeBuilder.quantity(written)),
          List.of(),
          span,
          trees.folded(whole));
    }
    RimeParser.NamedLimitContext named = (RimeParser.NamedLimitContext) tree.readingLimit();
    List<Word> name = TreeBuilder.words(named.word());
    return new Statement.Limit(
        key,
        comparison(named.readingBound()),
        Optional.empty(),
        name,
        name.get(0).span().to(name.get(name.size() - 1).span()),
        trees.folded(whole));
  }

  private static Comparison comparison(RimeParser.ReadingBoundContext tree) {
    return switch (tree.getStop().getType()) {
      case RimeLexer.LEAST, RimeLexer.AT_LEAST_SIGN -> Comparison.AT_LEAST;
      case RimeLexer.MOST, RimeLexer.AT_MOST_SIGN -> Comparison.AT_MOST;
      case RimeLexer.MORE_SIGN -> Comparison.MORE_THAN;
      case RimeLexer.LESS_SIGN -> Comparison.LESS_THAN;
      default ->
          tree.getStart().getType() == RimeParser.BOUND_MORE
              ? Comparison.MORE_THAN
              : Comparison.LESS_THAN;
    };
  }

  private Optional<Clause> where(RimeParser.WhereClauseContext tree) {
    return Optional.ofNullable(tree).map(where -> clauses.condition(where.condition()));
  }

  private Statement waive(RimeParser.WaiveStatementContext tree) {
    List<Statement.Field> fields = new ArrayList<>();
    tree.waiverField().forEach(field -> fields.add(waiverField(field)));
    String target = trees.folded(ClauseBuilder.spanOf(tree.waived()));
    Word rule = TreeBuilder.word(tree.ruleId);
    if (tree.waived() instanceof RimeParser.NamedElementsContext named) {
      List<Word> elements = new ArrayList<>();
      named
          .TEXT()
          .forEach(
              text ->
                  elements.add(
                      new Word(TreeBuilder.unquoted(text.getSymbol()), span(text.getSymbol()))));
      return new Statement.Waive(
          rule, elements, Optional.empty(), Optional.empty(), target, fields, whole);
    }
    RimeParser.DescribedElementsContext described =
        (RimeParser.DescribedElementsContext) tree.waived();
    return new Statement.Waive(
        rule,
        List.of(),
        Optional.of(clauses.subject(described.subject())),
        where(described.whereClause()),
        target,
        fields,
        whole);
  }

  private Statement.Field waiverField(RimeParser.WaiverFieldContext tree) {
    if (tree instanceof RimeParser.PlanFieldContext plan) {
      return new Statement.Field(
          two(plan.key, plan.WORD().getSymbol()), TreeBuilder.text(plan.text()));
    }
    if (tree instanceof RimeParser.ApprovedFieldContext approved) {
      return new Statement.Field(
          two(approved.key, approved.BY().getSymbol()), TreeBuilder.text(approved.text()));
    }
    if (tree instanceof RimeParser.DateFieldContext date) {
      return new Statement.Field(
          TreeBuilder.word(date.key), TreeBuilder.word(date.date().getStart()));
    }
    if (tree instanceof RimeParser.BoundFieldContext bound) {
      Span span = span(bound.literal);
      String written = source.textOf(span);
      if (bound.MINUS() != null) {
        span = span(bound.MINUS().getSymbol()).to(span);
        written = "-" + written;
      }
      return new Statement.Field(
          two(bound.key, bound.WORD().getSymbol()),
          new Word(written.replaceAll("\\s+", " "), span));
    }
    return TreeBuilder.field(((RimeParser.SharedWaiverFieldContext) tree).field());
  }

  private static Word two(Token first, Token second) {
    return new Word(first.getText() + " " + second.getText(), span(first).to(span(second)));
  }
}
