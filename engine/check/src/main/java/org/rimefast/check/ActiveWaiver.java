package org.rimefast.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.internal.Words;
import org.rimefast.check.internal.hot.Frame;
import org.rimefast.check.internal.hot.RuleProgram;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.rule.Waiver;

/** One waiver while one plan is checked. For one thread at a time. */
final class ActiveWaiver {
  private final Waiver waiver;
  private final PlanFacts facts;
  private final WaiverUse.@Nullable State idle;
  private final Set<Integer> named = new HashSet<>();
  private final List<String> unknown = new ArrayList<>();
  private final List<String> beyond = new ArrayList<>();
  private final List<String> unsure = new ArrayList<>();
  private final @Nullable RuleProgram selection;
  private final @Nullable Frame selecting;
  private final @Nullable RuleProgram bound;
  private final @Nullable Frame bounding;
  private int selected;
  private int broken;
  private int covered;

  /**
   * Makes a waiver ready.
   *
   * @param rule the rule that it is for
   * @param isDue false if the rule is not asked at this stage
   */
  ActiveWaiver(
      Waiver waiver, Rule rule, boolean isDue, PlanFacts facts, LocalDate asOf, Words words) {
    this.waiver = waiver;
    this.facts = facts;
    idle = idle(waiver, isDue, facts, asOf);
    for (String name : waiver.elements()) {
      int handle = facts.handleNamed(name);
      if (handle >= 0 && facts.isMember(rule.subject().noun(), handle)) {
        named.add(handle);
      } else {
        unknown.add(name);
      }
    }
    selection = waiver.selection().map(found -> selects(found, rule, words)).orElse(null);
    selecting = selection == null ? null : selection.frame(facts);
    bound =
        waiver
            .bound()
            .map(found -> new RuleProgram(asking(rule, rule.subject(), found.kept()), words))
            .orElse(null);
    bounding = bound == null ? null : bound.frame(facts);
  }

  private static WaiverUse.@Nullable State idle(
      Waiver waiver, boolean isDue, PlanFacts facts, LocalDate asOf) {
    if (waiver.plan().isPresent() && !waiver.plan().get().equals(facts.plan().id())) {
      return WaiverUse.State.OTHER_PLAN;
    }
    if (asOf.isBefore(waiver.from())) {
      return WaiverUse.State.NOT_YET;
    }
    if (asOf.isAfter(waiver.until())) {
      return WaiverUse.State.EXPIRED;
    }
    return isDue ? null : WaiverUse.State.NOT_DUE;
  }

  private static RuleProgram selects(Waiver.Selection selection, Rule rule, Words words) {
    Variable subject = selection.subject();
    Condition isOne =
        new Condition.IsA(
            new Reference.Bound(new Variable(0, rule.subject().noun())),
            subject.noun(),
            Optional.empty(),
            rule.span());
    Condition all =
        selection
            .where()
            .<Condition>map(where -> new Condition.And(List.of(isOne, where), rule.span()))
            .orElse(isOne);
    return new RuleProgram(asking(rule, rule.subject(), all), words);
  }

  /** A rule that is met by what a condition is true of. */
  private static Rule asking(Rule rule, Variable subject, Condition condition) {
    return new Rule(
        rule.id(),
        rule.title(),
        subject,
        Optional.empty(),
        Optional.empty(),
        condition,
        rule.severity(),
        rule.stage(),
        rule.because(),
        rule.source(),
        rule.sentence(),
        rule.sentenceSpan(),
        rule.span());
  }

  boolean isFor(Rule rule) {
    return idle == null && waiver.rule().equals(rule.id());
  }

  Waiver waiver() {
    return waiver;
  }

  /** Takes note of what the rule says of an element; true if this waiver covers it. */
  boolean covers(int element, Verdict verdict) {
    Verdict means = means(element);
    if (means == Verdict.MET) {
      selected++;
    } else if (means != Verdict.BROKEN && verdict == Verdict.BROKEN) {
      unsure.add(facts.name(element).label());
    }
    if (means != Verdict.MET || verdict != Verdict.BROKEN) {
      return false;
    }
    broken++;
    if (bound != null && bounding != null && bound.verdict(bounding, element) != Verdict.MET) {
      beyond.add(facts.name(element).label());
      return false;
    }
    covered++;
    return true;
  }

  private Verdict means(int element) {
    if (selection != null && selecting != null) {
      return selection.verdict(selecting, element);
    }
    return named.contains(element) ? Verdict.MET : Verdict.BROKEN;
  }

  WaiverUse use() {
    if (idle != null) {
      return new WaiverUse(waiver, idle, 0, List.of(), List.of(), List.of());
    }
    WaiverUse.State state =
        covered > 0
            ? WaiverUse.State.USED
            : selected > 0 && broken == 0
                ? WaiverUse.State.NO_LONGER_NEEDED
                : WaiverUse.State.UNUSED;
    return new WaiverUse(waiver, state, covered, beyond, unsure, unknown);
  }
}
