package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.units.Quantity;

/** Builds conditions, predicates and phrases. */
final class ClauseBuilder {
  private final SourceText source;
  private final List<Diagnostic> diagnostics = new ArrayList<>();
  private final PhraseBuilder phrases;

  ClauseBuilder(SourceText source) {
    this.source = source;
    this.phrases = new PhraseBuilder(this, source, diagnostics);
  }

  List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  static Span spanOf(ParserRuleContext tree) {
    return span(tree.getStart()).to(span(tree.getStop()));
  }

  /** True if the predicate begins with {@code not}, which then belongs to {@code must}. */
  static boolean isDenied(RimeParser.PredicateContext tree) {
    return !tree.predicateTerm(0).NOT().isEmpty();
  }

  /** What stands after {@code must} or {@code must not}. */
  Clause afterMust(RimeParser.PredicateContext tree) {
    return predicate(tree, isDenied(tree) ? 1 : 0);
  }

  /**
   * A predicate.
   *
   * @param skipped how many {@code not} at its start are none of it
   */
  private Clause predicate(RimeParser.PredicateContext tree, int skipped) {
    List<Clause> parts = new ArrayList<>();
    for (RimeParser.PredicateTermContext term : tree.predicateTerm()) {
      List<Clause.With> with = withs(term.with());
      Clause part = atom(term.predicateAtom(), with, spanAfterNot(term.NOT(), term));
      List<TerminalNode> nots = term.NOT();
      parts.add(negated(part, parts.isEmpty() ? nots.subList(skipped, nots.size()) : nots));
    }
    Span whole = spanOf(tree);
    Span span = skipped == 0 ? whole : parts.get(0).span().to(new Span(whole.end(), whole.end()));
    return joined(parts, tree.conjunction(), span);
  }

  private Clause atom(RimeParser.PredicateAtomContext tree, List<Clause.With> with, Span span) {
    if (tree instanceof RimeParser.PredicateGroupContext group) {
      return new Clause.Grouped(predicate(group.predicate(), 0), with, span);
    }
    return new Clause.Leaf(Optional.empty(), predicateTail(tree), with, span);
  }

  private Clause.Tail predicateTail(RimeParser.PredicateAtomContext tree) {
    if (tree instanceof RimeParser.HavePredicateContext have) {
      return new Clause.Tail.Have(
          word(have.HAVE().getSymbol()), false, operand(have.operand()), sign(have.signTail()));
    }
    if (tree instanceof RimeParser.BePredicateContext be) {
      return new Clause.Tail.Be(
          word(be.BE().getSymbol()),
          be.NOT() != null,
          Optional.of(operand(be.operand())),
          Optional.empty());
    }
    if (tree instanceof RimeParser.BeSignPredicateContext be) {
      return new Clause.Tail.Be(
          word(be.BE().getSymbol()), be.NOT() != null, Optional.empty(), sign(be.signTail()));
    }
    RimeParser.VerbPredicateContext verb = (RimeParser.VerbPredicateContext) tree;
    if (verb.signTail() != null) {
      String written = source.textOf(spanOf(verb));
      diagnostics.add(
          LexicalProblems.error(
              DiagnosticCode.UNREADABLE,
              spanOf(verb),
              "After \"must\" a comparison needs \"have\", or \"with\" behind a verb.",
              "Write: have " + shortened(written)));
    }
    return new Clause.Tail.Verb(verb(verb));
  }

  private static String shortened(String text) {
    String folded = text.replaceAll("\\s+", " ");
    return folded.length() <= 60 ? folded : folded.substring(0, 57) + "...";
  }

  Clause condition(RimeParser.ConditionContext tree) {
    List<Clause> parts = new ArrayList<>();
    for (RimeParser.ConditionTermContext term : tree.conditionTerm()) {
      Span span = spanAfterNot(term.NOT(), term);
      List<Clause.With> with = withs(term.with());
      Operand operand = operand(term.operand());
      Clause leaf =
          term.clauseTail() == null
              ? new Clause.Leaf(Optional.empty(), new Clause.Tail.Verb(operand), with, span)
              : new Clause.Leaf(Optional.of(operand), tail(term.clauseTail()), with, span);
      parts.add(negated(leaf, term.NOT()));
    }
    return joined(parts, tree.conjunction(), spanOf(tree));
  }

  private Clause.Tail tail(RimeParser.ClauseTailContext tree) {
    if (tree instanceof RimeParser.IsTailContext is) {
      return new Clause.Tail.Be(
          word(is.key), is.NOT() != null, Optional.of(operand(is.operand())), Optional.empty());
    }
    if (tree instanceof RimeParser.IsSignTailContext is) {
      return new Clause.Tail.Be(
          word(is.key), is.NOT() != null, Optional.empty(), sign(is.signTail()));
    }
    if (tree instanceof RimeParser.HasTailContext has) {
      return new Clause.Tail.Have(
          word(has.key), false, operand(has.operand()), sign(has.signTail()));
    }
    if (tree instanceof RimeParser.DoesNotHaveTailContext has) {
      return new Clause.Tail.Have(
          word(has.key), true, operand(has.operand()), sign(has.signTail()));
    }
    if (tree instanceof RimeParser.DoesNotTailContext does) {
      return new Clause.Tail.DoNot(word(does.key), operand(does.operand()));
    }
    RimeParser.CompareTailContext compare = (RimeParser.CompareTailContext) tree;
    return new Clause.Tail.Compare(sign(compare.signTail()).orElseThrow());
  }

  /** The place of a term without the {@code not} before it. */
  private static Span spanAfterNot(List<TerminalNode> nots, ParserRuleContext term) {
    Span whole = spanOf(term);
    if (nots.isEmpty()) {
      return whole;
    }
    Token first = ((ParserRuleContext) term.getChild(nots.size())).getStart();
    return span(first).to(new Span(whole.end(), whole.end()));
  }

  private Clause negated(Clause part, List<TerminalNode> nots) {
    if (nots.isEmpty()) {
      return part;
    }
    Span first = span(nots.get(0).getSymbol());
    if (nots.size() > 1) {
      Span second = span(nots.get(1).getSymbol());
      diagnostics.add(
          LexicalProblems.error(
              DiagnosticCode.UNCLEAR_NOT,
              first.to(second),
              "Two \"not\" stand in a row.",
              "Write one \"not\", or none."));
    }
    return new Clause.Negated(part, first.to(part.span()));
  }

  private static Clause joined(
      List<Clause> parts, List<RimeParser.ConjunctionContext> between, Span span) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    List<Clause.Conjunction> conjunctions = new ArrayList<>();
    for (RimeParser.ConjunctionContext conjunction : between) {
      conjunctions.add(
          new Clause.Conjunction(
              conjunction instanceof RimeParser.AndConjunctionContext, spanOf(conjunction)));
    }
    return new Clause.Joined(parts, conjunctions, span);
  }

  private List<Clause.With> withs(List<RimeParser.WithContext> trees) {
    List<Clause.With> withs = new ArrayList<>();
    for (RimeParser.WithContext tree : trees) {
      withs.add(new Clause.With(operand(tree.operand()), sign(tree.signTail()), spanOf(tree)));
    }
    return withs;
  }

  private Optional<Clause.Sign> sign(RimeParser.@Nullable SignTailContext tree) {
    if (tree == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Clause.Sign(comparison(tree.sign), operand(tree.operand()), span(tree.sign)));
  }

  static Comparison comparison(Token sign) {
    return switch (sign.getType()) {
      case RimeLexer.AT_LEAST_SIGN -> Comparison.AT_LEAST;
      case RimeLexer.MORE_SIGN -> Comparison.MORE_THAN;
      case RimeLexer.AT_MOST_SIGN -> Comparison.AT_MOST;
      case RimeLexer.LESS_SIGN -> Comparison.LESS_THAN;
      case RimeLexer.EQUAL_SIGN -> Comparison.EQUAL;
      default -> Comparison.NOT_EQUAL;
    };
  }

  Operand operand(RimeParser.OperandContext tree) {
    List<Operand> products = new ArrayList<>();
    List<Operand.Operator> operators = new ArrayList<>();
    List<RimeParser.ProductContext> trees = tree.product();
    products.add(product(trees.get(0)));
    for (int i = 1; i < trees.size(); i++) {
      Token sign = ((TerminalNode) tree.getChild(2 * i - 1)).getSymbol();
      boolean minus = sign.getType() == RimeLexer.MINUS;
      Operand next = product(trees.get(i));
      Operand before = products.get(products.size() - 1);
      Optional<Operand> limit = minus ? limit(before, sign, next) : Optional.empty();
      if (limit.isPresent()) {
        products.set(products.size() - 1, limit.get());
      } else {
        products.add(next);
        operators.add(minus ? Operand.Operator.MINUS : Operand.Operator.PLUS);
      }
    }
    return products.size() == 1
        ? products.get(0)
        : new Operand.Chain(products, operators, spanOf(tree));
  }

  /** {@code less than -38 degC}: behind such words, a minus sign is the number's own. */
  private Optional<Operand> limit(Operand before, Token sign, Operand next) {
    if (!(before instanceof Phrase words)
        || !(words.items().get(words.items().size() - 1) instanceof Phrase.BoundItem)) {
      return Optional.empty();
    }
    if (next instanceof Operand.Chain product) {
      List<Operand> factors = new ArrayList<>(product.operands());
      return limit(words, sign, factors.get(0))
          .map(
              first -> {
                factors.set(0, first);
                return new Operand.Chain(
                    factors, product.operators(), words.span().to(product.span()));
              });
    }
    if (!(next instanceof Phrase phrase)
        || !(phrase.items().get(0) instanceof Phrase.QuantityItem number)) {
      return Optional.empty();
    }
    List<Phrase.Item> items = new ArrayList<>(words.items());
    items.addAll(negative(sign, phrase, number).items());
    return Optional.of(new Phrase(items, words.span().to(phrase.span())));
  }

  private Operand product(RimeParser.ProductContext tree) {
    List<Operand> factors = new ArrayList<>();
    tree.factor().forEach(factor -> factors.add(factor(factor)));
    List<Operand.Operator> operators = new ArrayList<>();
    for (RimeParser.TimesOrDividedContext operator : tree.timesOrDivided()) {
      operators.add(
          operator instanceof RimeParser.TimesContext
              ? Operand.Operator.TIMES
              : Operand.Operator.DIVIDED_BY);
    }
    return factors.size() == 1
        ? factors.get(0)
        : new Operand.Chain(factors, operators, spanOf(tree));
  }

  private Operand factor(RimeParser.FactorContext tree) {
    Phrase phrase = phrase(tree.phrase());
    if (tree.MINUS() == null) {
      return phrase;
    }
    Token sign = tree.MINUS().getSymbol();
    return phrase.items().get(0) instanceof Phrase.QuantityItem number
        ? negative(sign, phrase, number)
        : new Operand.Minus(phrase, span(sign).to(phrase.span()));
  }

  /** A phrase with the sign before it drawn into the number that it begins with. */
  private Phrase negative(Token sign, Phrase phrase, Phrase.QuantityItem number) {
    Quantity negative = TreeBuilder.quantity("-" + source.textOf(number.span()));
    List<Phrase.Item> items = new ArrayList<>(phrase.items());
    items.set(0, new Phrase.QuantityItem(negative, span(sign).to(number.span())));
    return new Phrase(items, span(sign).to(phrase.span()));
  }

  Phrase phrase(RimeParser.PhraseContext tree) {
    return phrases.phrase(tree);
  }

  Phrase subject(RimeParser.SubjectContext tree) {
    return phrases.subject(tree);
  }

  /** What stands after {@code must}; a sum is read only to be told of. */
  private Operand verb(RimeParser.VerbPredicateContext tree) {
    RimeParser.VerbContext words = tree.verb();
    List<Phrase.Item> first = new ArrayList<>();
    if (words.wordy() != null) {
      first.add(phrases.wordy(words.wordy()));
    } else if (words.TEXT() != null) {
      first.add(PhraseBuilder.text(words.TEXT().getSymbol()));
    }
    Phrase verb = phrases.phrase(words, first, words.item(), words.between());
    if (tree.sumTail().isEmpty()) {
      return verb;
    }
    List<Operand> operands = new ArrayList<>(List.of(verb));
    List<Operand.Operator> operators = new ArrayList<>();
    Span span = verb.span();
    for (RimeParser.SumTailContext tail : tree.sumTail()) {
      operands.add(factor(tail.factor()));
      operators.add(Operand.Operator.PLUS);
      span = span.to(spanOf(tail));
    }
    return new Operand.Chain(operands, operators, span);
  }

  private static Word word(Token token) {
    return new Word(token.getText(), span(token));
  }
}
