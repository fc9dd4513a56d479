package org.rimefast.report.internal.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;
import org.rimefast.report.internal.LayerChain;

/** Makes of a rule what a page shows. */
final class RuleViews {
  private final Paraphrase paraphrase;
  private final List<Standard> layers;
  private final Map<String, Constant> constants = new LinkedHashMap<>();
  private final Set<String> terms = new HashSet<>();
  private final Set<String> tables = new HashSet<>();

  RuleViews(Standard standard, Paraphrase paraphrase) {
    this.paraphrase = paraphrase;
    this.layers = LayerChain.of(standard);
    standard.terms().forEach(term -> terms.add(term.singular()));
    standard.tables().forEach(table -> tables.add(table.name()));
    standard.constants().forEach(constant -> constants.put(constant.name(), constant));
  }

  RuleView view(Rule rule, List<CaseView> cases) {
    Paraphrase.Result reading = paraphrase.of(rule);
    RuleUses uses = RuleUses.ofAll(rule);
    return new RuleView(
        Anchors.rule(rule.id()),
        rule.id(),
        rule.title(),
        rule.severity().word(),
        rule.stage(),
        rule.sentence(),
        said(reading),
        reading.text().isPresent(),
        rule.because(),
        rule.source(),
        rule.question().map(RuleViews::question),
        limits(rule, uses),
        uses.terms().keySet().stream()
            .map(name -> link(name, terms.contains(name), Anchors.term(name)))
            .toList(),
        uses.tables().keySet().stream()
            .map(name -> link(name, tables.contains(name), Anchors.table(name)))
            .toList(),
        origin(rule),
        rule.changes().stream().map(ChangeView::of).toList(),
        cases);
  }

  private static RuleView.TermLink link(String name, boolean listed, String anchor) {
    return new RuleView.TermLink(listed ? Optional.of(anchor) : Optional.empty(), name);
  }

  /** What was said, or why it could not be. */
  static String said(Paraphrase.Result result) {
    return result instanceof Paraphrase.Unsayable unsayable
        ? unsayable.why()
        : result.text().orElseThrow();
  }

  /** {@code tamarack-house edition 2026-11}. */
  static String named(Standard standard) {
    return standard.name() + " edition " + standard.edition();
  }

  private static RuleView.QuestionView question(Question question) {
    return new RuleView.QuestionView(
        question.ask(), question.answerWord(), question.limit().map(RuleViews::limit));
  }

  private static String limit(Question.Limit limit) {
    return words(limit.comparison())
        + " "
        + (limit.value() instanceof Value.Named named
            ? value(named.constant()) + " (" + named.constant().name() + ")"
            : ((Value.Literal) limit.value()).quantity().text());
  }

  private static String words(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> "at least";
      case MORE_THAN -> "more than";
      case AT_MOST -> "at most";
      case LESS_THAN -> "less than";
      case EQUAL -> "exactly";
      case NOT_EQUAL -> "not";
    };
  }

  private List<RuleView.LimitView> limits(Rule rule, RuleUses uses) {
    List<RuleView.LimitView> limits = new ArrayList<>();
    uses.constants().values().forEach(constant -> limits.add(named(constant)));
    List<Value.Literal> own = RuleUses.ofSentence(rule).literals();
    own.stream()
        .map(literal -> literal.quantity().text())
        .distinct()
        .forEach(text -> limits.add(unnamed(text, "in the sentence", "as the rule")));
    List<Value.Literal> others = new ArrayList<>(uses.literals());
    own.forEach(others::remove);
    others.stream()
        .map(literal -> literal.quantity().text())
        .distinct()
        .forEach(text -> limits.add(unnamed(text, "in a term that it uses", "as the term")));
    return limits;
  }

  /** A constant as the rule has it, which is not as others have it if the rule was amended. */
  private RuleView.LimitView named(Constant constant) {
    Optional<String> elsewhere =
        Optional.ofNullable(constants.get(constant.name()))
            .map(RuleViews::value)
            .filter(value -> !value.equals(value(constant)));
    return new RuleView.LimitView(
        value(constant),
        constants.containsKey(constant.name())
            ? Optional.of(Anchors.constant(constant.name()))
            : Optional.empty(),
        constant.name(),
        constant.because().orElse("not said"),
        constant.source().orElse("not said"),
        elsewhere);
  }

  private static RuleView.LimitView unnamed(String value, String where, String why) {
    return new RuleView.LimitView(value, Optional.empty(), where, why, why, Optional.empty());
  }

  private static String value(Constant constant) {
    return constant.value().quantity().text();
  }

  /** Told only of rules that another standard changed: of the others it would say nothing new. */
  private Optional<RuleView.Origin> origin(Rule rule) {
    boolean added = rule.changes().stream().anyMatch(c -> c.kind() == Change.Kind.ADDED);
    if (layers.size() == 1 || added) {
      return Optional.empty();
    }
    return layers.stream()
        .filter(layer -> layer.rule(rule.id()).isPresent())
        .findFirst()
        .map(
            layer ->
                new RuleView.Origin(named(layer), layer.rule(rule.id()).orElseThrow().sentence()));
  }
}
