package org.rimefast.check.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.cases.Expectation.Outcome;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;

/**
 * Runs cases. Immutable and safe to share between threads.
 *
 * <p>To ask the same cases again, such as after a rule was changed, {@linkplain #prepare prepare}
 * them once and ask {@link #isAsExpected}.
 */
public final class CaseRunner {
  private final Dictionary dictionary;
  private final PlanFiles files;

  /**
   * A runner.
   *
   * @param dictionary the words with which the standards were compiled
   * @param files gives the plans that cases name
   */
  public CaseRunner(Dictionary dictionary, PlanFiles files) {
    this.dictionary = dictionary;
    this.files = files;
  }

  /** Reads and changes the plan of a case. Never throws for what is wrong with it. */
  public PreparedCase prepare(Case example) {
    return CasePlans.prepare(dictionary, files, example);
  }

  /**
   * Runs cases of a standard.
   *
   * @param cases each of a rule that the standard has
   */
  public CaseResults run(Standard standard, List<Case> cases) {
    Checker checker = new Checker(dictionary, standard);
    return new CaseResults(
        standard, cases.stream().map(example -> run(checker, prepare(example))).toList());
  }

  /**
   * Runs one case.
   *
   * @throws IllegalArgumentException if the checker's standard lacks the rule of the case
   */
  public CaseResult run(Checker checker, PreparedCase prepared) {
    Case example = prepared.example();
    if (prepared.facts().isEmpty()) {
      return new CaseResult(example, List.of(), prepared.problems());
    }
    PlanFacts facts = prepared.facts().get();
    List<Mismatch> mismatches = new ArrayList<>();
    boolean anyMet = false;
    for (Rule rule : rules(checker, example)) {
      RuleComparison comparison =
          new RuleComparison(checker, rule, facts, expectations(example, rule), isLenient(example));
      comparison.compare(mismatch -> mismatches.add(mismatch.get()));
      anyMet |= comparison.isMet();
    }
    boolean asksForMet =
        isLenient(example)
            && example.expectations().stream()
                .anyMatch(e -> e.rule().isEmpty() && e.outcome() == Outcome.MET);
    if (asksForMet && !anyMet) {
      mismatches.add(
          new Mismatch(
              Optional.empty(), "some rule met by some element", "no rule is met by any element"));
    }
    return new CaseResult(example, mismatches, List.of());
  }

  /**
   * Whether a rule says of a case what is expected of it. Made to be asked very often: verdicts
   * come from the fast pass, words are made for none of them, and a reason is looked for only where
   * one is expected.
   *
   * @param checker of a standard that has the rule, and may have it otherwise than the case's
   *     standard does, and need not have the others
   * @return true if the case could not be prepared or does not look at the rule: then it says
   *     nothing of it
   */
  public boolean isAsExpected(Checker checker, String ruleId, PreparedCase prepared) {
    Case example = prepared.example();
    if (prepared.facts().isEmpty() || example.rule().filter(id -> !id.equals(ruleId)).isPresent()) {
      return true;
    }
    Rule rule = rule(checker, ruleId);
    boolean[] otherwise = new boolean[1];
    new RuleComparison(
            checker, rule, prepared.facts().get(), expectations(example, rule), isLenient(example))
        .compare(mismatch -> otherwise[0] = true);
    return !otherwise[0];
  }

  private static List<Rule> rules(Checker checker, Case example) {
    return example
        .rule()
        .map(id -> List.of(rule(checker, id)))
        .orElseGet(() -> checker.standard().rules());
  }

  private static Rule rule(Checker checker, String id) {
    return checker.standard().rules().stream()
        .filter(rule -> rule.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the standard has no rule " + id));
  }

  /** In a case of every rule, rules of which the plan has nothing need not be met. */
  private static boolean isLenient(Case example) {
    return example.rule().isEmpty();
  }

  /** What a case expects of a rule: what names the rule, else what names none. */
  private static List<Expectation> expectations(Case example, Rule rule) {
    List<Expectation> own =
        example.expectations().stream()
            .filter(e -> e.rule().or(example::rule).equals(Optional.of(rule.id())))
            .toList();
    return own.isEmpty()
        ? example.expectations().stream().filter(e -> e.rule().isEmpty()).toList()
        : own;
  }
}
