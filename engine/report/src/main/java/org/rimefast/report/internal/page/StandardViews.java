package org.rimefast.report.internal.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Checker;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.report.internal.CaseText;
import org.rimefast.report.internal.Caution;
import org.rimefast.report.internal.LayerChain;

/** Makes of a standard what its page shows. */
public final class StandardViews {
  private final Standard standard;
  private final Paraphrase paraphrase;
  private final Optional<CaseResults> cases;

  private StandardViews(Standard standard, Vocabulary vocabulary, Optional<CaseResults> cases) {
    this.standard = standard;
    this.paraphrase = new Paraphrase(vocabulary);
    this.cases = cases;
  }

  /** What the page of a standard shows. */
  public static StandardView of(
      Standard standard, Vocabulary vocabulary, Optional<CaseResults> cases) {
    return new StandardViews(standard, vocabulary, cases).view(vocabulary.stages());
  }

  private StandardView view(List<String> stages) {
    RuleViews rules = new RuleViews(standard, paraphrase);
    return new StandardView(
        PageStyle.STANDARD.sheet(),
        PageStyle.STANDARD.policy(),
        standard.title().isBlank() ? standard.name() : standard.title(),
        standard.name(),
        standard.edition(),
        Caution.of(standard),
        bases(),
        stages,
        standard.constants().stream().map(StandardViews::constant).toList(),
        standard.terms().stream().map(this::term).toList(),
        standard.tables().stream().map(table -> TableViews.view(table, paraphrase)).toList(),
        standard.rules().stream().map(rule -> rules.view(rule, cases(rule.id()))).toList(),
        cases.map(StandardViews::told),
        standard.withdrawn().stream().map(StandardViews::withdrawn).toList(),
        Checker.ENGINE,
        Checker.hash(standard));
  }

  private List<String> bases() {
    List<String> bases = new ArrayList<>();
    for (Standard layer : LayerChain.of(standard)) {
      bases.add(RuleViews.named(layer));
    }
    Collections.reverse(bases);
    return bases.subList(1, bases.size());
  }

  private static StandardView.ConstantView constant(Constant constant) {
    return new StandardView.ConstantView(
        Anchors.constant(constant.name()),
        constant.name(),
        constant.value().quantity().text(),
        constant.because(),
        constant.source());
  }

  private StandardView.TermView term(Term term) {
    return new StandardView.TermView(
        Anchors.term(term.singular()),
        term.singular(),
        RuleViews.said(paraphrase.ofTerm(term)),
        term.because(),
        term.source());
  }

  private static StandardView.WithdrawnView withdrawn(Withdrawal withdrawal) {
    Rule rule = withdrawal.rule();
    return new StandardView.WithdrawnView(
        Anchors.withdrawn(rule.id()),
        rule.id(),
        rule.title(),
        rule.sentence(),
        ChangeView.of(withdrawal.change()));
  }

  private List<CaseView> cases(String rule) {
    return cases.map(CaseResults::results).orElse(List.of()).stream()
        .filter(result -> result.example().rule().equals(Optional.of(rule)))
        .map(CaseView::of)
        .toList();
  }

  private static StandardView.Cases told(CaseResults cases) {
    List<CaseResult> results = cases.results();
    return new StandardView.Cases(
        results.size(),
        CaseText.counts(cases),
        results.stream()
            .filter(result -> result.example().rule().isEmpty())
            .map(CaseView::of)
            .toList(),
        cases.neverBroken().stream()
            .map(
                rule -> new StandardView.RuleLink(Anchors.rule(rule.id()), rule.id(), rule.title()))
            .toList());
  }
}
