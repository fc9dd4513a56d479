package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.bracket;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.panel;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.Test;
import org.rimefast.plan.Plan;

/**
 * What is drawn edge to edge is fitted so on site, whatever the plan's tolerances; what is drawn
 * nearer to a limit than they allow stays undecided. Plans are invented.
 */
class DrawnAndBuiltTest {
  private static final String TOLERANCES = ", 'tolerances': {'framing': 3, 'electrical': 3}";

  @Test
  void partsThatTouchAreNotInOnePlace() {
    String sentence = "item must not overlap a part";
    Plan plan =
        module(
            TOLERANCES
                + ", 'boxes': [%s, %s, %s], 'brackets': [%s, %s, %s]"
                    .formatted(
                        box("beside", 500),
                        box("in", 1500),
                        box("a little in", 2500),
                        bracket("B", 528, 38, ""),
                        bracket("C", 1520, 38, ""),
                        bracket("D", 2525, 38, "")));
    assertThat(verdict(sentence, plan, "beside")).isEqualTo(MET);
    assertThat(verdict(sentence, plan, "in")).isEqualTo(BROKEN);
    assertThat(verdict(sentence, plan, "a little in")).isEqualTo(UNDECIDED);
  }

  @Test
  void aBarLevelWithTheStudsIsNotProud() {
    String bar =
        "{'id': '%s', 'face': 'left', 'along': 500, 'up': 1200, 'width': 300, 'height': 40, 'depth': 18, 'front': %s}";
    Plan plan =
        module(
            TOLERANCES
                + ", 'bars': [%s, %s, %s]"
                    .formatted(
                        bar.formatted("level", 0),
                        bar.formatted("a little proud", -2),
                        bar.formatted("proud", -4)));
    String sentence = "bar must not stand proud of the studs";
    assertThat(verdict(sentence, plan, "level")).isEqualTo(MET);
    assertThat(verdict(sentence, plan, "a little proud")).isEqualTo(UNDECIDED);
    assertThat(verdict(sentence, plan, "proud")).isEqualTo(BROKEN);
  }

  @Test
  void aStudBesideABoxIsNotBehindIt() {
    Plan plan =
        module(
            TOLERANCES
                + ", 'studs': [{'id': 'S', 'face': 'left', 'along': 542.875}], 'boxes': [%s]"
                    .formatted(box("A", 500)));
    String sentence = "box must have foam access behind >= %s mm";
    assertThat(verdict(sentence.formatted(10), plan, "A")).isEqualTo(MET);
    assertThat(verdict(sentence.formatted(80), plan, "A")).isEqualTo(BROKEN);
  }

  @Test
  void aRunComesOutBehindThePanelOnTheLiningThatItEnters() {
    String diameter = ", 'diameter': 12, 'to': '%s'";
    Plan plan =
        module(
            ", 'panels': [%s, %s, %s], 'runs': [%s, %s, %s, %s]"
                .formatted(
                    panel("P", 1000, "surface"),
                    panel("Q", 3000, "flush"),
                    panel("R", 5000, "surface").replace(", 'mount': 'surface'", ""),
                    run(
                        "behind",
                        "emt",
                        diameter.formatted("P"),
                        "1000 500 20",
                        "1000 1500 20",
                        "1000 1500 -13"),
                    run(
                        "beside",
                        "emt",
                        diameter.formatted("P"),
                        "1000 500 20",
                        "1000 1000 -13",
                        "1000 1500 -13"),
                    run("flush", "emt", diameter.formatted("Q"), "3000 1500 20", "3000 1500 -13"),
                    run(
                        "unknown",
                        "emt",
                        diameter.formatted("R"),
                        "5000 1500 20",
                        "5000 1500 -13")));
    String sentence = "run must not stand proud of the studs";
    assertThat(verdict(sentence, plan, "behind")).isEqualTo(MET);
    assertThat(verdict(sentence, plan, "beside")).isEqualTo(BROKEN);
    assertThat(verdict(sentence, plan, "flush")).isEqualTo(BROKEN);
    Finding unknown = Given.explain(sentence, plan, "unknown");
    assertThat(unknown.verdict()).isEqualTo(UNDECIDED);
    assertThat(unknown.missing())
        .extracting(MissingValue::description)
        .containsExactly("mount of panel R");
  }

  @Test
  void aBushingKeepsArmourOffTheStud() {
    String stud =
        "{'id': '%s', 'face': 'left', 'along': %s, 'material': 'steel', 'holes': [{'up': 600, 'width': 20, 'height': 40%s}]}";
    String cables =
        run("A", "armoured-cable", ", 'diameter': 12", "900 600 20.65", "1100 600 20.65")
            + ", "
            + run("B", "armoured-cable", ", 'diameter': 12", "1900 600 20.65", "2100 600 20.65")
            + ", "
            + run("C", "armoured-cable", ", 'diameter': 12", "2900 600 20.65", "3100 600 20.65");
    Plan plan =
        Given.module(
            40,
            0,
            ", 'studs': [%s, %s, %s], 'runs': [%s]"
                .formatted(
                    stud.formatted("S", 1000, ", 'insert': 'bushing'"),
                    stud.formatted("T", 2000, ", 'insert': 'none'"),
                    stud.formatted("U", 3000, ""),
                    cables));
    String sentence = "run must not lead over metal to a face";
    assertThat(verdict(sentence, plan, "A")).isEqualTo(MET);
    assertThat(verdict(sentence, plan, "B")).isEqualTo(BROKEN);
    Finding unknown = Given.explain(sentence, plan, "C");
    assertThat(unknown.verdict()).isEqualTo(UNDECIDED);
    assertThat(unknown.missing())
        .extracting(MissingValue::description)
        .contains("insert of service hole 1 of stud U");
  }

  @Test
  void theDepthOfARunAlongAWebCannotBeToldThere() {
    Plan plan =
        module(
            TOLERANCES
                + ", 'studs': [{'id': 'S', 'face': 'left', 'along': 1000}], 'runs': [%s]"
                    .formatted(
                        run(
                            "up",
                            "nonmetallic-cable",
                            ", 'diameter': 10",
                            "1004 500 20",
                            "1004 1500 20")));
    String sentence =
        "for each run, (for each stud (where the run passes through it), set-back at it of the run >= 10 mm) must hold";
    assertThat(verdict(sentence, plan, "up")).isEqualTo(UNDECIDED);
  }

  private static Verdict verdict(String sentence, Plan plan, String element) {
    return Given.explain(sentence, plan, element).verdict();
  }
}
