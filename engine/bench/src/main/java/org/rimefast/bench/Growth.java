package org.rimefast.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.source.SourceText;

/**
 * How compiling grows with the number of rules: the least processor time of many turns, taken in
 * turn for each size, so that what else runs on the machine does not blur the ratios.
 */
final class Growth {
  private static final List<Integer> RULES = List.of(1_250, 2_500, 5_000);
  private static final int TURNS = 25;

  private Growth() {}

  /** Milliseconds of processor time by number of rules. */
  static Map<Integer, Double> ofCompiling() {
    RuleCompiler compiler = new RuleCompiler(SteelModules.dictionary().vocabulary());
    List<SourceText> texts = new ArrayList<>();
    RULES.forEach(rules -> texts.add(ManyRules.of(rules, 1)));
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    Map<Integer, Double> least = new TreeMap<>();
    for (int turn = 0; turn < TURNS; turn++) {
      for (int i = 0; i < texts.size(); i++) {
        long start = threads.getCurrentThreadCpuTime();
        boolean compiled = compiler.compile(texts.get(i)).standard().isPresent();
        double milliseconds = (threads.getCurrentThreadCpuTime() - start) / 1e6;
        if (!compiled) {
          throw new IllegalStateException(texts.get(i).name() + " does not compile");
        }
        least.merge(RULES.get(i), milliseconds, Math::min);
      }
    }
    return least;
  }
}
