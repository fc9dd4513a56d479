package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.check.Verdict;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Rule;

/** A rule made ready for the hot pass. Immutable and safe to share; frames are not. */
public final class RuleProgram {
  private final Rule rule;
  private final Layout layout = new Layout();
  private final Nodes.@Nullable Test where;
  private final Nodes.@Nullable Test onlyIf;
  private final Nodes.Test requirement;

  /** Makes the program of a rule. */
  public RuleProgram(Rule rule, Words words) {
    this.rule = rule;
    words.noun(rule.subject().noun());
    NodeMaker maker = new NodeMaker(words, layout, 0);
    where = rule.where().map(condition -> condition.accept(maker)).orElse(null);
    onlyIf = rule.onlyIf().map(condition -> condition.accept(maker)).orElse(null);
    requirement = rule.requirement().accept(maker);
  }

  /** The rule. */
  public Rule rule() {
    return rule;
  }

  /** A frame for one thread. */
  public Frame frame(PlanFacts facts) {
    return new Frame(facts, layout);
  }

  /**
   * What the rule says of one element.
   *
   * <p>If it is unknown whether the rule speaks of the element, an element that meets it either way
   * is met; otherwise nothing is decided.
   */
  public Verdict verdict(Frame frame, int element) {
    frame.elements[0] = element;
    frame.failed = false;
    Truth applies = where == null ? Truth.TRUE : where.test(frame);
    if (applies != Truth.FALSE && onlyIf != null) {
      applies = applies.and(onlyIf.test(frame));
    }
    if (applies == Truth.FALSE) {
      return Verdict.NOT_APPLICABLE;
    }
    Truth meets = requirement.test(frame);
    if (meets == Truth.TRUE) {
      return Verdict.MET;
    }
    if (meets == Truth.FALSE && applies == Truth.TRUE) {
      return Verdict.BROKEN;
    }
    return frame.failed ? Verdict.ERROR : Verdict.UNDECIDED;
  }
}
