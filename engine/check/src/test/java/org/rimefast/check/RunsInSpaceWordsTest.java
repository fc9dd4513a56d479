package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.Test;
import org.rimefast.plan.Plan;

/**
 * Words for where runs go, each met, broken and undecided. On the left wall, inward ribs lie from
 * 40 to 112 mm and outer bays from 180 to 250 mm, and again every 278 mm. Box A is 54 mm wide and
 * 76 mm high with its middle at 492 mm along and 1200 mm up. Plans are invented.
 */
class RunsInSpaceWordsTest {
  private static final String STUDS =
      ", 'studs': [{'id': 'S1', 'face': 'left', 'along': 400, 'holes': [{'up': 610, 'width': 30,"
          + " 'height': 100, 'insert': 'bushing'}]}, {'id': 'S2', 'face': 'left', 'along': 800,"
          + " 'holes': [{'up': 616, 'width': 30, 'height': 100, 'insert': 'none'}]}, {'id': 'S3',"
          + " 'face': 'left', 'along': 1200, 'holes': [{'up': 616, 'width': 30, 'height': 100}]},"
          + " {'id': 'S4', 'face': 'left', 'along': 1600}]";

  private static Plan plan(String... runs) {
    return planWith("", runs);
  }

  private static Plan planWith(String more, String... runs) {
    return Given.module(
        40,
        25,
        more
            + STUDS
            + ", 'boxes': ["
            + box("A", 492)
            + ", "
            + box("B", 2000)
            + "], 'runs': ["
            + String.join(", ", runs)
            + "]");
  }

  private static String cable(String id, String more, String... points) {
    return run(id, "armoured-cable", ", 'diameter': 12" + more, points);
  }

  private static Finding ask(String sentence, Plan plan, String element, Verdict expected) {
    Finding finding = Given.explain(sentence, plan, element);
    assertThat(finding.verdict()).as(finding.reason()).isEqualTo(expected);
    return finding;
  }

  @Test
  void aHoleIsBushedOrNotOrThePlanDoesNotSay() {
    Plan plan =
        plan(
            cable("one", "", "300 610 20", "500 610 20"),
            cable("two", "", "700 610 20", "900 610 20"),
            cable("three", "", "1100 610 20", "1300 610 20"),
            cable("four", "", "1500 610 20", "1700 610 20"));
    String bushed =
        "for each cable, (for each stud (where the cable passes through it), the cable is bushed at"
            + " it) must hold";
    ask(bushed, plan, "one", MET);
    ask(bushed, plan, "two", BROKEN);
    assertThat(ask(bushed, plan, "three", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/studs/2/holes/0/insert");
    ask(bushed, plan, "four", BROKEN);
  }

  @Test
  void anOffsetFromTheServiceHoleIsMeasuredAlongTheStud() {
    Plan plan =
        plan(
            cable("one", "", "300 620 20", "500 620 20"),
            cable("two", "", "1500 620 20", "1700 620 20"));
    String sentence =
        "for each cable, (for each stud (where the cable passes through it), offset from the"
            + " service hole of it of the cable <= %s) must hold";
    ask(sentence.formatted("10 mm"), plan, "one", MET);
    ask(sentence.formatted("9 mm"), plan, "one", BROKEN);
    assertThat(ask(sentence.formatted("9 mm"), plan, "two", UNDECIDED).reason())
        .contains("stud S4 has no service hole");
    Plan tolerant =
        planWith(", 'tolerances': {'framing': 2}", cable("one", "", "300 620 20", "500 620 20"));
    ask(sentence.formatted("11 mm"), tolerant, "one", UNDECIDED);
    ask(sentence.formatted("12 mm"), tolerant, "one", MET);
  }

  @Test
  void holesOfStudsAreAtLevelsOfTheirOwn() {
    Plan plan = plan();
    String next = "stud must have hole offset to the next stud <= 3 mm";
    ask(next, plan, "S1", BROKEN);
    ask(next, plan, "S2", MET);
    assertThat(ask(next, plan, "S3", UNDECIDED).reason()).contains("stud S4 has no service hole");
    ask("for each stud, each stud must have hole offset from it <= 6 mm", plan, "S1", UNDECIDED);
  }

  @Test
  void cablesCrossSeenFromTheRoom() {
    Plan plan =
        plan(
            cable("level", "", "500 600 20", "900 600 20"),
            cable("upright", "", "700 300 40", "700 900 40"),
            cable("beside", "", "1000 300 40", "1000 900 40"),
            cable("somewhere", "", "1500 ? 40", "1300 900 40"));
    String sentence = "cable must not cross another cable";
    Finding broken = ask(sentence, plan, "level", BROKEN);
    assertThat(broken.evidence().toString()).contains("along 700 mm, up 600 mm");
    ask(sentence, plan, "beside", MET);
    ask(
        sentence,
        plan(
            cable("a", "", "500 600 20", "900 600 20"),
            cable("lost", "", "600 ? 40", "700 300 40")),
        "a",
        UNDECIDED);
  }

  @Test
  void aRunLiesBeforeAZoneOfTheSheet() {
    Plan plan =
        plan(
            cable("bay", "", "214 600 20", "214 900 20"),
            cable("rib", "", "75 600 20", "214 600 20"),
            run("thick", "emt", "", "214 600 20", "214 900 20"));
    ask("cable must lie in outer bay", plan, "bay", MET);
    ask("cable must lie in outer bay", plan, "rib", BROKEN);
    ask("cable must not face inward rib", plan, "bay", MET);
    ask("cable must not face inward rib", plan, "rib", BROKEN);
    assertThat(ask("run must lie in outer bay", plan, "thick", UNDECIDED).missing())
        .extracting(MissingValue::description)
        .containsExactly("diameter of conduit thick");
  }

  @Test
  void aRunClearsTheShellAlongAStretchOnly() {
    String near = "492 1150 20";
    Plan plan =
        plan(
            cable("c", ", 'from': 'B', 'to': 'A'", "2000 1150 50", "900 1150 20", near),
            cable("open", "", "2000 1160 50", "900 1160 20", "492 1160 20"));
    ask("cable must clear the shell by 25 mm along its whole length", plan, "c", BROKEN);
    ask(
        "for each cable, (for each box (where its width > 1 mm), the cable clears the shell by 25"
            + " mm within 300 mm of it) must hold",
        plan,
        "c",
        BROKEN);
    String sentence = "cable must clear the shell by 25 mm within 300 mm of a box";
    ask(sentence, plan, "c", MET);
    String each =
        "for each cable, (for each box, the cable clears the shell by 25 mm within 300 mm of it)"
            + " must hold";
    assertThat(ask(each, plan, "open", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .contains("/runs/1/to");
  }

  @Test
  void aRunEntersFromASideThatThePlanSaysOrTheDrawingShows() {
    Plan plan =
        plan(
            cable(
                "drawn", ", 'from': 'B', 'to': 'A'", "2000 1240 20", "492 2000 20", "492 1240 20"),
            cable(
                "said",
                ", 'from': 'B', 'to': 'A', 'toSide': 'below'",
                "2000 1240 20",
                "492 1240 20"),
            cable("apart", ", 'from': 'B', 'to': 'A'", "2000 1240 20", "492 1500 20"));
    String asked = "each cable must not enter a box from above";
    ask(asked, plan, "drawn", BROKEN);
    ask("cable must enter a box from below", plan, "said", MET);
    ask("cable must enter a box from side", plan, "said", BROKEN);
    assertThat(ask("cable must enter a box from below", plan, "apart", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .contains("/runs/2/toSide");
  }

  @Test
  void aRunReachesBothItsEndsOrIsDrawnApart() {
    Plan plan =
        plan(
            cable("whole", ", 'from': 'B', 'to': 'A'", "2000 1160 20", "492 1240 20"),
            cable("short", ", 'from': 'B', 'to': 'A'", "2000 1160 20", "600 1240 20"),
            cable("open", ", 'from': 'B'", "2000 1160 20", "600 1240 20"));
    ask("cable must reach both its ends", plan, "whole", MET);
    ask("cable must reach both its ends", plan, "short", BROKEN);
    assertThat(ask("cable must reach both its ends", plan, "open", UNDECIDED).missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/runs/2/to");
  }

  @Test
  void whatIsDrawnIntoAPartOverlapsItUnlessItBelongsThere() {
    Plan plan =
        plan(
            cable("through", ", 'from': 'B', 'to': 'B'", "300 1200 20", "700 1200 20"),
            cable("into", ", 'from': 'B', 'to': 'A'", "600 1200 20", "492 1200 20"),
            cable("hole", ", 'from': 'B', 'to': 'B'", "380 610 20", "420 610 20"),
            cable("web", ", 'from': 'B', 'to': 'B'", "380 900 20", "420 900 20"),
            run("thin", "emt", "", "480 1205 20", "500 1205 20"));
    ask("cable must not overlap a box", plan, "through", BROKEN);
    ask("cable must not overlap a box", plan, "into", MET);
    ask("cable must not overlap a stud", plan, "hole", MET);
    ask("cable must not overlap a stud", plan, "web", BROKEN);
    ask("run must not overlap a box", plan, "thin", UNDECIDED);
    ask("box must not overlap a stud", plan, "A", MET);
  }

  @Test
  void setBackAndProudAreOneNumberWithTwoSigns() {
    Plan plan =
        plan(
            cable("deep", "", "500 600 20", "900 600 20"),
            cable("proud", "", "500 600 3", "900 600 20"),
            run("thin", "emt", "", "500 600 20", "900 600 20"));
    ask("cable must have set-back >= 14 mm", plan, "deep", MET);
    ask("cable must have set-back >= 14 mm", plan, "proud", BROKEN);
    ask("run must have set-back >= 14 mm", plan, "thin", UNDECIDED);
    ask("cable must not stand proud of the studs", plan, "proud", BROKEN);
    ask("part must not stand proud of the studs", plan, "S1", MET);
    ask("part must not stand proud of the studs", plan, "A", BROKEN);
  }
}
