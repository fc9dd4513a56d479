package org.rimefast.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;

/** What is timed is sound: every rule compiles, and hardly two are alike. */
class ManyRulesTest {
  @Test
  void everyRuleCompilesAndFewAreAlike() {
    Compilation compilation =
        new RuleCompiler(SteelModules.dictionary().vocabulary()).compile(ManyRules.of(5_000, 1));
    assertThat(compilation.diagnostics()).isEmpty();
    assertThat(compilation.standard().orElseThrow().rules().stream().map(Rule::sentence).distinct())
        .hasSizeGreaterThan(2_000);
  }
}
