package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;

class ShippedStandardsTest {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();

  static List<String> names() {
    return StandardLibrary.names();
  }

  @Test
  void theStandardForColdSteelModulesIsShipped() {
    assertThat(names()).contains("cold-steel-modules");
    assertThat(compile("cold-steel-modules").rules()).hasSizeGreaterThanOrEqualTo(15);
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyStandardCompilesWithoutAWordOfWarningUnderItsOwnName(String name) {
    Compilation compilation =
        new RuleCompiler(DICTIONARY.vocabulary()).compile(StandardLibrary.find(name).orElseThrow());
    assertThat(compilation.diagnostics()).isEmpty();
    Standard standard = compilation.standard().orElseThrow();
    assertThat(standard.name()).isEqualTo(name);
    assertThat(standard.caution()).contains("local codes", "authority having jurisdiction");
    assertThat(new Checker(DICTIONARY, standard).standard()).isEqualTo(standard);
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyRuleNamesItsSourceAndNoneFromMemoryHolds(String name) {
    for (Rule rule : compile(name).rules()) {
      assertThat(rule.because()).as(rule.id()).isNotBlank();
      assertThat(rule.source()).as(rule.id()).isNotBlank();
      if (rule.source().contains("from memory")) {
        assertThat(rule.severity()).as(rule.id()).isNotEqualTo(Severity.HOLD);
      }
    }
  }

  @Test
  void allPartsOfAModuleAreSpokenOf() {
    Stream<String> subjects =
        compile("cold-steel-modules").rules().stream().map(rule -> rule.subject().noun().id());
    assertThat(subjects)
        .contains("box", "bar", "bracket", "panel", "luminaire", "stud", "cable", "wall", "roof");
  }

  private static Standard compile(String name) {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(StandardLibrary.find(name).orElseThrow())
        .standard()
        .orElseThrow();
  }
}
