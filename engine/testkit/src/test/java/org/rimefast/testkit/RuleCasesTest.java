package org.rimefast.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RuleCasesTest {
  private static final Path STANDARDS = Path.of("src", "test", "resources", "standards");

  @TestFactory
  Stream<DynamicTest> casesInTheStandardAndBesideItBecomeTests() {
    return RuleCases.of(STANDARDS.resolve("lined.rime"));
  }

  @Test
  void aTestIsNamedAsItsCaseAndRule() {
    assertThat(RuleCases.of(STANDARDS.resolve("lined.rime")).map(DynamicTest::getDisplayName))
        .containsExactly(
            "a thin lining [wall-lined]",
            "a lining that is thick enough [wall-lined]",
            "all walls are lined [every rule]");
  }

  @Test
  void aCaseThatComesOutOtherwiseFailsAndSaysWhatCameOut() {
    List<DynamicTest> tests = RuleCases.of(STANDARDS.resolve("otherwise.rime")).toList();
    assertThat(tests).hasSize(2);
    assertThatThrownBy(() -> tests.get(0).getExecutable().execute())
        .isInstanceOf(AssertionError.class)
        .hasMessageContainingAll(
            "NOT AS EXPECTED: a thick lining",
            "expected  broken by left wall",
            "instead   met by left wall: lining thickness of left wall is 13 mm, at least 12 mm");
    assertThatThrownBy(() -> tests.get(1).getExecutable().execute())
        .isInstanceOf(AssertionError.class)
        .hasMessageContainingAll("COULD NOT BE RUN: no plan", "There is no plan \"nowhere.json\"");
  }

  @Test
  void rulesThatNoCaseExpectsToBeBrokenAreNamed() {
    assertThat(RuleCases.neverBroken(STANDARDS.resolve("lined.rime")))
        .containsExactly("roof-lined");
  }

  @Test
  void aStandardMayIncludeFilesAndBuildOnAnotherAndIsAskedForItsOwnRulesOnly() {
    Path layered = STANDARDS.resolve("layered.rime");
    assertThat(RuleCases.of(layered).map(DynamicTest::getDisplayName))
        .containsExactly("a floor without foam [floor-foamed]");
    assertThat(RuleCases.of(layered)).allSatisfy(test -> test.getExecutable().execute());
    assertThat(RuleCases.neverBroken(layered)).containsExactly("front-sheet");
  }

  @Test
  void aStandardThatDoesNotCompileOrHasNoCaseIsNoSuccess() {
    assertThatThrownBy(() -> RuleCases.of(STANDARDS.resolve("faulty.rime")))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("error[unknown-rule]: The standard has no rule \"wal-lined\".");
    assertThatThrownBy(() -> RuleCases.of(STANDARDS.resolve("bare.rime")))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("has no case; write one in it or in bare.cases.rime beside it");
    assertThatThrownBy(() -> RuleCases.of(STANDARDS.resolve("nowhere.rime")))
        .isInstanceOf(UncheckedIOException.class);
  }
}
