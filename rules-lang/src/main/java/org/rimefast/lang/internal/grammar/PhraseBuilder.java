package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Builds phrases and what they hold. */
final class PhraseBuilder {
  private static final int MOST_CONDITIONS = 20;

  private final ClauseBuilder clauses;
  private final SourceText source;
  private final List<Diagnostic> diagnostics;

  /** A builder; {@code clauses} builds the conditions in parentheses. */
  PhraseBuilder(ClauseBuilder clauses, SourceText source, List<Diagnostic> diagnostics) {
    this.clauses = clauses;
    this.source = source;
    this.diagnostics = diagnostics;
  }

  Phrase phrase(RimeParser.PhraseContext tree) {
    return phrase(tree, List.of(), tree.item(), tree.between());
  }

  /** What a sentence begins with. */
  Phrase subject(RimeParser.SubjectContext tree) {
    List<Phrase.Item> first = new ArrayList<>();
    if (tree.wordy() != null) {
      first.add(wordy(tree.wordy()));
    } else if (tree.enclosed() != null) {
      first.add(enclosed(tree.enclosed()));
    }
    return phrase(tree, first, tree.item(), tree.between());
  }

  /** The items that stand first, then those of the trees, and two more around {@code and}. */
  Phrase phrase(
      ParserRuleContext whole,
      List<Phrase.Item> first,
      List<RimeParser.ItemContext> trees,
      RimeParser.@Nullable BetweenContext between) {
    List<Phrase.Item> items = new ArrayList<>(first);
    trees.forEach(item -> items.add(item(item)));
    if (between != null) {
      items.add(wordItem(between.BETWEEN().getSymbol()));
      between.first.item().forEach(item -> items.add(item(item)));
      items.add(wordItem(between.AND().getSymbol()));
      between.second.item().forEach(item -> items.add(item(item)));
    }
    return new Phrase(items, ClauseBuilder.spanOf(whole));
  }

  private static Phrase.WordItem wordItem(Token token) {
    return new Phrase.WordItem(token.getText(), span(token));
  }

  private Phrase.Item item(RimeParser.ItemContext tree) {
    if (tree instanceof RimeParser.WordyItemContext wordy) {
      return wordy(wordy.wordy());
    }
    return tree instanceof RimeParser.EnclosedItemContext enclosed
        ? enclosed(enclosed.enclosed())
        : text(tree.getStart());
  }

  static Phrase.Item text(Token token) {
    return new Phrase.TextItem(TreeBuilder.unquoted(token), span(token));
  }

  Phrase.Item wordy(RimeParser.WordyContext tree) {
    Span span = ClauseBuilder.spanOf(tree);
    if (tree.bound() != null) {
      return new Phrase.BoundItem(bound(tree.bound()), span);
    }
    return tree.word() != null
        ? wordItem(tree.getStart())
        : new Phrase.QuantityItem(TreeBuilder.quantity(source.textOf(span)), span);
  }

  private Phrase.Item enclosed(RimeParser.EnclosedContext tree) {
    Span span = ClauseBuilder.spanOf(tree);
    if (tree instanceof RimeParser.WhereItemContext where) {
      return new Phrase.WhereItem(clauses.condition(where.condition()), span);
    }
    if (tree instanceof RimeParser.ForItemContext many) {
      Clause part = clauses.condition(many.condition());
      return new Phrase.GroupItem(new Clause.ForMany(phrase(many.phrase()), part, span), span);
    }
    if (tree instanceof RimeParser.ConditionalItemContext choice) {
      return conditional(choice.conditional(), span);
    }
    return new Phrase.GroupItem(
        clauses.condition(((RimeParser.GroupItemContext) tree).condition()), span);
  }

  /** From the last condition to the first, each of them within the one before it. */
  private Phrase.Item conditional(RimeParser.ConditionalContext tree, Span span) {
    int count = tree.condition().size();
    if (count > MOST_CONDITIONS) {
      diagnostics.add(
          LexicalProblems.error(
              DiagnosticCode.TOO_DEEP,
              span,
              "This choice of values has more than " + MOST_CONDITIONS + " conditions.",
              "Write a rule for some of the cases, or name fewer of them."));
      count = 1;
    }
    Operand otherwise = clauses.operand(tree.operand(tree.operand().size() - 1));
    for (int i = count - 1; i > 0; i--) {
      Span from = ClauseBuilder.spanOf(tree.condition(i)).to(otherwise.span());
      Phrase.Item inner =
          new Phrase.ConditionalItem(
              clauses.condition(tree.condition(i)),
              clauses.operand(tree.operand(i)),
              otherwise,
              from);
      otherwise = new Phrase(List.of(inner), from);
    }
    return new Phrase.ConditionalItem(
        clauses.condition(tree.condition(0)), clauses.operand(tree.operand(0)), otherwise, span);
  }

  static Phrase.Bound bound(RimeParser.BoundContext tree) {
    return switch (tree.getStart().getType()) {
      case RimeParser.BOUND_AT ->
          tree instanceof RimeParser.AtLeastBoundContext
              ? Phrase.Bound.AT_LEAST
              : Phrase.Bound.AT_MOST;
      case RimeParser.BOUND_MORE -> Phrase.Bound.MORE_THAN;
      case RimeParser.BOUND_LESS -> Phrase.Bound.LESS_THAN;
      default -> Phrase.Bound.EXACTLY;
    };
  }
}
