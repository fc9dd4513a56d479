package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Plan;

/** What eyes on site must answer: undecided until a reading does. */
class InspectTest {
  private static final String PARTS =
      """
        severity hold
        stage pre-foam
        because "a reason"
        source "common practice, no source"
      """;

  private static final Standard COVERS =
      Given.standard(
          """
          inspect covers-inward "Covers are on and face inward"
            for each box where it is recessed
            ask "Is the cover on?"
            answer yes
          """
              + PARTS);

  private static final Standard STEEL =
      Given.standard(
          """
          let least temperature of steel be 5 degC

          inspect steel "The steel can take foam"
            for each wall
            ask "Is it dry?"
            answer yes
            reading at least least temperature of steel
          """
              + PARTS);

  private static Plan plan(String readings) {
    String boxes = Given.box("A", 75) + "," + Given.box("B", 900);
    return Given.module(
        40,
        25,
        ", 'boxes': [%s, %s], 'readings': [%s]"
            .formatted(boxes, Given.box("S", 1500).replace("flush", "surface"), readings));
  }

  private static String reading(String inspect, String of, String answer, String when) {
    return "{'inspect': '%s', 'of': '%s', 'answer': '%s', 'who': 'the foreman', 'when': '%s'}"
        .formatted(inspect, of, answer, when);
  }

  private static CheckResult check(Standard standard, Plan plan) {
    Checker checker = new Checker(Given.DICTIONARY, standard);
    PlanFacts facts = new PlanFacts(plan, Given.DICTIONARY);
    String id = standard.rules().get(0).id();
    for (int handle : facts.members(standard.rules().get(0).subject().noun())) {
      checker.explain(id, handle, facts);
    }
    return checker.check(facts, CheckOptions.DEFAULT);
  }

  @Test
  void whatNobodyLookedAtIsUndecidedAndNamesTheReading() {
    CheckResult result = check(COVERS, plan(""));
    assertThat(result.count(Verdict.UNDECIDED)).isEqualTo(2);
    assertThat(result.count(Verdict.NOT_APPLICABLE)).isEqualTo(1);
    Finding finding = result.findings().get(0);
    assertThat(finding.reason())
        .isEqualTo(
            "the answer to \"Is the cover on?\" for box A cannot be told: a reading of"
                + " covers-inward for box A is missing");
    assertThat(finding.missing())
        .extracting(MissingValue::pointer, MissingValue::description)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "/readings/-", "a reading of covers-inward for box A"));
  }

  @Test
  void aWrongAnswerIsBrokenAndSaysWhoLookedWhen() {
    CheckResult result =
        check(
            COVERS,
            plan(
                reading("covers-inward", "A", "yes", "2026-11-20")
                    + ","
                    + reading("covers-inward", "B", "no", "2026-11-20")));
    assertThat(result.count(Verdict.MET)).isEqualTo(1);
    Finding finding = result.findings().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.reason())
        .isEqualTo("\"Is the cover on?\" is answered no for box B, not yes");
    assertThat(finding.evidence().get(0).facts())
        .containsExactly(
            new Evidence.Fact("looked at by", "the foreman"),
            new Evidence.Fact("on", "2026-11-20"));
  }

  @ParameterizedTest
  @CsvSource({
    "yes, 2026-11-20, no, 2026-11-21, BROKEN",
    "no, 2026-11-21, yes, 2026-11-20, BROKEN",
    "no, 2026-11-20, yes, 2026-11-21, MET",
    "no, 2026-11-20, yes, 2026-11-20, MET",
    "yes, 2026-11-20, no, 2026-11-20, BROKEN"
  })
  void theLatestReadingCountsAndOfOneDayTheLaterInTheFile(
      String first, String firstDay, String second, String secondDay, Verdict verdict) {
    Plan plan =
        plan(
            reading("covers-inward", "A", first, firstDay)
                + ","
                + reading("covers-inward", "A", second, secondDay));
    Finding finding =
        new Checker(Given.DICTIONARY, COVERS)
            .explain("covers-inward", "A", new PlanFacts(plan, Given.DICTIONARY));
    assertThat(finding.verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "yes, 7 degC, MET, ''",
    "yes, 5 degC, MET, ''",
    "yes, 41 degF, MET, ''",
    "yes, 4.9 degC, BROKEN, 'the value read at steel for left wall is 4.9 degC, not at least 5 degC"
        + " (least temperature of steel)'",
    "yes, 280 K, MET, ''",
    "yes, 5 degC +- 1 K, UNDECIDED, 'the value read at steel for left wall is 4 degC to 6 degC within"
        + " the plan''s tolerance, so at least 5 degC (least temperature of steel) is not certain'",
    "yes, 7 mm, UNDECIDED, 'the value read at steel for left wall cannot be told: it is 7 mm, which"
        + " cannot be compared with 5 degC'",
    "no, 7 degC, BROKEN, '\"Is it dry?\" is answered no for left wall, not yes'",
    "no, 7 mm, BROKEN, '\"Is it dry?\" is answered no for left wall, not yes'",
    "no, 3 degC, BROKEN, '\"Is it dry?\" is answered no for left wall, not yes; the value read at"
        + " steel for left wall is 3 degC, not at least 5 degC (least temperature of steel)'"
  })
  void aValueMustKeepToItsLimitToo(String answer, String value, Verdict verdict, String reason) {
    String read =
        reading("steel", "left", answer, "2026-11-20").replace("}", ", 'value': '" + value + "'}");
    PlanFacts facts = new PlanFacts(plan(read), Given.DICTIONARY);
    Finding finding =
        new Checker(Given.DICTIONARY, STEEL)
            .explain("steel", facts.handleOf(org.rimefast.plan.Face.LEFT), facts);
    assertThat(finding.verdict()).isEqualTo(verdict);
    if (!reason.isEmpty()) {
      assertThat(finding.reason()).isEqualTo(reason);
    }
  }

  @Test
  void aReadingWithoutItsValueIsUndecidedAndNamesIt() {
    CheckResult result = check(STEEL, plan(reading("steel", "left", "yes", "2026-11-20")));
    assertThat(result.findings().get(0).missing())
        .extracting(MissingValue::pointer, MissingValue::description)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "/readings/0/value", "value of the reading of steel for left wall"));
  }

  @Test
  void aRoomIsNamedOrLeftOut() {
    Standard standard =
        Given.standard(
            "inspect air \"The air is dry\" for each room ask \"Is it?\" answer yes\n" + PARTS);
    for (String of : List.of("'of': 'room', ", "")) {
      Plan plan =
          plan("{'inspect': 'air', " + of + "'answer': 'yes', 'who': 'x', 'when': '2026-11-20'}");
      assertThat(check(standard, plan).count(Verdict.MET)).isEqualTo(1);
    }
  }

  @Test
  void aReadingOfADayThatHasNotComeYetCountsForNothingAndIsTold() {
    Plan plan =
        plan(
            reading("covers-inward", "A", "no", "2026-11-20")
                + ","
                + reading("covers-inward", "A", "yes", "2027-11-20"));
    Checker checker = new Checker(Given.DICTIONARY, COVERS);
    CheckOptions today =
        new CheckOptions(
            java.util.Optional.empty(),
            java.util.Optional.of(java.time.LocalDate.parse("2026-11-25")),
            1);
    CheckResult result = checker.check(plan, today);
    assertThat(result.count(Verdict.BROKEN)).isEqualTo(1);
    assertThat(result.unaskedReadings())
        .extracting(UnaskedReading::why)
        .containsExactly("its day, 2027-11-20, has not come yet, so it counts for nothing");
    assertThat(checker.check(plan, CheckOptions.DEFAULT).count(Verdict.MET)).isEqualTo(1);
  }

  @Test
  void aReadingThatNobodyAsksForIsTold() {
    Standard both =
        Given.standard(
            "inspect covers \"Covers\" for each box where it is recessed ask \"?\" answer yes\n"
                + PARTS
                + "\nrule r \"A rule\"\n  box must not touch the shell\n"
                + PARTS);
    CheckResult result =
        check(
            both,
            plan(
                String.join(
                    ",",
                    reading("covers", "A", "yes", "2026-11-20"),
                    reading("cover", "A", "yes", "2026-11-20"),
                    reading("covers", "S", "yes", "2026-11-20"),
                    reading("covers", "left", "yes", "2026-11-20"),
                    reading("r", "A", "yes", "2026-11-20"))));
    assertThat(result.unaskedReadings())
        .extracting(unasked -> unasked.reading().pointer() + ": " + unasked.why())
        .containsExactly(
            "/readings/1: the standard has no inspect item cover",
            "/readings/2: inspect item covers does not ask it of box S",
            "/readings/3: inspect item covers asks of boxes, not of left wall",
            "/readings/4: r is a rule, which asks nothing on site");
  }

  @Test
  void anInspectItemIsDueFromItsStageOn() {
    CheckOptions framing =
        new CheckOptions(java.util.Optional.of("framing"), java.util.Optional.empty(), 1);
    assertThat(new Checker(Given.DICTIONARY, COVERS).check(plan(""), framing).notDue())
        .containsExactly("covers-inward");
  }
}
