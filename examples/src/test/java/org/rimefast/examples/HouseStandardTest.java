package org.rimefast.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.testkit.RuleCases;

/** The house standard of the demo (invented) says of the demo plans what its cases expect. */
class HouseStandardTest {
  private static final Path STANDARD = Path.of("tamarack-house.rime");

  @TestFactory
  Stream<DynamicTest> everyCaseComesOut() {
    return RuleCases.of(STANDARD);
  }

  @Test
  void everyRuleIsExpectedToBeBrokenByACase() {
    assertThat(RuleCases.neverBroken(STANDARD)).isEmpty();
  }
}
