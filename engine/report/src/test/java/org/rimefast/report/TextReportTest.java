package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rimefast.check.CheckResult;
import org.rimefast.check.ElementName;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Truth;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Withdrawal;

class TextReportTest {
  private static final UnusableInput UNUSABLE =
      UnusableInput.unreadable(
          UnusableInput.Kind.PLAN, "bunk.json", "no-such-file", "There is no such file.", "");

  @Test
  void everythingIsTold() throws IOException {
    Golden.check("everything.txt", TextReport.write(SampleResults.everything(), TextOptions.PLAIN));
  }

  @Test
  void whatIsWaivedIsMarkedAndCountedApart() throws IOException {
    Golden.check("waived.txt", TextReport.write(SampleResults.waived(), TextOptions.PLAIN));
  }

  @Test
  void aPlanWhoseFindingsAreAllWaivedSaysSo() {
    CheckResult waived = SampleResults.waived();
    CheckResult all =
        SampleResults.of(
            waived.rules().get(0).rule(), List.of(waived.rules().get(0).findings().get(0)));
    assertThat(TextReport.write(all, TextOptions.PLAIN))
        .contains("nothing broken but what is waived")
        .doesNotContain("Do not pass the hold point");
  }

  @Test
  void itIsToldWhoAmendedWhat() throws IOException {
    Golden.check("amended.txt", TextReport.write(SampleResults.layered(), TextOptions.PLAIN));
  }

  @Test
  void aRuleIsToldWithTheChainOfStandards() throws IOException {
    StringBuilder all = new StringBuilder();
    for (Rule rule : SampleResults.house().rules()) {
      all.append(explained(rule.id())).append("=====\n");
    }
    for (Withdrawal withdrawal : SampleResults.house().withdrawn()) {
      all.append(explained(withdrawal.rule().id()));
    }
    Golden.check("explain.txt", all.toString());
    assertThat(RuleReport.write(SampleResults.house(), "nothing", TextOptions.PLAIN)).isEmpty();
  }

  private static String explained(String id) {
    return RuleReport.write(SampleResults.house(), id, TextOptions.PLAIN).orElseThrow();
  }

  @Test
  void narrowLinesWrap() throws IOException {
    Golden.check(
        "everything-80.txt",
        TextReport.write(SampleResults.everything(), new TextOptions(80, false)));
  }

  @Test
  void aCleanPlanSaysHowOftenRulesWereMet() throws IOException {
    Golden.check("clean.txt", TextReport.write(SampleResults.clean(), TextOptions.PLAIN));
  }

  @Test
  void aPlanOfWhichNoRuleSpokeIsNotCalledSound() throws IOException {
    Golden.check(
        "nothing-checked.txt", TextReport.write(SampleResults.nothingChecked(), TextOptions.PLAIN));
  }

  @Test
  void severalPlansGetALineEach() throws IOException {
    Golden.check(
        "overview.txt",
        TextReport.overview(
            List.of(SampleResults.everything(), SampleResults.clean()),
            List.of(UNUSABLE),
            TextOptions.PLAIN));
  }

  @Test
  void aLongFileNameIsCutInTheOverviewSoThatItsEndStays() {
    CheckResult result = SampleResults.readFrom("a/".repeat(60) + "wet-lab.json");
    List<String> lines =
        TextReport.overview(List.of(result), List.of(), TextOptions.PLAIN).lines().toList();
    assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    assertThat(lines.get(3)).startsWith("  .../a/a/").contains("/a/wet-lab.json  ");
  }

  @Test
  void noLineIsWiderThanAsked() {
    for (int width : new int[] {80, 100, 160}) {
      String text = TextReport.write(SampleResults.everything(), new TextOptions(width, false));
      assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(width));
    }
  }

  @Test
  void noLineEndsInASpace() {
    assertThat(TextReport.write(SampleResults.everything(), TextOptions.PLAIN).lines())
        .noneMatch(line -> line.endsWith(" "));
  }

  @Test
  void widthsThatCannotBeReadAreRefused() {
    assertThatThrownBy(() -> new TextOptions(79, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a width from 80 to 160, not 79");
    assertThatThrownBy(() -> new TextOptions(161, false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void colourOnlyAddsEscapeCodes() {
    CheckResult result = SampleResults.everything();
    String coloured = TextReport.write(result, new TextOptions(100, true));
    assertThat(coloured).contains("\u001b[1;31mHOLD broken:\u001b[0m");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
        .isEqualTo(TextReport.write(result, TextOptions.PLAIN));
  }

  @Test
  void withoutColourEveryByteIsPlainAscii() {
    assertThat(TextReport.write(SampleResults.everything(), TextOptions.PLAIN)).matches("[\n -~]*");
  }

  @Test
  void whatAPlanHidesIsMadeVisible() {
    CheckResult result =
        SampleResults.titled(
            SampleResults.clean(), "a\u001b[2Jb\u202Ec\nd\uD800e\u009Bf\uDB40\uDC41g");
    assertThat(TextReport.write(result, TextOptions.PLAIN))
        .startsWith("a<U+001B>[2Jb<U+202E>c<U+000A>d<U+D800>e<U+009B>f<U+E0041>g ");
  }

  @Test
  void lettersOfAnyLanguageStayAsTheyAre() {
    CheckResult result = SampleResults.titled(SampleResults.clean(), "L\u00e4rmschutz \u6e7f");
    assertThat(TextReport.write(result, TextOptions.PLAIN)).startsWith("L\u00e4rmschutz \u6e7f ");
  }

  @Test
  void aWordLongerThanALineIsCut() {
    CheckResult result = SampleResults.titled(SampleResults.clean(), "x".repeat(300));
    assertThat(TextReport.write(result, TextOptions.PLAIN).lines().limit(3))
        .containsExactly("x".repeat(100), "x".repeat(100), "x".repeat(100));
  }

  @Test
  void rowsAreInCountingOrder() {
    List<Finding> findings =
        IntStream.of(10, 2, 1, 11, 3).mapToObj(i -> SampleResults.tooClose("R-" + i, 48)).toList();
    String text =
        TextReport.write(SampleResults.of(SampleResults.CLEAR, findings), TextOptions.PLAIN);
    assertThat(
            text.lines()
                .filter(line -> line.startsWith("box "))
                .map(line -> line.split(" +", -1)[1]))
        .containsExactly("R-1", "R-2", "R-3", "R-10", "R-11");
  }

  @Test
  void oneMissingValueOfARowIsToldOnce() {
    List<Finding> findings = IntStream.rangeClosed(1, 40).mapToObj(i -> waits("R-" + i)).toList();
    String text =
        TextReport.write(SampleResults.of(SampleResults.DRY, findings), TextOptions.PLAIN);
    assertThat(text)
        .contains("depth of box R-1, and 39 more of the same row")
        .contains("To be given at /boxes/0/depth; 40 verdicts wait for it:")
        .contains("R-20, and 20 more\n")
        .doesNotContain("R-21");
    assertThat(text.split("To be given at", -1)).hasSize(2);
  }

  @Test
  void theMarginIsWordedByTheSideOfTheLimit() {
    assertThat(margin(Comparison.AT_LEAST, -1, 1, 1)).contains("short by  1 in\n");
    assertThat(margin(Comparison.MORE_THAN, -1, 1, 2)).contains("short by  up to 1 in\n");
    assertThat(margin(Comparison.AT_MOST, -1, 1, 1)).contains("over by   1 in\n");
    assertThat(margin(Comparison.LESS_THAN, -1, 1, 2)).contains("over by   up to 1 in\n");
    assertThat(margin(Comparison.AT_MOST, 1, 1, 1)).contains("to spare  1 in\n");
    assertThat(margin(Comparison.AT_MOST, 1, 1, 2)).contains("to spare  at least 1 in\n");
    assertThat(margin(Comparison.MORE_THAN, -0.0, 1, 1))
        .contains("to spare  nothing, it lies on the limit\n");
    assertThat(margin(Comparison.EQUAL, 0, 1, 1))
        .contains("limit     exactly 2 in\n")
        .doesNotContain("to spare");
  }

  @Test
  void aStandardWithoutCautionGetsTheGeneralOne() {
    CheckResult result = SampleResults.withoutCaution();
    assertThat(TextReport.write(result, TextOptions.PLAIN))
        .contains("CAUTION: This report supports and does not replace local codes, ");
  }

  @Test
  void theDefaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      String root = TextReport.write(SampleResults.everything(), TextOptions.PLAIN);
      for (String tag : List.of("tr", "de", "ar-EG", "th-TH-u-ca-buddhist-nu-thai")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(TextReport.write(SampleResults.everything(), TextOptions.PLAIN)).isEqualTo(root);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static Finding waits(String id) {
    ElementName box = new ElementName("box", id, "", "/boxes/0", Optional.empty());
    MissingValue depth = new MissingValue("/boxes/0/depth", "depth of box " + id, Optional.empty());
    return new Finding(
        SampleResults.DRY, Verdict.UNDECIDED, box, "no depth", List.of(), List.of(depth));
  }

  private static String margin(Comparison comparison, double margin, double least, double most) {
    Measurement measurement =
        new Measurement(
            "clearance",
            least,
            most,
            "1 in",
            Optional.empty(),
            comparison,
            2,
            "2 in",
            Optional.empty(),
            margin,
            "1 in");
    Evidence evidence =
        new Evidence(
            "seen", Truth.FALSE, Optional.of(measurement), List.of(), List.of(), List.of());
    Finding finding =
        new Finding(
            SampleResults.CLEAR,
            Verdict.BROKEN,
            SampleParts.box("R-1", 1),
            "seen",
            List.of(evidence),
            List.of());
    return TextReport.write(
        SampleResults.of(SampleResults.CLEAR, List.of(finding)), TextOptions.PLAIN);
  }
}
