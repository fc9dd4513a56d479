package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.StandardLibrary;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.source.SourceText;

/** The texts that people start from are laid out as the formatter does it. */
class LaidOutTest {
  static List<String> shipped() {
    return StandardLibrary.names();
  }

  static List<String> shownInTheGuide() {
    return Guide.read("writing-a-standard.md").texts("rime");
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void aShippedStandardIsLaidOut(String name) {
    SourceText source = StandardLibrary.find(name).orElseThrow();
    assertThat(RuleFormatter.format(source)).isEqualTo(source.text());
  }

  @ParameterizedTest
  @MethodSource("shownInTheGuide")
  void aStandardOfTheGuideIsLaidOut(String text) {
    assertThat(RuleFormatter.format(new SourceText("guide.rime", text))).isEqualTo(text);
  }
}
