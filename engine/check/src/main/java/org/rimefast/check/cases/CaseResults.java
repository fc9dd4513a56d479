package org.rimefast.check.cases;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;

/**
 * What came of the cases of a standard.
 *
 * @param standard the standard
 * @param results one for each case, in their order
 */
public record CaseResults(Standard standard, List<CaseResult> results) {
  /** Copies the list. */
  public CaseResults {
    results = List.copyOf(results);
  }

  /** True if all cases were run and all came out as expected. */
  public boolean areAsExpected() {
    return results.stream().allMatch(CaseResult::isAsExpected);
  }

  /** How many cases were run and came out otherwise. */
  public int otherwise() {
    return (int)
        results.stream()
            .filter(result -> result.problems().isEmpty() && !result.isAsExpected())
            .count();
  }

  /** How many cases could not be run. */
  public int notRun() {
    return (int) results.stream().filter(result -> !result.problems().isEmpty()).count();
  }

  /**
   * The rules that no case expects to be broken, in the order of the standard: nothing shows that
   * they would find what they are meant to find. Of a standard that builds on another, only the
   * rules that it added or amended: the others are for the cases of that one.
   */
  public List<Rule> neverBroken() {
    Set<String> broken = new HashSet<>();
    for (CaseResult result : results) {
      Case example = result.example();
      for (Expectation expectation : example.expectations()) {
        if (expectation.outcome() == Expectation.Outcome.BROKEN) {
          expectation.rule().or(example::rule).ifPresent(broken::add);
        }
      }
    }
    return standard.rules().stream()
        .filter(rule -> isItsOwn(rule) && !broken.contains(rule.id()))
        .toList();
  }

  private boolean isItsOwn(Rule rule) {
    return isItsOwn(standard, rule);
  }

  /** True for a rule that the standard wrote or amended, not the one that it builds on. */
  static boolean isItsOwn(Standard standard, Rule rule) {
    return standard.base().isEmpty()
        || rule.changes().stream().anyMatch(change -> change.standard().equals(standard.name()));
  }
}
