package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;

/** What is waived stays broken, is marked, and counts for whom it says and as long as it says. */
class WaiverTest {
  /** Box A stands before an inward rib, 31.4 mm from it; box B stands before an outer bay. */
  private static final Plan PLAN =
      Given.module(40, 25, ", 'boxes': [" + Given.box("A", 75) + "," + Given.box("B", 214) + "]");

  private static final Standard STANDARD =
      Given.rule(
          "let flush box be a box where its mount is flush\n\n",
          "each box where it is recessed must sit in outer bay with clearance >= 2 in");

  private static final String PARTS =
      """
        because "the bay is taken"
        approved by "the engineer"
        from 2026-11-01 until 2026-11-30
      """;

  private static List<Waiver> waivers(String statements) {
    WaiverCompilation compiled =
        new WaiverCompiler(Given.DICTIONARY.vocabulary())
            .compile(new SourceText("w.rime", "waivers for test\n\n" + statements), STANDARD);
    assertThat(compiled.diagnostics()).isEmpty();
    return compiled.waivers();
  }

  private static CheckOptions on(String day) {
    return new CheckOptions(Optional.empty(), Optional.of(LocalDate.parse(day)), 2);
  }

  private static CheckResult check(String statements, String day) {
    return new Checker(Given.DICTIONARY, STANDARD).check(PLAN, on(day), waivers(statements));
  }

  @Test
  void aWaivedFindingStaysBrokenAndSaysWhoAllowedIt() {
    CheckResult result = check("waive r for \"A\"\n" + PARTS, "2026-11-25");
    assertThat(result.count(Verdict.BROKEN)).isEqualTo(2 - result.count(Verdict.MET));
    Finding finding =
        result.findings().stream()
            .filter(one -> one.element().id().equals("A"))
            .findFirst()
            .orElseThrow();
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.waiver().orElseThrow().approvedBy()).isEqualTo("the engineer");
    assertThat(result.waived()).isEqualTo(1);
    assertThat(result.waivers().get(0).findings()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({"2026-10-31, NOT_YET", "2026-11-01, USED", "2026-11-30, USED", "2026-12-01, EXPIRED"})
  void bothDaysOfThePeriodCount(String day, WaiverUse.State state) {
    CheckResult result = check("waive r for \"A\"\n" + PARTS, day);
    assertThat(result.waivers().get(0).state()).isEqualTo(state);
    assertThat(result.waived()).isEqualTo(state == WaiverUse.State.USED ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({
    "'for \"A\"', USED, 1, ''",
    "'for \"B\"', NO_LONGER_NEEDED, 0, ''",
    "'for \"Z\"', UNUSED, 0, 'Z'",
    "'for \"left\"', UNUSED, 0, 'left'",
    "'for \"A\", \"Z\"', USED, 1, 'Z'",
    "'for each box', USED, 1, ''",
    "'for each flush box where it is on the left wall', USED, 1, ''",
    "'for each part', USED, 1, ''",
    "'for each box where it is on the roof', UNUSED, 0, ''",
    "'for each box where it sits in outer bay', NO_LONGER_NEEDED, 0, ''",
    "'for \"A\" in plan \"test\"', USED, 1, ''",
    "'for \"A\" in plan \"other\"', OTHER_PLAN, 0, ''"
  })
  void aWaiverSaysWhatCameOfIt(String target, WaiverUse.State state, int findings, String unknown) {
    WaiverUse use = check("waive r " + target + "\n" + PARTS, "2026-11-25").waivers().get(0);
    assertThat(use.state()).isEqualTo(state);
    assertThat(use.findings()).isEqualTo(findings);
    assertThat(String.join(" ", use.unknown())).isEqualTo(unknown);
  }

  /** The clearance of box A is 25 - 6.4 + 12.8 mm, that is 31.4 mm or 1.236 in, by hand. */
  @ParameterizedTest
  @CsvSource({
    "1 in, USED",
    "31.4 mm, USED",
    "31.3 mm, USED",
    "31.5 mm, UNUSED",
    "1-1/2 in, UNUSED"
  })
  void itReachesAsFarAsItSays(String bound, WaiverUse.State state) {
    CheckResult result =
        check("waive r for \"A\"\n  down to " + bound + "\n" + PARTS, "2026-11-25");
    WaiverUse use = result.waivers().get(0);
    assertThat(use.state()).isEqualTo(state);
    assertThat(use.beyond())
        .isEqualTo(state == WaiverUse.State.USED ? List.of() : List.of("box A"));
    assertThat(result.waived()).isEqualTo(use.findings());
  }

  @Test
  void aValueThatMayBeWorseIsNotCovered() {
    Plan tolerant =
        Given.plan(
            Given.json(
                    40, 25, ", 'boxes': [" + Given.box("A", 75) + "," + Given.box("B", 214) + "]")
                .replace("'units': 'mm',", "'units': 'mm', 'tolerances': {'shell': 1},"));
    Checker checker = new Checker(Given.DICTIONARY, STANDARD);
    String waive = "waive r for \"A\"\n  down to %s\n" + PARTS;
    assertThat(
            checker.check(tolerant, on("2026-11-25"), waivers(waive.formatted("31.3 mm"))).waived())
        .isZero();
    assertThat(
            checker.check(tolerant, on("2026-11-25"), waivers(waive.formatted("29 mm"))).waived())
        .isEqualTo(1);
  }

  @Test
  void aBoundOfOneLimitLetsNoOtherLimitGo() {
    String bound = "waive r for \"A\"\n  down to 30 mm\n" + PARTS;
    // Box A is 31.4 mm from the steel and 47.6 mm deep.
    assertThat(waived("box must have clearance >= 2 in and have depth <= 50 mm", bound)).isOne();
    assertThat(waived("box must have clearance >= 2 in and have depth <= 40 mm", bound)).isZero();
    assertThat(waived("box must not (have clearance < 2 in or have depth > 50 mm)", bound)).isOne();
    assertThat(waived("box must not (have clearance < 2 in or have depth > 40 mm)", bound))
        .isZero();
  }

  @Test
  void whatIsMeasuredIsTheSideThatThePlanDecides() {
    String down = "waive r for \"A\"\n  down to 30 mm\n" + PARTS;
    String sentence = "for each box, 2 times gap must be at most its clearance";
    assertThat(waived(sentence, down)).isOne();
    assertThat(waived(sentence, down.replace("30 mm", "32 mm"))).isZero();
    Standard standard = Given.rule("let gap be 25 mm\n\n", sentence);
    assertThat(compiled(down.replace("down to 30", "up to 200"), standard).diagnostics())
        .extracting(Diagnostic::headline)
        .containsExactly("The rule r asks for at least, so a waiver reaches down.");
  }

  private static int waived(String sentence, String statements) {
    Standard standard = Given.rule("let gap be 25 mm\n\n", sentence);
    WaiverCompilation compiled = compiled(statements, standard);
    assertThat(compiled.diagnostics()).isEmpty();
    return new Checker(Given.DICTIONARY, standard)
        .check(PLAN, on("2026-11-25"), compiled.waivers())
        .waived();
  }

  private static WaiverCompilation compiled(String statements, Standard standard) {
    return new WaiverCompiler(Given.DICTIONARY.vocabulary())
        .compile(new SourceText("w.rime", "waivers for test\n\n" + statements), standard);
  }

  @Test
  void whatIsUndecidedIsNeverWaived() {
    Plan plan =
        Given.module(
            40, 25, ", 'boxes': [" + Given.box("A", 75).replace("'depth': 47.6, ", "") + "]");
    Standard standard = Given.rule("box must have clearance >= 2 in");
    List<Waiver> waivers =
        new WaiverCompiler(Given.DICTIONARY.vocabulary())
            .compile(
                new SourceText("w.rime", "waivers for test\n\nwaive r for \"A\"\n" + PARTS),
                standard)
            .waivers();
    CheckResult result =
        new Checker(Given.DICTIONARY, standard).check(plan, on("2026-11-25"), waivers);
    assertThat(result.count(Verdict.UNDECIDED)).isEqualTo(1);
    assertThat(result.waived()).isZero();
    assertThat(result.waivers().get(0).state()).isEqualTo(WaiverUse.State.NO_LONGER_NEEDED);
  }

  @Test
  void ofTwoThatCoverAFindingTheFirstCountsAndBothAreUsed() {
    CheckResult result =
        check(
            "waive r for \"A\"\n"
                + PARTS
                + "\nwaive r for each box\n"
                + PARTS.replace("engineer", "owner"),
            "2026-11-25");
    assertThat(result.waived()).isEqualTo(1);
    assertThat(result.waivers())
        .extracting(WaiverUse::state)
        .containsOnly(WaiverUse.State.USED)
        .hasSize(2);
    List<String> approvers = new ArrayList<>();
    result.findings().forEach(f -> f.waiver().ifPresent(w -> approvers.add(w.approvedBy())));
    assertThat(approvers).containsExactly("the engineer");
  }

  @Test
  void waiversNeedADate() {
    Checker checker = new Checker(Given.DICTIONARY, STANDARD);
    List<Waiver> waivers = waivers("waive r for \"A\"\n" + PARTS);
    assertThatThrownBy(() -> checker.check(PLAN, CheckOptions.DEFAULT, waivers))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("date");
  }

  @Test
  void aWaiverOfARuleThatIsNotDueSaysSo() {
    Standard later =
        Given.standard(
            "rule r \"A rule\"\n  box must sit in outer bay\n  severity hold stage pre-foam"
                + " because \"b\" source \"s\"\n");
    CheckOptions options =
        new CheckOptions(Optional.of("layout"), Optional.of(LocalDate.of(2026, 11, 25)), 1);
    CheckResult result =
        new Checker(Given.DICTIONARY, later)
            .check(PLAN, options, waivers("waive r for \"A\"\n" + PARTS));
    assertThat(result.waivers().get(0).state()).isEqualTo(WaiverUse.State.NOT_DUE);
  }
}
