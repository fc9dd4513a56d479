package org.rimefast.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and prints the table of ratios for the contributors' guide. */
public final class Ratios {
  private Ratios() {}

  /** Runs everything; no arguments. */
  public static void main(String[] args) throws RunnerException {
    printRules(run(RuleBenchmark.class));
    printCompiling(run(CompileBenchmark.class));
  }

  private static Collection<RunResult> run(Class<?> benchmark) throws RunnerException {
    return new Runner(new OptionsBuilder().include(benchmark.getSimpleName()).build()).run();
  }

  private static void printCompiling(Collection<RunResult> results) {
    Map<Integer, Double> elapsed = new TreeMap<>();
    for (RunResult result : results) {
      int rules = Integer.parseInt(result.getParams().getParam("rules"));
      elapsed.put(rules, result.getPrimaryResult().getScore());
    }
    Map<Integer, Double> processor = Growth.ofCompiling();
    System.out.println();
    System.out.println(
        "| rules | compiled in, ms | least processor time, ms | against half as many |");
    System.out.println("|---|---|---|---|");
    for (Map.Entry<Integer, Double> entry : processor.entrySet()) {
      int rules = entry.getKey();
      double time = entry.getValue();
      Double half = processor.get(rules / 2);
      String ratio = half == null ? "" : String.format(Locale.ROOT, "%.2f", time / half);
      System.out.printf(
          Locale.ROOT,
          "| %d | %.0f | %.0f | %s |%n",
          rules,
          elapsed.getOrDefault(rules, Double.NaN),
          time,
          ratio);
    }
  }

  private static void printRules(Collection<RunResult> results) {
    Map<String, Map<String, RunResult>> byRule = new TreeMap<>();
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      byRule
          .computeIfAbsent(result.getParams().getParam("rule"), rule -> new TreeMap<>())
          .put(name.substring(name.lastIndexOf('.') + 1), result);
    }
    System.out.println();
    System.out.println(
        "| rule | the language, us | by hand, us | expression engine, us"
            + " | language / by hand | engine / language |");
    System.out.println("|---|---|---|---|---|---|");
    for (String rule : RuleBenchmark.RULES) {
      Map<String, RunResult> of = byRule.getOrDefault(rule, Map.of());
      double language = score(of, "ruleOfTheLanguage");
      double hand = score(of, "writtenByHand");
      double engine = score(of, "expressionEngine");
      System.out.printf(
          Locale.ROOT,
          "| %s | %.1f | %.1f | %.1f | %.2f | %.1f |%n",
          rule,
          language,
          hand,
          engine,
          language / hand,
          engine / language);
    }
  }

  private static double score(Map<String, RunResult> results, String benchmark) {
    RunResult result = results.get(benchmark);
    if (result == null) {
      throw new IllegalStateException("no result of " + benchmark);
    }
    return result.getPrimaryResult().getScore();
  }
}
