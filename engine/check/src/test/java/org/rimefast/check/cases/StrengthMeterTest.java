package org.rimefast.check.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/** What cases see of a rule, and which changes of it they let pass. */
class StrengthMeterTest {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final String PLAN =
      """
        plan \"""
          {"format": "rimefast-plan-1", "id": "p", "title": "Plan (invented)", "units": "mm",
           "shell": {"size": "45G1"},
           "faces": {"default": {"profile": "side wall", "phase": 40, "standoff": 25}},
           "boxes": [
             {"id": "A", "kind": "device", "face": "left", "along": 400, "up": 900, "width": 54,
              "height": 76, "depth": 50, "mount": "flush", "material": "steel"},
             {"id": "B", "kind": "junction", "face": "roof", "along": 400, "up": 900, "width": 90,
              "height": 90, "depth": 40, "mount": "surface", "material": "steel"}]}
        \"""
      """;

  @Test
  void casesAtTheLimitAndOneStepBeyondTellEverything() {
    RuleStrength strength =
        measure(
            "box must have depth <= 50 mm",
            """
            case "at the limit" of r
              PLAN
              expect met by "A", "B"

            case "one step beyond" of r
              PLAN
              set depth of "A" to 51 mm
              expect broken by "A"

            case "not known" of r
              PLAN
              remove depth of "A"
              expect undecided by "A" for want of depth
            """);
    assertThat(strength.unnoticed()).isEmpty();
    assertThat(strength.changes()).isEqualTo(5);
    assertThat(strength.conditions())
        .containsExactly(
            new RuleStrength.Seen(
                "depth <= 50 mm",
                true,
                true,
                true,
                Optional.of(new RuleStrength.Limit("50 mm", true, true))));
  }

  @Test
  void aCaseFarFromTheLimitTellsNeitherStrictnessNorTheLimit() {
    RuleStrength strength =
        measure(
            "box must have depth <= 50 mm",
            """
            case "far beyond" of r
              PLAN
              set depth of "A" to 90 mm
              expect broken by "A"
            """);
    assertThat(told(strength))
        .containsExactlyInAnyOrder(
            "\"at most\" from \"less than\": depth <= 50 mm",
            "50 mm from 51 mm: 50 mm",
            "50 mm from 49 mm: 50 mm");
    assertThat(strength.conditions().get(0).limit())
        .contains(new RuleStrength.Limit("50 mm", false, false));
  }

  @Test
  void whoIsMeantIsPinnedOnlyByAnElementThatIsNotMeant() {
    String loose =
        """
        case "met" of r
          PLAN
          expect met by "A"

        case "broken" of r
          PLAN
          set depth of "A" to 39 mm
          expect broken by "A"
        """;
    assertThat(told(measure("each box where it is recessed must have depth >= 40 mm", loose)))
        .contains("who is meant from all there are: recessed");
    String tight =
        loose
            + """

            case "not meant" of r
              PLAN
              set depth of "B" to 10 mm
              expect not applicable to "B"
              expect met by "A"
            """;
    assertThat(told(measure("each box where it is recessed must have depth >= 40 mm", tight)))
        .doesNotContain("who is meant from all there are: recessed");
  }

  @Test
  void everyKindOfSlipIsTried() {
    RuleStrength strength =
        measure(
            "each box where kind is device or it is metal must (touch a stud or touch at least 2"
                + " brackets) and not touch the shell and have depth + 2 in <= (if it is recessed then 5"
                + " ft otherwise 0.025 m) and have number of boxes (where it is metal) < 12",
            """
            case "nothing is expected that could tell" of r
              PLAN
              expect broken by "A", "B"
            """);
    assertThat(told(strength))
        .contains(
            "\"or\" from \"and\": touch a stud or touch at least 2 brackets",
            "the sentence from the same without this: kind is device",
            "\"device\" from \"square\": device",
            "\"at least 2\" from \"at least 3\": touch at least 2 brackets",
            "\"not\" from its absence: not touch the shell",
            "\"+\" from \"-\": depth + 2 in",
            "2 in from 2.125 in: 2 in",
            "2 in from 2 mm: 2 in",
            "one value from the other: (if it is recessed then 5 ft otherwise 0.025 m)",
            "5 ft from 5.0833 ft: 5 ft",
            "0.025 m from 0.026 m: 0.025 m",
            "\"less than\" from \"at most\": number of boxes (where it is metal) < 12",
            "12 from 13: 12");
    assertThat(strength.cases()).isEqualTo(1);
  }

  @Test
  void aCaseThatDoesNotComeOutAsExpectedCountsForNothing() {
    RuleStrength strength =
        measure(
            "box must have depth <= 50 mm",
            """
            case "wrong" of r
              PLAN
              expect broken by "A"
            """);
    assertThat(strength.cases()).isZero();
    assertThat(strength.noticed()).isZero();
  }

  @Test
  void aValueReadOnSiteIsSeenOnBothSidesOfItsLimit() {
    String plan =
        PLAN.replace(
            "\"boxes\": [",
            "\"readings\": [{\"inspect\": \"looked\", \"of\": \"A\", \"answer\": \"yes\","
                + " \"value\": \"%s\", \"who\": \"the foreman\", \"when\": \"2026-11-20\"}], \"boxes\": [");
    RuleStrength strength =
        measureText(
            """
            standard test edition 1

            inspect looked "How deep"
              for each box where its kind is device
              ask "How deep is it?"
              answer yes
              reading at most 50 mm
              severity hold
              stage pre-foam
              because "a reason"
              source "common practice, no source"

            case "at the limit" of looked
            """
                + plan.formatted("50 mm")
                + """
                  expect met by "A"

                case "one step beyond" of looked
                """
                + plan.formatted("51 mm")
                + "  expect broken by \"A\"\n");
    assertThat(strength.conditions())
        .extracting(RuleStrength.Seen::limit)
        .contains(Optional.of(new RuleStrength.Limit("50 mm", true, true)));
  }

  private static List<String> told(RuleStrength strength) {
    return strength.unnoticed().stream().map(u -> u.told() + ": " + u.place()).toList();
  }

  private static RuleStrength measure(String sentence, String cases) {
    String text =
        """
        standard test edition 1

        rule r "A rule"
          %s
          severity hold
          stage layout
          because "a reason"
          source "common practice, no source"

        """
                .formatted(sentence)
            + cases.replace("  PLAN\n", PLAN);
    return measureText(text);
  }

  private static RuleStrength measureText(String text) {
    Compilation compilation =
        new RuleCompiler(DICTIONARY.vocabulary()).compile(new SourceText("test.rime", text));
    Standard standard =
        compilation
            .standard()
            .orElseThrow(
                () ->
                    new AssertionError(
                        compilation.diagnostics().stream()
                            .map(Diagnostic::headline)
                            .collect(Collectors.joining("\n"))));
    CaseRunner runner = new CaseRunner(DICTIONARY, (file, name) -> Optional.empty());
    StandardStrength strength =
        new StrengthMeter(DICTIONARY, runner)
            .measure(standard, standard.cases().stream().map(runner::prepare).toList());
    return strength.rules().get(0);
  }
}
