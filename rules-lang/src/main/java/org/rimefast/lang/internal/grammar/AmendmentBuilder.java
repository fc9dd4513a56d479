package org.rimefast.lang.internal.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.Span;

/** Builds {@code in rule ...} and {@code withdraw ...}. */
final class AmendmentBuilder {
  private final TreeBuilder trees;
  private final ClauseBuilder clauses;
  private final List<Token> tokens;

  AmendmentBuilder(TreeBuilder trees, ClauseBuilder clauses, List<Token> tokens) {
    this.trees = trees;
    this.clauses = clauses;
    this.tokens = tokens;
  }

  Statement amendment(ParserRuleContext tree) {
    if (tree instanceof RimeParser.WithdrawStatementContext withdraw) {
      return made(
          withdraw.id,
          new Statement.Change.Withdrawn(),
          withdraw.amendmentPart(),
          withdraw.id.getStopIndex());
    }
    RimeParser.InRuleStatementContext in = (RimeParser.InRuleStatementContext) tree;
    return made(
        in.id, change(in.change()), in.amendmentPart(), in.change().getStop().getStopIndex());
  }

  private Statement made(
      Token id,
      Statement.Change change,
      List<RimeParser.AmendmentPartContext> parts,
      int lastOfBody) {
    List<Statement.Field> fields = new ArrayList<>();
    List<Statement.Seen> seen = new ArrayList<>();
    for (RimeParser.AmendmentPartContext part : parts) {
      if (part instanceof RimeParser.FieldPartContext field) {
        fields.add(TreeBuilder.field(field.field()));
      } else {
        seen.add(seen((RimeParser.SeenPartContext) part));
      }
    }
    String text = trees.folded(new Span(tokens.get(0).getStartIndex(), lastOfBody + 1));
    return new Statement.Amendment(TreeBuilder.word(id), change, fields, seen, text, trees.whole());
  }

  private static Statement.Seen seen(RimeParser.SeenPartContext tree) {
    Word text = TreeBuilder.text(tree.text());
    return new Statement.Seen(
        TreeBuilder.edition(tree.edition()),
        TreeBuilder.word(tree.hash),
        text,
        ClauseBuilder.spanOf(tree));
  }

  private Statement.Change change(RimeParser.ChangeContext tree) {
    if (tree instanceof RimeParser.PartChangeContext part) {
      return new Statement.Change.OfPart(
          TreeBuilder.word(part.key), TreeBuilder.word(part.WORD().getSymbol()));
    }
    if (tree instanceof RimeParser.ExceptChangeContext except) {
      return new Statement.Change.Except(
          clauses.condition(except.whereClause().condition()),
          trees.folded(except.whereClause().condition()));
    }
    RimeParser.LimitChangeContext limit = (RimeParser.LimitChangeContext) tree;
    List<RimeParser.LimitContext> numbers = limit.limit();
    Statement.Number after = number(numbers.get(numbers.size() - 1));
    return new Statement.Change.OfLimit(
        TreeBuilder.words(limit.word()),
        numbers.size() < 2 ? Optional.empty() : Optional.of(number(numbers.get(0))),
        after);
  }

  private Statement.Number number(RimeParser.LimitContext tree) {
    return trees.number(tree.literal, tree.MINUS());
  }
}
