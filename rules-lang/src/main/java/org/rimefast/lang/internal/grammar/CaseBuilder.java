package org.rimefast.lang.internal.grammar;

import static org.rimefast.lang.internal.grammar.LexicalProblems.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.CaseEdit.NewValue;
import org.rimefast.lang.cases.CaseEdit.Target;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.cases.Expectation.Outcome;
import org.rimefast.lang.internal.syntax.CaseStep;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Builds cases. */
final class CaseBuilder {
  private static final int QUOTES = 3;

  private final SourceText source;
  private final Function<ParserRuleContext, String> folded;

  /**
   * A builder for one text.
   *
   * @param folded gives the words of a tree on one line
   */
  CaseBuilder(SourceText source, Function<ParserRuleContext, String> folded) {
    this.source = source;
    this.folded = folded;
  }

  Statement.Case build(RimeParser.CaseStatementContext tree, Word name, Span whole) {
    Optional<Word> rule = Optional.empty();
    if (tree.caseScope() instanceof RimeParser.OneRuleContext one) {
      rule = Optional.of(TreeBuilder.word(one.WORD().getSymbol()));
    }
    List<CaseStep> steps = new ArrayList<>();
    tree.caseStep().forEach(step -> steps.add(step(step)));
    return new Statement.Case(name, rule, steps, whole);
  }

  private CaseStep step(RimeParser.CaseStepContext tree) {
    Span span = ClauseBuilder.spanOf(tree);
    String written = folded.apply(tree);
    if (tree instanceof RimeParser.PlanStepContext plan) {
      return plan.BLOCK() == null
          ? new CaseStep.Plan(quoted(plan.TEXT()), false, span)
          : new CaseStep.Plan(block(plan.BLOCK()), true, span);
    }
    if (tree instanceof RimeParser.SetStepContext set) {
      return new CaseStep.Edit(
          new CaseEdit.Set(target(set.caseTarget()), value(set.caseValue()), written, span));
    }
    if (tree instanceof RimeParser.RemoveStepContext remove) {
      return new CaseStep.Edit(new CaseEdit.Remove(target(remove.caseTarget()), written, span));
    }
    if (tree instanceof RimeParser.AddStepContext add) {
      String list = add.caseWord().getText();
      return new CaseStep.Edit(new CaseEdit.Add(list, block(add.BLOCK()).text(), written, span));
    }
    RimeParser.ExpectStepContext expect = (RimeParser.ExpectStepContext) tree;
    Optional<Word> rule = Optional.ofNullable(expect.id).map(TreeBuilder::word);
    return expectation(rule, expect.caseOutcome(), written, span);
  }

  private static Target target(RimeParser.CaseTargetContext tree) {
    if (tree instanceof RimeParser.FieldTargetContext field) {
      return new Target(
          Optional.of(joined(field.caseWord())), TreeBuilder.unquoted(field.TEXT().getSymbol()));
    }
    RimeParser.WholeTargetContext whole = (RimeParser.WholeTargetContext) tree;
    return new Target(Optional.empty(), TreeBuilder.unquoted(whole.TEXT().getSymbol()));
  }

  private NewValue value(RimeParser.CaseValueContext tree) {
    if (tree instanceof RimeParser.NumberCaseValueContext number) {
      Token literal = number.getStop();
      String written = source.textOf(span(literal)).replaceAll("\\s+", " ");
      return new NewValue(
          number.NUMBER() == null ? NewValue.Kind.TEXT : NewValue.Kind.NUMBER,
          (number.MINUS() == null ? "" : "-") + written);
    }
    if (tree instanceof RimeParser.TextCaseValueContext text) {
      return new NewValue(NewValue.Kind.TEXT, TreeBuilder.unquoted(text.TEXT().getSymbol()));
    }
    if (tree instanceof RimeParser.WordCaseValueContext word) {
      return new NewValue(NewValue.Kind.TEXT, word.WORD().getText());
    }
    RimeParser.BlockCaseValueContext block = (RimeParser.BlockCaseValueContext) tree;
    return new NewValue(NewValue.Kind.JSON, block(block.BLOCK()).text());
  }

  private static CaseStep expectation(
      Optional<Word> rule, RimeParser.CaseOutcomeContext tree, String written, Span span) {
    Outcome outcome;
    RimeParser.CaseElementsContext elements = null;
    Optional<Expectation.Want> want = Optional.empty();
    if (tree instanceof RimeParser.MetOutcomeContext met) {
      outcome = Outcome.MET;
      elements = met.caseElements();
    } else if (tree instanceof RimeParser.BrokenOutcomeContext broken) {
      outcome = Outcome.BROKEN;
      elements = broken.caseElements();
    } else if (tree instanceof RimeParser.UndecidedOutcomeContext undecided) {
      outcome = Outcome.UNDECIDED;
      elements = undecided.caseElements();
      want = Optional.ofNullable(undecided.want()).map(CaseBuilder::want);
    } else if (tree instanceof RimeParser.ErrorOutcomeContext error) {
      outcome = Outcome.ERROR;
      elements = error.caseElements();
    } else if (tree instanceof RimeParser.NotApplicableOutcomeContext not
        && not.caseElements() != null) {
      outcome = Outcome.NOT_APPLICABLE;
      elements = not.caseElements();
    } else {
      outcome = Outcome.NOTHING;
    }
    List<Word> named =
        elements == null ? List.of() : elements.TEXT().stream().map(CaseBuilder::quoted).toList();
    return new CaseStep.Expect(rule, outcome, named, want, written, span);
  }

  private static Expectation.Want want(RimeParser.WantContext tree) {
    if (tree instanceof RimeParser.ValueWantContext value) {
      return new Expectation.Want(
          Optional.of(joined(value.caseWord())),
          Optional.ofNullable(value.TEXT()).map(text -> TreeBuilder.unquoted(text.getSymbol())));
    }
    return new Expectation.Want(Optional.empty(), Optional.empty());
  }

  private static String joined(List<RimeParser.CaseWordContext> words) {
    return words.stream().map(ParserRuleContext::getText).collect(Collectors.joining(" "));
  }

  private static Word quoted(TerminalNode text) {
    return new Word(TreeBuilder.unquoted(text.getSymbol()), span(text.getSymbol()));
  }

  private static Word block(TerminalNode block) {
    String text = block.getText();
    return new Word(text.substring(QUOTES, text.length() - QUOTES), span(block.getSymbol()));
  }
}
