package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.cases.Expectation.Outcome;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.testkit.RuleCases;

/** Every rule of every shipped standard says of its cases what they expect. */
class ShippedCasesTest {
  private static final Path FOLDER = Path.of("src", "main", "resources", "META-INF", "rimefast");

  static List<String> names() {
    return StandardLibrary.names();
  }

  @TestFactory
  Stream<DynamicTest> everyCaseComesOut() {
    return names().stream().flatMap(name -> RuleCases.of(FOLDER.resolve(name + ".rime")));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyRuleHasCasesInWhichItIsMetBrokenAndUndecidedForWantOfAValue(String name)
      throws IOException {
    Standard standard =
        new RuleCompiler(SteelModules.dictionary().vocabulary())
            .compile(StandardLibrary.find(name).orElseThrow())
            .standard()
            .orElseThrow();
    Map<String, Set<Outcome>> seen = new TreeMap<>();
    standard.rules().forEach(rule -> seen.put(rule.id(), EnumSet.noneOf(Outcome.class)));
    for (Case example : CaseCompiler.compile(cases(name), standard).cases()) {
      for (Expectation expectation : example.expectations()) {
        boolean wants = expectation.want().flatMap(Expectation.Want::value).isPresent();
        if (expectation.outcome() != Outcome.UNDECIDED || wants) {
          expectation
              .rule()
              .or(example::rule)
              .ifPresent(rule -> seen.getOrDefault(rule, Set.of()).add(expectation.outcome()));
        }
      }
    }
    assertThat(seen.keySet())
        .containsExactlyInAnyOrderElementsOf(standard.rules().stream().map(Rule::id).toList());
    assertThat(seen)
        .allSatisfy(
            (rule, outcomes) ->
                assertThat(outcomes)
                    .as(rule)
                    .contains(Outcome.MET, Outcome.BROKEN, Outcome.UNDECIDED));
  }

  @ParameterizedTest
  @MethodSource("names")
  void theCasesAreLaidOut(String name) throws IOException {
    SourceText source = cases(name);
    assertThat(RuleFormatter.format(source)).isEqualTo(source.text());
  }

  private static SourceText cases(String name) throws IOException {
    Path file = FOLDER.resolve(name + ".cases.rime");
    return new SourceText(file.toString(), Files.readString(file));
  }
}
