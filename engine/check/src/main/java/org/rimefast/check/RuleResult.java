package org.rimefast.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.rule.Rule;

/**
 * What one rule says of a plan.
 *
 * @param rule the rule
 * @param counts how many elements got each verdict; has every verdict
 * @param findings broken, undecided and error, in the order of the plan
 * @param appliedToNothing why the rule spoke of no element at all, in one sentence; empty if it
 *     spoke of some
 */
public record RuleResult(
    Rule rule,
    Map<Verdict, Integer> counts,
    List<Finding> findings,
    Optional<String> appliedToNothing) {
  /** Copies. */
  public RuleResult {
    counts = Map.copyOf(counts);
    findings = List.copyOf(findings);
  }

  /** How many elements got {@code verdict}. */
  public int count(Verdict verdict) {
    return counts.getOrDefault(verdict, 0);
  }

  /** How many of the broken are waived. */
  public int waived() {
    return (int) findings.stream().filter(finding -> finding.waiver().isPresent()).count();
  }
}
