package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.plan.Plan;

/** Choices of values, shares, counts per element, nearest elements and the like. */
class ValueFormsTest {
  private static final String CHOICE =
      "box must have clearance >= (if mount is flush then 2 in otherwise 1 in)";

  private static Plan boxes(String... boxes) {
    return Given.module(40, 25, ", 'boxes': [" + String.join(", ", boxes) + "]");
  }

  /** At an inward rib, 1.236 in from the steel. */
  private static String near(String id) {
    return Given.box(id, 75);
  }

  private static String with(String box, String was, String is) {
    assertThat(box).contains(was);
    return box.replace(was, is);
  }

  @Test
  void aChoiceSaysWhichValueHoldsAndWhy() {
    Finding finding = Given.explain(CHOICE, boxes(near("B")), "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.reason())
        .isEqualTo(
            "clearance of box B is 1.236 in, not at least 2 in (if mount is flush then 2 in"
                + " otherwise 1 in)");
    assertThat(finding.evidence().get(0).facts())
        .contains(new Evidence.Fact("chosen because", "mount of box B is flush"));
    String surface = with(near("B"), "'mount': 'flush'", "'mount': 'surface'");
    assertThat(Given.explain(CHOICE, boxes(surface), "B").verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void aChoiceThatIsOpenIsDecidedOnlyWhereBothValuesAgree() {
    String open = with(near("B"), ", 'mount': 'flush'", "");
    Finding finding = Given.explain(CHOICE.replace("clearance", "depth"), boxes(open), "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.reason())
        .isEqualTo(
            "depth of box B is 1.874 in, so at least 1 in to 2 in (if mount is flush then 2 in"
                + " otherwise 1 in) cannot be told: mount of box B is missing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          (if mount is flush then 10 mm otherwise 20 mm)                      | MET
          (if mount is flush then 60 mm otherwise 50 mm)                      | BROKEN
          (if mount is flush then 10 mm otherwise 50 mm)                      | UNDECIDED
          (if mount is flush then 10 mm otherwise (1 mm divided by (1 - 1)))  | ERROR
          (if 1 divided by (1 - 1) > 0 then 10 mm otherwise 20 mm)            | ERROR
          (if depth > 1 in then 10 mm otherwise (1 mm divided by (1 - 1)))    | MET
          (if depth < 1 in then 10 mm otherwise (1 mm divided by (1 - 1)))    | ERROR
          (if mount is flush then 10 mm otherwise if depth > 1 in then 20 mm otherwise 60 mm) | MET
          """)
  void whereTheMountIsMissing(String limit, Verdict verdict) {
    String open = with(Given.box("B", 214), ", 'mount': 'flush'", "");
    open = with(open, "'depth': 47.6", "'depth': 47.6, 'front': 30");
    Plan plan = Given.plan(Given.json(40, 9, ", 'boxes': [" + open + "]"));
    String sentence = "for each box, its depth must be at least ";
    assertThat(Given.explain(sentence + limit, plan, "B").verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          (if mount is flush then steel otherwise steel)   | MET
          (if mount is flush then wood otherwise wood)     | BROKEN
          (if mount is flush then steel otherwise wood)    | UNDECIDED
          (if depth > 1 in then steel otherwise wood)      | MET
          """)
  void aChoiceOfWords(String word, Verdict verdict) {
    String open = with(near("B"), ", 'mount': 'flush'", "");
    Finding finding = Given.explain("for each box, its material must be " + word, boxes(open), "B");
    assertThat(finding.verdict()).isEqualTo(verdict);
    if (verdict == Verdict.UNDECIDED) {
      assertThat(finding.reason()).endsWith("mount of box B is missing");
    }
  }

  @Test
  void aShareIsThatMuchOfTheValue() {
    Plan plan = boxes(near("B")); // 54 mm wide and 47.6 mm deep
    assertThat(Given.explain("box must have depth <= 88 % of its width", plan, "B").reason())
        .isEqualTo("depth of box B is 47.6 mm, not at most 47.5 mm (88 % of its width)");
    assertThat(Given.explain("box must have depth <= 88.2 % of its width", plan, "B").verdict())
        .isEqualTo(Verdict.MET);
    // 60 % of 35 % is 21 %
    assertThat(
            Given.check("for each room, 60 % of its humidity must be exactly 21 %", plan)
                .count(Verdict.MET))
        .isOne();
  }

  @ParameterizedTest
  @CsvSource({"1, BROKEN", "2, MET", "3, MET"})
  void allButSoMany(int number, Verdict verdict) {
    String plastic = "'material': 'plastic'";
    Plan plan =
        boxes(
            near("A"),
            with(Given.box("B", 400), "'material': 'steel'", plastic),
            with(Given.box("C", 600), "'material': 'steel'", plastic));
    String sentence =
        "for each room, all but " + number + (number == 1 ? " box" : " boxes") + " must be metal";
    RuleResult result = Given.check(sentence, plan);
    assertThat(result.count(verdict)).isOne();
    if (verdict == Verdict.BROKEN) {
      Finding finding = result.findings().get(0);
      assertThat(finding.reason()).isEqualTo("\"must be metal\": 1 of the 3 boxes");
      assertThat(finding.evidence().get(0).parts())
          .extracting(Evidence::statement)
          .containsExactly("box B is not metal", "box C is not metal");
    }
  }

  @Test
  void allButSoManyIsOpenWhereOneMoreCouldFail() {
    Plan plan = boxes(near("A"), with(Given.box("B", 400), ", 'material': 'steel'", ""));
    Plan two =
        boxes(
            with(near("A"), "'material': 'steel'", "'material': 'wood'"),
            with(Given.box("B", 400), ", 'material': 'steel'", ""));
    String sentence = "for each room, all but 1 box must be metal";
    assertThat(Given.check(sentence, plan).count(Verdict.MET)).isOne();
    assertThat(Given.check(sentence, two).count(Verdict.UNDECIDED)).isOne();
  }

  @Test
  void aCountPerFaceCountsThoseOnTheSameFace() {
    String right = with(Given.box("C", 600), "'face': 'left'", "'face': 'right'");
    Plan plan = boxes(near("A"), Given.box("B", 400), right);
    Finding face =
        Given.check("for each face, number of boxes per face must be at most 1", plan)
            .findings()
            .get(0);
    assertThat(face.element().label()).isEqualTo("left wall");
    assertThat(face.reason())
        .isEqualTo("number of boxes per face for left wall is 2, not at most 1");
    RuleResult own = Given.check("box must have number of boxes per face <= 1", plan);
    assertThat(own.findings()).extracting(f -> f.element().id()).containsExactly("A", "B");
    assertThat(own.findings().get(0).reason()).isEqualTo(face.reason());
    assertThat(
            Given.explain(
                    "box must have total width of boxes per face (where depth > 1 in) <= 100 mm",
                    plan,
                    "A")
                .reason())
        .isEqualTo(
            "total width of boxes per face (where depth > 1 in) for left wall is 108 mm, not at most"
                + " 100 mm");
  }

  @Test
  void theSameFaceIsTold() {
    String right = with(Given.box("B", 600), "'face': 'left'", "'face': 'right'");
    String stud = ", 'studs': [{'id': 'S', 'face': 'left', 'along': 600}]";
    Plan plan = Given.module(40, 25, ", 'boxes': [" + near("A") + ", " + right + "]" + stud);
    String sentence =
        "for each stud, no box (where its face is not face of the stud) must be metal";
    assertThat(Given.explain(sentence, plan, "S").verdict()).isEqualTo(Verdict.BROKEN);
    String each = "for each stud, there must be a panel (where its face is face of the stud)";
    assertThat(Given.explain(each, plan, "S").verdict()).isEqualTo(Verdict.BROKEN);
    String count =
        "each stud where there is a box (where its face is face of the stud) must not touch the shell";
    assertThat(Given.explain(count, plan, "S").verdict()).isEqualTo(Verdict.MET);
    String other =
        "for each stud, there must be no box (where its face is face of the stud and depth > 1 in)";
    assertThat(Given.explain(other, plan, "S").reason())
        .isEqualTo(
            "face of box A is left wall, as is face of stud S; depth of box A is 1.874 in, not at"
                + " most 1 in");
  }

  @Test
  void theNearestOneIsNamed() {
    String studs =
        ", 'studs': [{'id': 'S1', 'face': 'left', 'along': 300}, {'id': 'S2', 'face': 'left',"
            + " 'along': 700}]";
    Plan plan = Given.module(40, 25, ", 'boxes': [" + Given.box("B", 400) + "]" + studs);
    Finding finding =
        Given.explain("box must have distance to the nearest stud <= 2 in", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    // From the middle of the stud to that of the box, less half of each: 100 - 15.875 - 27.
    assertThat(finding.reason())
        .isEqualTo("distance to the nearest stud of box B is 2.249 in, not at most 2 in");
    assertThat(finding.evidence().get(0).facts())
        .contains(new Evidence.Fact("nearest stud", "stud S1"));
  }

  @Test
  void twoThatAreAsNearAreBothNamedAndNothingIsNearestToItself() {
    Plan plan = boxes(Given.box("A", 300), Given.box("B", 400), Given.box("C", 500));
    Finding finding = Given.explain("box must have distance to the nearest box >= 2 in", plan, "B");
    assertThat(finding.reason())
        .isEqualTo("distance to the nearest box of box B is 1.811 in, not at least 2 in");
    assertThat(finding.evidence().get(0).facts())
        .containsExactly(new Evidence.Fact("nearest box", "box A or box C"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          smallest depth of studs                     | there is no stud, so there is no smallest depth
          largest width of boxes (where depth > 1 m)  | there is no such box, so there is no largest width
          average depth of panels                     | there is no panel, so there is no average depth
          distance to the nearest stud                | there is no stud, so there is no nearest one
          distance to the nearest box                 | there is no other box, so there is no nearest one
          distance to the nearest box (where depth > 1 m) | there is no such box, so there is no nearest one
          """)
  void overNothingThereIsNoValueAndTheReasonSaysSo(String value, String reason) {
    Finding finding = Given.explain("box must have " + value + " >= 1 in", boxes(near("B")), "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing()).isEmpty();
    assertThat(finding.reason()).endsWith(" cannot be told: " + reason);
  }
}
