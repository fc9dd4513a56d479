package org.rimefast.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Plan;
import org.rimefast.testkit.RandomModules;

/**
 * How a check grows with the plan: all shipped standards, each as one program calls it on a plan
 * that is read, with its facts made anew, its verdicts, and its findings explained. Plans are as
 * dense at every size. The least processor time of the thread that checks, of a few turns.
 */
final class CheckGrowth {
  private static final long SEED = 8;
  private static final int WARM_UP = 500;
  private static final int WARM_UPS = 2;

  /** Turns go on until so many milliseconds are spent on a size. */
  private static final double ENOUGH = 4_000;

  private static final int MOST_TURNS = 3;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final Dictionary dictionary = SteelModules.dictionary();
  private final List<Standard> standards = new ArrayList<>();

  /**
   * What one size took, in milliseconds of processor time.
   *
   * @param elements openings, parts and runs of the plan
   * @param findings how many findings were explained
   * @param whole all standards
   * @param rules each rule of each standard, on facts that it shares with the rules before it: the
   *     first that asks for an index pays for it
   */
  record Size(int elements, int findings, double whole, Map<String, Double> rules) {}

  CheckGrowth() {
    RuleCompiler compiler = new RuleCompiler(dictionary.vocabulary());
    for (String name : StandardLibrary.names()) {
      standards.add(
          compiler
              .compile(StandardLibrary.find(name).orElseThrow())
              .standard()
              .orElseThrow(() -> new IllegalStateException(name + " does not compile")));
    }
  }

  /** Measures plans of about so many elements, in this order. */
  List<Size> of(List<Integer> sizes) {
    Plan small = RandomModules.of(SEED).elements(WARM_UP).plan();
    for (int i = 0; i < WARM_UPS; i++) {
      turn(small);
    }
    return sizes.stream().map(size -> of(RandomModules.of(SEED).elements(size).plan())).toList();
  }

  private Size of(Plan plan) {
    Size least = turn(plan);
    double spent = 2 * least.whole();
    for (int turn = 1; turn < MOST_TURNS && spent < ENOUGH; turn++) {
      Size next = turn(plan);
      spent += 2 * next.whole();
      Map<String, Double> rules = new LinkedHashMap<>(least.rules());
      next.rules().forEach((rule, time) -> rules.merge(rule, time, Math::min));
      double whole = Math.min(least.whole(), next.whole());
      least = new Size(least.elements(), least.findings(), whole, rules);
    }
    return least;
  }

  private Size turn(Plan plan) {
    double whole = 0;
    int findings = 0;
    Map<String, Double> rules = new LinkedHashMap<>();
    for (Standard standard : standards) {
      Checker checker = new Checker(dictionary, standard);
      long start = threads.getCurrentThreadCpuTime();
      findings +=
          checker.check(plan, CheckOptions.DEFAULT).rules().stream()
              .mapToInt(result -> result.findings().size())
              .sum();
      whole += since(start);
      ofRules(standard, plan, rules);
    }
    int elements = plan.openings().size() + plan.parts().size() + plan.runs().size();
    return new Size(elements, findings, whole, rules);
  }

  private void ofRules(Standard standard, Plan plan, Map<String, Double> rules) {
    PlanFacts facts = new PlanFacts(plan, dictionary);
    for (Rule rule : standard.rules()) {
      Checker checker = new Checker(dictionary, alone(standard, rule));
      long start = threads.getCurrentThreadCpuTime();
      checker.check(facts, CheckOptions.DEFAULT);
      rules.put(standard.name() + " " + rule.id(), since(start));
    }
  }

  private double since(long start) {
    return (threads.getCurrentThreadCpuTime() - start) / 1e6;
  }

  private static Standard alone(Standard standard, Rule rule) {
    return new Standard(
        standard.name(),
        standard.edition(),
        standard.title(),
        standard.caution(),
        standard.constants(),
        standard.terms(),
        standard.tables(),
        List.of(rule),
        List.of(),
        standard.source(),
        Optional.empty(),
        List.of());
  }
}
