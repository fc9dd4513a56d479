package org.rimefast.check.internal.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.rimefast.check.ElementName;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.MissingValue;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Verdict;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.source.SourceText;

/** Works out one rule for one element and explains the verdict. */
public final class ReferenceEvaluator {
  private final PlanFacts facts;
  private final Words words;
  private final SourceText source;
  private final BiConsumer<Condition, Evidence> observer;
  private final boolean spares;
  private final Memo memo = new Memo();

  /** An evaluator for rules of the standard with this text; it asks every element. */
  public ReferenceEvaluator(PlanFacts facts, Words words, SourceText source) {
    this(facts, words, source, (condition, evidence) -> {}, false);
  }

  /** The same, with somebody who looks on. */
  public ReferenceEvaluator(
      PlanFacts facts, Words words, SourceText source, BiConsumer<Condition, Evidence> observer) {
    this(facts, words, source, observer, false);
  }

  /** An evaluator that asks no element which an index rules out. It says the same, sooner. */
  public static ReferenceEvaluator sparing(PlanFacts facts, Words words, SourceText source) {
    return new ReferenceEvaluator(facts, words, source, (condition, evidence) -> {}, true);
  }

  private ReferenceEvaluator(
      PlanFacts facts,
      Words words,
      SourceText source,
      BiConsumer<Condition, Evidence> observer,
      boolean spares) {
    this.facts = facts;
    this.words = words;
    this.source = source;
    this.observer = observer;
    this.spares = spares;
  }

  /** What the rule says of the element, whatever the verdict. */
  public Finding explain(Rule rule, int element) {
    Scope scope = new Scope(facts, words, source, observer, spares, memo, List.of(element));
    Evidence where = explain(rule.where(), scope);
    Evidence onlyIf = where.truth() == Truth.FALSE ? Reasons.ALWAYS : explain(rule.onlyIf(), scope);
    Evidence applies = Reasons.of(where.truth().and(onlyIf.truth()), List.of(where, onlyIf), true);
    if (applies.truth() == Truth.FALSE) {
      return finding(rule, element, Verdict.NOT_APPLICABLE, List.of(applies));
    }
    Evidence requirement = new ConditionExplainer(scope, true).explain(rule.requirement());
    if (requirement.truth() == Truth.TRUE) {
      return finding(rule, element, Verdict.MET, List.of(requirement));
    }
    if (requirement.truth() == Truth.FALSE && applies.truth() == Truth.TRUE) {
      return finding(rule, element, Verdict.BROKEN, List.of(requirement));
    }
    List<Evidence> open =
        List.of(applies, requirement).stream()
            .filter(evidence -> evidence.truth() == Truth.UNKNOWN)
            .toList();
    boolean failed = open.stream().anyMatch(evidence -> Reasons.failure(evidence).isPresent());
    return finding(rule, element, failed ? Verdict.ERROR : Verdict.UNDECIDED, open);
  }

  private static Evidence explain(Optional<Condition> condition, Scope scope) {
    return condition
        .map(present -> new ConditionExplainer(scope, true).explain(present))
        .orElse(Reasons.ALWAYS);
  }

  private Finding finding(Rule rule, int element, Verdict verdict, List<Evidence> evidence) {
    ElementName name = facts.name(element);
    List<MissingValue> missing =
        verdict == Verdict.UNDECIDED ? Reasons.missing(evidence) : List.of();
    String reason =
        verdict == Verdict.ERROR
            ? evidence.stream().flatMap(e -> Reasons.failure(e).stream()).findFirst().orElseThrow()
            : String.join("; ", evidence.stream().map(Evidence::statement).toList());
    return new Finding(rule, verdict, name, reason, evidence, missing);
  }
}
