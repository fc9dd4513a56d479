package org.rimefast.check.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.strength.Changed;
import org.rimefast.check.internal.strength.Coverage;
import org.rimefast.check.internal.strength.Mutations;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Span;

/**
 * Measures how well cases pin the rules of a standard down. It changes each rule in the small ways
 * in which authors err, and asks all cases of the rule again: a change after which every case still
 * comes out as expected is one that the cases would let pass. The same input gives the same answer.
 */
public final class StrengthMeter {
  /** No more changes of one rule than this are tried. */
  public static final int MOST_CHANGES = 1_000;

  private final Dictionary dictionary;
  private final CaseRunner runner;

  /**
   * A meter.
   *
   * @param dictionary the words with which the standards were compiled
   * @param runner of the same words
   */
  public StrengthMeter(Dictionary dictionary, CaseRunner runner) {
    this.dictionary = dictionary;
    this.runner = runner;
  }

  /**
   * Measures the rules of a standard by these cases. Of one that builds on another, only those that
   * it wrote or amended: the others are pinned down by the cases of the standard below.
   */
  public StandardStrength measure(Standard standard, List<PreparedCase> cases) {
    Checker checker = new Checker(dictionary, standard);
    List<RuleStrength> rules = new ArrayList<>();
    List<Rule> own =
        standard.rules().stream().filter(r -> CaseResults.isItsOwn(standard, r)).toList();
    for (Rule rule : own) {
      List<PreparedCase> looking =
          cases.stream()
              .filter(prepared -> looksAt(prepared, rule.id()))
              .filter(prepared -> runner.isAsExpected(checker, rule.id(), prepared))
              .toList();
      rules.add(measure(checker, standard, rule, looking));
    }
    return new StandardStrength(standard, rules);
  }

  private static boolean looksAt(PreparedCase prepared, String id) {
    return prepared.facts().isPresent() && prepared.example().rule().map(id::equals).orElse(true);
  }

  private RuleStrength measure(
      Checker checker, Standard standard, Rule rule, List<PreparedCase> cases) {
    List<Changed<Rule>> all = Mutations.of(rule);
    List<Changed<Rule>> tried = all.subList(0, Math.min(MOST_CHANGES, all.size()));
    List<RuleStrength.Unnoticed> unnoticed = new ArrayList<>();
    for (Changed<Rule> change : tried) {
      Checker changed = new Checker(dictionary, standard.withRules(List.of(change.node())));
      if (cases.stream().allMatch(c -> runner.isAsExpected(changed, rule.id(), c))) {
        unnoticed.add(new RuleStrength.Unnoticed(change.told(), text(standard, change.place())));
      }
    }
    return new RuleStrength(
        rule,
        cases.size(),
        seen(checker, standard, rule, cases),
        tried.size(),
        unnoticed,
        all.size() > tried.size());
  }

  private static List<RuleStrength.Seen> seen(
      Checker checker, Standard standard, Rule rule, List<PreparedCase> cases) {
    Coverage coverage = new Coverage(rule);
    cases.forEach(c -> checker.watch(rule.id(), c.facts().orElseThrow(), coverage));
    return coverage.leaves().stream().map(leaf -> seen(leaf, standard)).toList();
  }

  private static RuleStrength.Seen seen(Coverage.Seen leaf, Standard standard) {
    Optional<RuleStrength.Limit> limit =
        leaf.limit()
            .map(found -> new RuleStrength.Limit(found.text(), leaf.inside(), leaf.outside()));
    return new RuleStrength.Seen(
        text(standard, leaf.condition().span()),
        leaf.came(Truth.TRUE),
        leaf.came(Truth.FALSE),
        leaf.came(Truth.UNKNOWN),
        limit);
  }

  private static String text(Standard standard, Span span) {
    return standard.source().textOf(span).replaceAll("--[^\r\n]*", "").replaceAll("\\s+", " ");
  }
}
