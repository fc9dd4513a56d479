package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.rimefast.plan.Plan;

class VerdictTest {
  private static final String TWO_INCHES = "box must sit in outer bay with clearance >= 2 in";

  @Test
  void aBoxAtAnInwardRibIsBrokenAndSaysWhatWasMeasuredAndWhichRibItFaces() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding finding = Given.check(TWO_INCHES, plan).findings().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.element().label()).isEqualTo("box B");
    assertThat(finding.reason())
        .isEqualTo(
            "box B does not sit in outer bay; clearance of box B is 1.236 in, not at least 2 in");
    assertThat(finding.evidence().get(0).parts().get(0).facts())
        .containsExactly(
            new Evidence.Fact("stands before", "inward rib 1 (along 40 mm to 110 mm) wholly"));
    Measurement measured = finding.evidence().get(0).parts().get(1).measurement().orElseThrow();
    assertThat(measured.marginText()).isEqualTo("0.764 in");
    assertThat(measured.margin()).isNegative();
    assertThat(measured.measuredInPlanUnits()).contains("31.4 mm");
  }

  @Test
  void aMissingDepthIsUndecidedNamesTheValueAndIsNeverMetOrBroken() {
    for (double along : new double[] {75, 214, 144}) {
      Plan plan =
          Given.module(
              40, 60, ", 'boxes': [" + Given.box("B", along).replace("'depth': 47.6, ", "") + "]");
      RuleResult result = Given.check("box must have clearance >= 2 in", plan);
      assertThat(result.count(Verdict.MET)).isZero();
      assertThat(result.count(Verdict.BROKEN)).isZero();
      Finding finding = result.findings().get(0);
      assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
      assertThat(finding.missing())
          .extracting(MissingValue::pointer, MissingValue::description)
          .containsExactly(org.assertj.core.groups.Tuple.tuple("/boxes/0/depth", "depth of box B"));
      assertThat(finding.reason())
          .isEqualTo("clearance of box B cannot be told: depth of box B is missing");
    }
  }

  @Test
  void aMissingPhaseIsUndecidedToo() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    String json = ", 'boxes': [" + Given.box("B", 75) + "]";
    Plan without = Given.plan(Given.json(40, 25, json).replace("'phase': 40.0, ", ""));
    assertThat(Given.check(TWO_INCHES, plan).count(Verdict.BROKEN)).isOne();
    Finding finding = Given.check(TWO_INCHES, without).findings().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing())
        .extracting(MissingValue::pointer)
        .contains("/faces/default/phase");
  }

  @Test
  void aLimitWithinTheToleranceIsUndecidedWithItsMargin() {
    String box = Given.box("B", 214).replace("'mount'", "'front': -12.7, 'mount'");
    Plan plan =
        Given.plan(Given.json(40, 9, ", 'tolerances': {'electrical': 2}, 'boxes': [" + box + "]"));
    Finding finding = Given.check("box must have clearance >= 2 in", plan).findings().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing()).isEmpty();
    assertThat(finding.reason()).contains("within the plan's tolerance");
    assertThat(finding.evidence().get(0).measurement().orElseThrow().margin()).isNegative();
  }

  @Test
  void theStandoffCarriesTheToleranceOfTheShell() {
    String sentence = "for each wall, its standoff must be at least 24 mm";
    assertThat(Given.check(sentence, Given.module(40, 25, "")).count(Verdict.MET)).isEqualTo(4);
    Plan tolerant = Given.module(40, 25, ", 'tolerances': {'shell': 2}");
    assertThat(Given.check(sentence, tolerant).count(Verdict.UNDECIDED)).isEqualTo(4);
  }

  @Test
  void aLimitInWordsKeepsItsMinusSign() {
    Plan plan = Given.module(40, 25, ""); // outdoors -38 degC
    for (String sentence :
        new String[] {
          "room must have outdoor design temperature of at most -40 degC",
          "room must have outdoor design temperature <= -40 degC",
          "for each room, its outdoor design temperature must be less than -38 degC",
          "for each room, its outdoor design temperature must be less than -40.5 degF"
        }) {
      assertThat(Given.check(sentence, plan).count(Verdict.BROKEN)).as(sentence).isOne();
    }
    assertThat(
            Given.check("room must have outdoor design temperature of at least -38 degC", plan)
                .count(Verdict.MET))
        .isOne();
  }

  @Test
  void aPartWithoutDepthIsCertainlyNotNearOneThatIsFarAlongTheWall() {
    String far = Given.box("A", 400).replace("'depth': 47.6, ", "") + ", " + Given.box("B", 3400);
    Plan plan = Given.module(40, 25, ", 'boxes': [" + far + "]");
    assertThat(Given.check("box must not be within 6 in of another box", plan).count(Verdict.MET))
        .isEqualTo(2);
  }

  @Test
  void aBarThatEndsWhereABoxBeginsDoesNotPassBehindIt() {
    for (String along : new String[] {"500.3", "501.3", "507.3", "519.3", "533.3"}) {
      String box =
          Given.box("A", Double.parseDouble(along)).replace("'width': 54", "'width': 10.1");
      double bar = Double.parseDouble(along) + (10.1 + 20.3) / 2;
      Plan plan =
          Given.module(
              40,
              25,
              ", 'boxes': ["
                  + box
                  + "], 'bars': [{'id': 'X', 'face': 'left', 'along': "
                  + bar
                  + ", 'up': 1200, 'width': 20.3, 'height': 40, 'depth': 3, 'front': 50}]");
      assertThat(Given.check("bar must not pass behind a box", plan).count(Verdict.MET)).isOne();
    }
  }

  @Test
  void aCountThatDependsOnAMissingValueNamesIt() {
    String boxes = Given.box("A", 400) + ", " + Given.box("B", 800).replace("'depth': 47.6, ", "");
    Plan plan = Given.module(40, 25, ", 'boxes': [" + boxes + "]");
    Finding finding =
        Given.check("for each room, number of boxes (where depth > 1 in) must be at most 1", plan)
            .findings()
            .get(0);
    assertThat(finding.reason())
        .isEqualTo(
            "number of boxes (where depth > 1 in) is 1 to 2, so at most 1 cannot be told:"
                + " depth of box B is missing");
  }

  @Test
  void anOpeningThatMayBeginBeforeTheNextStudLeavesItOpenWhetherItFollows() {
    String more =
        ", 'tolerances': {'framing': 5}, 'openings': [{'id': 'O', 'face': 'left', 'from': '810 mm +- 5"
            + " mm', 'sill': 0, 'width': 900, 'height': 2000}], 'studs': [{'id': 'S', 'face': 'left',"
            + " 'along': 406}, {'id': 'N', 'face': 'left', 'along': 812}]";
    assertThat(
            Given.explain(
                    "stud must not be followed by an opening", Given.module(40, 25, more), "S")
                .verdict())
        .isEqualTo(Verdict.UNDECIDED);
    Plan certain = Given.module(40, 25, more.replace("810 mm", "700 mm"));
    assertThat(Given.explain("stud must not be followed by an opening", certain, "S").verdict())
        .isEqualTo(Verdict.BROKEN);
  }

  @Test
  void underAtMostTheOnesThatCountLieOnTheWrongSideOfTheirLimit() {
    Plan plan =
        Given.module(
            40, 25, ", 'boxes': [" + Given.box("A", 400) + ", " + Given.box("B", 800) + "]");
    Finding finding =
        Given.check("for each room, at most 1 box must have depth > 1 in", plan).findings().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.evidence().get(0).parts())
        .allSatisfy(part -> assertThat(part.measurement().orElseThrow().margin()).isNegative());
  }

  @Test
  void aBoxIsNotItsOwnNeighbour() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("A", 400) + "]");
    assertThat(Given.check("box must be within 6 in of a box", plan).count(Verdict.BROKEN)).isOne();
  }

  @Test
  void theLastStudHasNoNextAndSaysSo() {
    Plan plan = Given.module(40, 25, ", 'studs': [{'id': 'S', 'face': 'left', 'along': 600}]");
    assertThat(
            Given.check("stud must have spacing to the next stud <= 17 in", plan)
                .findings()
                .get(0)
                .reason())
        .isEqualTo(
            "spacing to the next stud of stud S cannot be told: stud S is the last on its face");
  }

  @Test
  void notApplicableNamesTheConditionThatDidNotHold() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding finding =
        Given.explain("each box where its mount is surface must not touch the shell", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(finding.reason()).isEqualTo("mount of box B is flush, not surface");
  }

  @Test
  void aTermSaysWhatItsConditionFound() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    String damp = "let damp room be a room where its humidity >= 30 %\n";
    String wet = "let wet room be a room where its humidity >= 50 %\n";
    String sentence = "box must not touch the shell if its room is a ";
    Finding met = explain(damp, "box must touch the shell if its room is a damp room", plan, "B");
    assertThat(met.verdict()).isEqualTo(Verdict.BROKEN);
    Finding is = explain(damp, "for each box, its room must be a damp room", plan, "B");
    assertThat(is.verdict()).isEqualTo(Verdict.MET);
    assertThat(is.reason())
        .isEqualTo("room is a damp room: humidity of room is 35 %, at least 30 %");
    assertThat(is.evidence().get(0).measurement()).isPresent();
    Finding isNot = explain(wet, sentence + "wet room", plan, "B");
    assertThat(isNot.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(isNot.reason())
        .isEqualTo("room is not a wet room: humidity of room is 35 %, not at least 50 %");
    Finding must = explain(damp, "for each box, its room must not be a damp room", plan, "B");
    assertThat(must.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(must.evidence().get(0).measurement().orElseThrow().margin()).isNegative();
  }

  @Test
  void aTermWithoutItsValueIsUndecidedAndNamesIt() {
    String json = ", 'boxes': [" + Given.box("B", 75).replace("'depth': 47.6, ", "") + "]";
    Plan plan = Given.module(40, 25, json);
    String deep = "let deep box be a box where its depth >= 2 in\n";
    Finding finding = explain(deep, "box must be a deep box", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/boxes/0/depth");
    assertThat(finding.reason())
        .isEqualTo(
            "whether box B is a deep box cannot be told: depth of box B cannot be told: depth of"
                + " box B is missing");
  }

  @Test
  void anotherInATermMeansAnotherThanTheElementOfTheTerm() {
    String boxes = ", 'boxes': [" + Given.box("A", 214) + ", " + Given.box("B", 274) + "]";
    String near = "let crowded box be a box where it is within 3 in of another box\n";
    String sentence = "for each room, number of crowded boxes must be exactly 2";
    Plan two = Given.module(40, 25, boxes);
    assertThat(verdict(near, sentence, two)).isEqualTo(Verdict.MET);
    Plan one = Given.module(40, 25, ", 'boxes': [" + Given.box("A", 214) + "]");
    String none = "for each room, number of crowded boxes must be exactly 0";
    assertThat(verdict(near, none, one)).isEqualTo(Verdict.MET);
    assertThat(verdict(near, none, two)).isEqualTo(Verdict.BROKEN);
    Finding within = explain(near, "box must be within 3 in of a crowded box", two, "A");
    assertThat(within.verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void aCountOfATermSpeaksOfTheTerm() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    String deep = "let deep box be a box where its depth >= 2 in\n";
    assertThat(explain(deep, "box must be within 6 in of a deep box", plan, "B").reason())
        .isEqualTo("there are no deep boxes to look at");
    String shallow = "let shallow box be a box where its depth < 2 in\n";
    assertThat(
            explain(shallow, "box must be within 6 in of at least 2 shallow boxes", plan, "B")
                .reason())
        .contains("the one shallow box");
  }

  @Test
  void aPlainKindIsAskedForAndSaysSo() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding wall = explain("", "for each box, its face must be a wall", plan, "B");
    assertThat(wall.verdict()).isEqualTo(Verdict.MET);
    assertThat(wall.reason()).isEqualTo("left wall is a wall");
    Finding roof = explain("", "for each box, its face must be a roof", plan, "B");
    assertThat(roof.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(roof.reason()).isEqualTo("left wall is not a roof");
    assertThat(explain("", "part must not be an electrical part", plan, "B").verdict())
        .isEqualTo(Verdict.BROKEN);
  }

  private static Verdict verdict(String terms, String sentence, Plan plan) {
    PlanFacts facts = new PlanFacts(plan, Given.DICTIONARY);
    return new Checker(Given.DICTIONARY, Given.rule(terms, sentence)).verdicts("r", facts)[0];
  }

  private static Finding explain(String terms, String sentence, Plan plan, String element) {
    PlanFacts facts = new PlanFacts(plan, Given.DICTIONARY);
    return new Checker(Given.DICTIONARY, Given.rule(terms, sentence)).explain("r", element, facts);
  }

  @Test
  void aRuleThatSpeaksOfNothingSaysSo() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    assertThat(Given.check("panel must be mounted on the lining", plan).appliedToNothing())
        .contains("the plan has no panels");
    assertThat(
            Given.check("each box where its mount is surface must be metal", plan)
                .appliedToNothing())
        .contains("mount of box B is flush, not surface");
  }

  @Test
  void aDivisionByZeroIsAnErrorNotAVerdict() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding finding =
        Given.explain("box must have width divided by (its depth - its depth) >= 1", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.ERROR);
    assertThat(finding.reason())
        .isEqualTo(
            "\"width divided by (its depth - its depth)\" cannot be worked out: it divides by what is or may be zero");
    assertThat(
            Given.check("box must have width divided by (its depth - its depth) >= 1", plan)
                .count(Verdict.ERROR))
        .isOne();
  }

  @Test
  void theSameSentenceInMillimetresPrintsMillimetres() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding finding =
        Given.check("box must sit in outer bay with clearance >= 50 mm", plan).findings().get(0);
    assertThat(finding.reason())
        .isEqualTo(
            "box B does not sit in outer bay; clearance of box B is 31.4 mm, not at least 50 mm");
  }

  @Test
  void mustNotTurnsTheMarginRound() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Finding finding = Given.check("box must not have clearance < 2 in", plan).findings().get(0);
    Measurement measured = finding.evidence().get(0).measurement().orElseThrow();
    assertThat(measured.comparison().sign()).isEqualTo(">=");
    assertThat(measured.margin()).isNegative();
    assertThat(finding.reason()).isEqualTo("clearance of box B is 1.236 in, not at least 2 in");
  }

  @Test
  void aStageLeavesOutWhatIsDueLater() {
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 75) + "]");
    Checker checker =
        new Checker(
            Given.DICTIONARY,
            Given.standard(
                """
                rule early "Early"
                  box must not touch the shell
                  severity hold
                  stage layout
                  because "x"
                  source "x"
                rule late "Late"
                  box must not touch the shell
                  severity hold
                  stage foam
                  because "x"
                  source "x"
                """));
    CheckOptions options =
        new CheckOptions(java.util.Optional.of("pre-foam"), java.util.Optional.empty(), 1);
    CheckResult result = checker.check(plan, options);
    assertThat(result.rules()).extracting(rule -> rule.rule().id()).containsExactly("early");
    assertThat(result.notDue()).containsExactly("late");
  }
}
