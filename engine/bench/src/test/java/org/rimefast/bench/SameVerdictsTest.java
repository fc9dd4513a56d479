package org.rimefast.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.check.Verdict;

/** What is timed must be the same work: the three ways give the same verdicts. */
class SameVerdictsTest {
  @ParameterizedTest
  @ValueSource(strings = {"box", "depth", "stud", "touch", "cover"})
  void theLanguageAndTheHandWrittenRuleGiveTheSameVerdicts(String rule) {
    RuleBenchmark benchmark = benchmark(rule);
    assertThat(benchmark.ruleOfTheLanguage()).isEqualTo(benchmark.writtenByHand());
  }

  @ParameterizedTest
  @ValueSource(strings = {"box", "depth", "stud", "touch", "cover"})
  void theExpressionEngineAgreesWhereverTheLanguageIsCertain(String rule) {
    RuleBenchmark benchmark = benchmark(rule);
    Verdict[] verdicts = benchmark.ruleOfTheLanguage();
    boolean[] holds = benchmark.expressionEngine();
    for (int i = 0; i < verdicts.length; i++) {
      if (verdicts[i] != Verdict.UNDECIDED) {
        assertThat(holds[i]).as("element %s", i).isEqualTo(verdicts[i] != Verdict.BROKEN);
      }
    }
  }

  @Test
  void theTimedPlanHasVerdictsOfEveryKind() {
    Set<Verdict> seen = new TreeSet<>();
    for (String rule : List.of("box", "depth", "stud", "touch", "cover")) {
      seen.addAll(Arrays.asList(benchmark(rule).ruleOfTheLanguage()));
    }
    assertThat(seen)
        .containsExactly(Verdict.MET, Verdict.BROKEN, Verdict.UNDECIDED, Verdict.NOT_APPLICABLE);
  }

  private static RuleBenchmark benchmark(String rule) {
    RuleBenchmark benchmark = new RuleBenchmark();
    benchmark.rule = rule;
    benchmark.prepare();
    return benchmark;
  }
}
