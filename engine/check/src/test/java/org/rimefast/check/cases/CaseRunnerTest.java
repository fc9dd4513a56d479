package org.rimefast.check.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;

/**
 * On the left wall of the plan a bay's middle is at 1326 mm, a rib's at 1187 mm (pitch 278 mm,
 * phase 40 mm).
 */
class CaseRunnerTest {
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "small", "title": "Small (invented)", "units": "mm",
       "shell": {"size": "45G1"},
       "faces": {"default": {"profile": "side wall", "phase": 40, "standoff": 25,
         "stud": {"depth": 41.3, "flange": 31.75, "thickness": 0.84}, "lining": 12.7}},
       "boxes": [
         {"id": "R-1", "kind": "device", "face": "left", "along": 1187, "up": 1200, "width": 54,
          "height": 76, "depth": 47.6, "mount": "flush"},
         {"id": "R-2", "kind": "device", "face": "left", "along": 1326, "up": 1200, "width": 54,
          "height": 76, "mount": "flush"},
         {"id": "R-3", "kind": "device", "face": "left", "along": 1604, "up": 1200, "width": 54,
          "height": 76, "depth": 47.6, "mount": "flush"},
         {"id": "R-4", "kind": "device", "face": "left", "along": 1604, "up": 400, "width": 54,
          "height": 76, "depth": 47.6, "mount": "surface"}],
       "panels": [{"id": "P", "face": "right"}]}
      """;
  private static final String RULES =
      """
      standard small edition 1

      rule in-bay "A recessed box sits in an outer bay"
        each box where it is recessed must sit in outer bay with clearance >= 40 mm
        severity hold
        stage layout
        because "room for foam"
        source "common practice, no source"

      rule lined "A wall is lined"
        for each wall, its lining thickness must be at least 12.7 mm
        severity fix
        stage lining
        because "it is seen"
        source "common practice, no source"

      rule no-luminaire "A luminaire is on the lining"
        luminaire must be mounted on the lining
        severity fix
        stage layout
        because "the roof is cold"
        source "common practice, no source"

      """;
  private static final String ALL_OF_IN_BAY =
      """
        plan "small.json"
        expect broken by "R-1"
        expect undecided by "R-2" for want of depth
        expect met by "R-3"
        expect not applicable to "R-4"
      """;

  @Test
  void whatIsExpectedOfEachElementComesOut() {
    assertThat(run("in-bay", ALL_OF_IN_BAY).isAsExpected()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "expect met",
        "expect met by \"R-3\"",
        "expect undecided by \"R-2\"",
        "expect undecided by \"R-2\" for want of depth of \"R-2\""
      })
  void aWayToSayWhatComesOut(String expectation) {
    String others = expectation.contains("undecided") ? "" : "  expect undecided by \"R-2\"\n";
    String text = "plan \"small.json\"\nexpect broken by \"R-1\"\n" + others + expectation + "\n";
    assertThat(run("in-bay", text).mismatches()).isEmpty();
  }

  @Test
  void circuitsAndWhatRunsHoldAreChangedByEdits() {
    String text =
        """
          plan "small.json"
          remove "R-2"
          set along of "R-1" to 1326 mm
          add to circuits \"""{"id": "L1", "panel": "P", "breaker": "15 A"}\"""
          add to runs \"""{"id": "C1", "kind": "metal-clad-cable", "circuit": "L1",
            "conductors": [{"size": "12 AWG", "count": 2}],
            "path": [{"face": "left"}, {"face": "left"}]}\"""
          set breaker of "L1" to 20 A
          set slack from of "C1" to 300 mm
          set slack to of "C1" to 6 in
          set bend radius of "C1" to 90
          remove conductors of "C1"
          expect met
        """;
    assertThat(run("in-bay", text).problems()).isEmpty();
    assertThat(run("in-bay", text).mismatches()).isEmpty();
  }

  @Test
  void aChangeToACircuitThatMakesNoSenseIsTold() {
    String text =
        """
          plan "small.json"
          add to circuits \"""{"id": "L1"}\"""
          set breaker of "L1" to 20 V
          expect met
        """;
    assertThat(run("in-bay", text).problems())
        .extracting(CaseProblem::message)
        .containsExactly(
            "small.json after the changes, at /circuits/0/breaker: \"breaker\" of circuit \"L1\""
                + " is 20 V, which is not a current in A.");
  }

  @Test
  void anEditChangesWhatComesOut() {
    String text =
        """
          plan "small.json"
          set along of "R-1" to 1326 mm
          remove "R-2"
          set mount of "R-4" to flush
          expect met by "R-1", "R-3", "R-4"
        """;
    assertThat(run("in-bay", text).mismatches()).isEmpty();
  }

  @Test
  void aPlanMayStandInTheCase() {
    String text = "plan \"\"\"" + PLAN + "\"\"\"\nremove \"R-1\"\nremove \"R-2\"\nexpect met\n";
    assertThat(run("in-bay", text).isAsExpected()).isTrue();
  }

  /** Each line of the case is put in turn; what is told names what came out and why. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          expect broken by "R-3" | broken by box R-3 | met by box R-3: box R-3 sits in outer bay; clearance of box R-3 is 63.8 mm, at least 40 mm
          expect met by "R-1" | met by box R-1 | broken by box R-1: box R-1 does not sit in outer bay; clearance of box R-1 is 31.4 mm, not at least 40 mm
          expect broken by "R-4" | broken by box R-4 | not applicable to box R-4: box R-4 is not recessed
          expect undecided by "R-2" within tolerance | undecided by box R-2 within tolerance | undecided by box R-2: clearance of box R-2 cannot be told: depth of box R-2 is missing
          expect undecided by "R-2" for want of mount | undecided by box R-2 for want of mount | undecided by box R-2: clearance of box R-2 cannot be told: depth of box R-2 is missing
          expect undecided by "R-2" for want of depth of "R-1" | undecided by box R-2 for want of depth of R-1 | undecided by box R-2: clearance of box R-2 cannot be told: depth of box R-2 is missing
          expect broken by "R-9" | broken by R-9 | the plan has no element "R-9"; of its boxes there are R-1, R-2, R-3, R-4
          expect broken by "P" | broken by P | the rule speaks of boxes, and panel P is none
          expect nothing | nothing: the rule speaks of no box | met by box R-3: box R-3 sits in outer bay; clearance of box R-3 is 63.8 mm, at least 40 mm
          """)
  void whatCameOutInsteadIsTold(String expectation, String expected, String found) {
    CaseResult result = run("in-bay", "plan \"small.json\"\n" + expectation + "\n");
    assertThat(result.isAsExpected()).isFalse();
    assertThat(result.mismatches()).allMatch(one -> one.rule().orElseThrow().id().equals("in-bay"));
    assertThat(result.mismatches())
        .extracting(mismatch -> mismatch.expected() + " / " + mismatch.found())
        .contains(expected + " / " + found);
  }

  @Test
  void whatIsNotNamedMustBeSound() {
    assertThat(run("in-bay", "plan \"small.json\"\nexpect met\n").mismatches())
        .extracting(Mismatch::expected)
        .containsExactly(
            "no finding on box R-1, which the case does not name",
            "no finding on box R-2, which the case does not name");
  }

  @Test
  void metByNoneSaysWhy() {
    String none =
        """
          plan "small.json"
          remove "R-3"
          expect broken by "R-1"
          expect undecided by "R-2"
          expect met
        """;
    assertThat(run("in-bay", none).mismatches())
        .singleElement()
        .satisfies(
            mismatch -> {
              assertThat(mismatch.expected()).isEqualTo("met by some box");
              assertThat(mismatch.found())
                  .startsWith(
                      "met by none: 1 broken, 1 undecided, 1 not applicable; the first is broken by"
                          + " box R-1: box R-1 does not sit in outer bay");
            });
    assertThat(run("no-luminaire", "plan \"small.json\"\nexpect met\n").mismatches())
        .extracting(Mismatch::found)
        .containsExactly("met by none: the plan has no luminaires");
  }

  @Test
  void aFaceIsNamedAsFindingsNameIt() {
    String text =
        """
          plan "small.json"
          set lining of "left wall" to 12.6 mm
          set "/faces/rear" to \"""{"lining": "12.7 mm +- 1 mm"}\"""
          expect broken by "left wall"
          expect undecided by "rear" within tolerance
          expect met by "front wall"
        """;
    assertThat(run("lined", text).mismatches()).isEmpty();
  }

  @Test
  void aCaseOfEveryRuleAsksEachThatThePlanHasSomethingFor() {
    String sound =
        """
          plan "small.json"
          remove "R-1"
          remove "R-2"
          expect met
        """;
    assertThat(run("every rule", sound).mismatches()).isEmpty();
    String one =
        """
          plan "small.json"
          remove "R-2"
          expect met
          expect in-bay broken by "R-1"
          expect no-luminaire nothing
        """;
    assertThat(run("every rule", one).mismatches()).isEmpty();
    String none =
        """
          plan "small.json"
          remove "/boxes"
          set "/faces/default" to \"""{}\"""
          expect met
          expect lined undecided by "left", "right", "front", "rear"
        """;
    assertThat(run("every rule", none).mismatches())
        .singleElement()
        .satisfies(
            mismatch -> {
              assertThat(mismatch.rule()).isEmpty();
              assertThat(mismatch.found()).isEqualTo("no rule is met by any element");
            });
  }

  @Test
  void aCaseThatCannotBeRunSaysWhyAndIsNotAsExpected() {
    String edits =
        """
          plan "small.json"
          remove "R-9"
          set along of "R-1" to 1 mm
          add to boxes \"""{\"""
          expect met
        """;
    CaseResult edited = run("in-bay", edits);
    assertThat(edited.isAsExpected()).isFalse();
    assertThat(edited.problems())
        .extracting(CaseProblem::message)
        .containsExactly(
            "remove \"R-9\": The plan has no element \"R-9\".",
            "add to boxes: What stands between the triple quotes is no JSON (line 1 of it): The text"
                + " ends inside an object that starts in line 1.");
    assertThat(problems("plan \"other.json\"\nexpect met\n"))
        .containsExactly("There is no plan \"other.json\" beside cases/small.rime.");
    assertThat(problems("plan \"broken.json\"\nexpect met\n"))
        .containsExactly("The plan \"broken.json\" cannot be read: the disk is gone.");
    assertThat(problems("plan \"\"\"\n{}\n\"\"\"\nexpect met\n"))
        .contains("the plan in the case, line 2: The plan has no \"format\".");
    assertThat(problems("plan \"small.json\"\nset colour of \"R-1\" to red\nexpect met\n"))
        .singleElement()
        .asString()
        .startsWith("small.json after the changes, at /boxes/0/colour: ");
  }

  @Test
  void rulesThatNoCaseExpectsToBeBrokenAreKnown() {
    Standard standard =
        compile(
            "cases/small.rime",
            "case \"a\" of in-bay\n"
                + ALL_OF_IN_BAY
                + "\ncase \"b\" of every rule\n  plan \"other.json\"\n"
                + "  expect lined broken by \"left\"\n"
                + "\ncase \"c\" of lined\n  plan \"small.json\"\n  expect nothing\n");
    CaseResults results = runner().run(standard, standard.cases());
    assertThat(results.neverBroken()).extracting(Rule::id).containsExactly("no-luminaire");
    assertThat(results.notRun()).isEqualTo(1);
    assertThat(results.otherwise()).isEqualTo(1);
    assertThat(results.areAsExpected()).isFalse();
  }

  @Test
  void aChangedRuleIsAskedOfPreparedCasesAgainAndAgain() {
    Standard standard = compile("cases/small.rime", "case \"a\" of in-bay\n" + ALL_OF_IN_BAY);
    PreparedCase prepared = runner().prepare(standard.cases().get(0));
    assertThat(runner().isAsExpected(new Checker(DICTIONARY, standard), "in-bay", prepared))
        .isTrue();
    for (String limit : List.of("63 mm", "64 mm")) {
      String changed = RULES.replace("40 mm", limit);
      Standard other = compile(changed);
      assertThat(runner().isAsExpected(new Checker(DICTIONARY, other), "in-bay", prepared))
          .as(limit)
          .isEqualTo(limit.equals("63 mm"));
      assertThat(runner().isAsExpected(new Checker(DICTIONARY, other), "lined", prepared)).isTrue();
    }
    assertThatThrownBy(
            () ->
                runner()
                    .isAsExpected(
                        new Checker(DICTIONARY, compile("standard x edition 1\n")),
                        "in-bay",
                        prepared))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<String> problems(String text) {
    return run("in-bay", text).problems().stream().map(CaseProblem::message).toList();
  }

  private static CaseResult run(String rule, String text) {
    Standard standard = compile("cases/small.rime", "case \"a\" of " + rule + "\n" + text);
    CaseResult result = runner().run(standard, standard.cases()).results().get(0);
    PreparedCase prepared = runner().prepare(standard.cases().get(0));
    if (!rule.equals("every rule") && result.problems().isEmpty()) {
      assertThat(runner().isAsExpected(new Checker(DICTIONARY, standard), rule, prepared))
          .isEqualTo(result.isAsExpected());
    }
    return result;
  }

  private static CaseRunner runner() {
    return new CaseRunner(
        DICTIONARY,
        (caseFile, name) -> {
          assertThat(caseFile).isEqualTo("cases/small.rime");
          return switch (name) {
            case "small.json" -> Optional.of(PLAN.getBytes(StandardCharsets.UTF_8));
            case "broken.json" -> throw new IOException("the disk is gone");
            default -> Optional.empty();
          };
        });
  }

  private static Standard compile(String name, String cases) {
    return compile(new SourceText(name, RULES + cases));
  }

  private static Standard compile(String text) {
    return compile(new SourceText("other.rime", text));
  }

  private static Standard compile(SourceText source) {
    Compilation compilation = new RuleCompiler(DICTIONARY.vocabulary()).compile(source);
    assertThat(compilation.diagnostics()).isEmpty();
    return compilation.standard().orElseThrow();
  }
}
