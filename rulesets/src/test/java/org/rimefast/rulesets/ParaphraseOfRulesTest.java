package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/** Every shipped rule and every rule of the guide is said in a sentence that reads back to it. */
class ParaphraseOfRulesTest {
  private static final Paraphrase PARAPHRASE =
      new Paraphrase(SteelModules.dictionary().vocabulary());
  private static final RuleCompiler COMPILER =
      new RuleCompiler(SteelModules.dictionary().vocabulary());

  private static Standard standard(String text) {
    return COMPILER
        .compile(new SourceText("test.rime", text), StandardGuideTest.FINDER)
        .standard()
        .orElseThrow();
  }

  static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>();
    for (String name : StandardLibrary.names()) {
      rules.addAll(standard(StandardLibrary.find(name).orElseThrow().text()).rules());
    }
    for (String text : StandardGuideTest.wholeStandards()) {
      rules.addAll(standard(text).rules());
    }
    for (String text : StandardGuideTest.sentences()) {
      rules.addAll(standard(StandardGuideTest.withSentence(text)).rules());
    }
    return rules;
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aRuleIsSaidInWordsThatAreSaidAlikeAgain(Rule rule) {
    String said = PARAPHRASE.of(rule).text().orElseThrow();
    String meaning = PARAPHRASE.meaning(rule).text().orElseThrow();
    assertThat(meaning.lines()).contains(said, "stage " + rule.stage());
    Rule again = standard(statements(rule, meaning)).rules().get(0);
    assertThat(PARAPHRASE.of(again).text()).contains(said);
    assertThat(again.question().isPresent() || again.sentence().equals(said)).isTrue();
    assertThat(PARAPHRASE.meaning(again).text()).contains(meaning);
  }

  /** The rule or inspect item as its meaning says it. */
  private static String statements(Rule rule, String meaning) {
    String said = PARAPHRASE.of(rule).text().orElseThrow();
    String begin =
        rule.question().map(question -> "inspect " + question.inspect()).orElse("rule again");
    return "standard again edition 1\n"
        + meaning.replace(said + "\n", begin + " \"Again\"\n" + said + "\n")
        + "because \"again\"\nsource \"again\"\n";
  }

  @Test
  void theFirstShippedRuleReadsLikeASentence() {
    Rule rule =
        standard(StandardLibrary.find("cold-steel-modules").orElseThrow().text()).rules().get(0);
    assertThat(PARAPHRASE.meaning(rule).text())
        .contains(
            """
            let foam behind a box be 2 in
            each box where it is on a wall and it is recessed must sit in outer bay and have clearance of at least foam behind a box
            severity hold
            stage layout
            """);
  }
}
