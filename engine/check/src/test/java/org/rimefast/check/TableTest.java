package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Plan;

/** What a table says of a plan, also where an input is missing or lies within its tolerance. */
class TableTest {
  private static final String COVER =
      """
      table cover needed of a box
        by its mount, humidity of its room
        | flush or covered | < 30 %             | 30 mm     |
        | flush or covered | >= 30 % and < 50 % | 2-1/2 in |
        | surface          | any                | 30 mm     |
        otherwise 3 in

      table steps of a stud by number of service holes
        | 0      | 1 mm |
        | 1 or 2 | 2 mm |
        | > 2    | 3 mm |

      table near of a box by its clearance
        | < 50 mm             | 10 mm |
        | >= 50 mm and < 1 m  | 20 mm |
        otherwise 40 mm

      table stuff of a box by its clearance
        | < 50 mm  | steel   |
        | >= 50 mm | plastic |

      table ratio of a box by its depth divided by (its width - its width)
        | < 1  | 10 mm |
        | >= 1 | 20 mm |

      """;

  private static Finding explain(String sentence, Plan plan, String element) {
    Standard standard = Given.rule(COVER, sentence);
    return new Checker(Given.DICTIONARY, standard)
        .explain("r", element, new PlanFacts(plan, Given.DICTIONARY));
  }

  private static String box(String without) {
    String box = Given.box("B", 75);
    assertThat(without.isEmpty() || box.contains(without)).isTrue();
    return ", 'boxes': [" + box.replace(without, "") + "]";
  }

  @Test
  void theRowIsNamedWithWhatTheInputsAre() {
    Plan plan = Given.module(40, 25, box(""));
    Finding finding = explain("box must have depth >= cover needed", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.reason())
        .isEqualTo("depth of box B is 47.6 mm, not at least 63.5 mm (cover needed of box B)");
    assertThat(finding.evidence().get(0).facts())
        .contains(
            new Evidence.Fact(
                "table cover needed", "row 2: flush or covered | >= 30 % and < 50 % | 2-1/2 in"),
            new Evidence.Fact("mount of box B", "flush"),
            new Evidence.Fact("humidity of room", "35 %"));
  }

  @Test
  void whatIsLeftIsOtherwise() {
    String wet = Given.json(40, 25, box("")).replace("'35 %'", "'60 %'");
    Finding finding = explain("box must have depth >= cover needed", Given.plan(wet), "B");
    assertThat(finding.reason())
        .isEqualTo("depth of box B is 47.6 mm, not at least 76.2 mm (cover needed of box B)");
    assertThat(finding.evidence().get(0).facts())
        .contains(new Evidence.Fact("table cover needed", "otherwise 3 in"));
  }

  @Test
  void aMissingInputIsUndecidedUnlessAllRowsThatMayHoldAgree() {
    String dry = Given.json(40, 25, box(", 'mount': 'flush'")).replace("'35 %'", "'20 %'");
    assertThat(explain("box must have depth >= cover needed", Given.plan(dry), "B").verdict())
        .isEqualTo(Verdict.MET);
    Plan open = Given.module(40, 25, box(", 'mount': 'flush'"));
    Finding finding = explain("box must have depth >= cover needed", open, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.reason())
        .isEqualTo("cover needed of box B cannot be told: mount of box B is missing");
    assertThat(finding.missing()).extracting(MissingValue::pointer).contains("/boxes/0/mount");
  }

  @Test
  void anInputWithinItsToleranceGivesAllThatItsRowsGiveAndNoMore() {
    // 39.5 mm to 56.8 mm reaches from the first row into the second, and never into "otherwise".
    String json =
        Given.json(
            40, 83.6, ", 'tolerances': {'electrical': 5}, 'boxes': [" + Given.box("B", 75) + "]");
    Plan plan = Given.plan(json);
    Finding within = explain("box must have depth <= near", plan, "B");
    assertThat(within.reason())
        .isEqualTo("depth of box B is 47.6 mm, not at most 10 mm to 20 mm (near of box B)");
    assertThat(within.evidence().get(0).facts().get(0).value())
        .isEqualTo("row 1: < 50 mm | 10 mm; or row 2: >= 50 mm and < 1 m | 20 mm");
    assertThat(explain("box must have height >= near + 56 mm", plan, "B").verdict())
        .isEqualTo(Verdict.MET);
    assertThat(explain("box must have height >= near + 60 mm", plan, "B").verdict())
        .isEqualTo(Verdict.UNDECIDED);
    Finding word = explain("for each box, its material must be stuff", plan, "B");
    assertThat(word.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(word.reason())
        .isEqualTo(
            "stuff of box B cannot be told: within the plan's tolerance more than one row of the"
                + " table \"stuff\" may hold");
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 2", "2, 2", "3, 3", "7, 3"})
  void wholeNumbersHaveNoGap(int holes, int thickness) {
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < holes; i++) {
      list.append(i == 0 ? "" : ", ")
          .append("{'up': ")
          .append(200 + 100 * i)
          .append(", 'width': 19, 'height': 100}");
    }
    String stud = ", 'studs': [{'id': 'S', 'face': 'left', 'along': 600, 'holes': [" + list + "]}]";
    Plan plan = Given.module(40, 25, stud);
    assertThat(
            explain("for each stud, steps must be exactly " + thickness + " mm", plan, "S")
                .verdict())
        .isEqualTo(Verdict.MET);
  }

  @Test
  void anInputThatCannotBeWorkedOutIsAnError() {
    Plan plan = Given.module(40, 25, box(""));
    Finding finding = explain("box must have depth >= ratio", plan, "B");
    assertThat(finding.verdict()).isEqualTo(Verdict.ERROR);
    assertThat(finding.reason()).contains("divides by what is or may be zero");
  }
}
