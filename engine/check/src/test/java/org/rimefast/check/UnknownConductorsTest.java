package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.plan.Plan;

/** A run of which the plan does not say what conductors it has may have any number. */
class UnknownConductorsTest {
  private static final String TWO = ", 'conductors': [{'size': '12 AWG', 'count': 2}]";
  private static final Plan PLAN =
      module(
          ", 'boxes': [%s, %s], 'runs': [%s, %s, %s]"
              .formatted(
                  box("A", 500),
                  box("B", 2000),
                  run(
                      "known",
                      "nonmetallic-cable",
                      ", 'diameter': 10, 'from': 'A', 'to': 'A'" + TWO,
                      "500 600 20",
                      "500 1160 20"),
                  run(
                      "unknown",
                      "nonmetallic-cable",
                      ", 'diameter': 10, 'from': 'B', 'to': 'B'",
                      "2000 600 20",
                      "2000 1160 20"),
                  run(
                      "empty",
                      "emt",
                      ", 'diameter': 18, 'from': 'A', 'to': 'B', 'conductors': []",
                      "500 400 20",
                      "2000 400 20")));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "number of conductors (where the box takes it) must be at most 2|MET",
        "number of conductors (where the box takes it) must be at least 5|BROKEN",
        "at most 2 conductors (where the box takes it) must be insulated|MET",
        "at least 3 conductors (where the box takes it) must be insulated|BROKEN",
        "exactly 2 conductors (where the box takes it) must be insulated|MET",
        "all but 1 conductor (where the box takes it) must have gauge <= 10|BROKEN"
      })
  void whatIsCountedIsDecidedOnlyWhereConductorsAreGiven(String sentence, Verdict known) {
    assertThat(Given.explain("for each box, " + sentence, PLAN, "A").verdict()).isEqualTo(known);
    Finding unknown = Given.explain("for each box, " + sentence, PLAN, "B");
    assertThat(unknown.verdict()).isEqualTo(UNDECIDED);
    assertThat(unknown.missing())
        .extracting(MissingValue::description)
        .containsExactly("conductors of cable unknown");
  }

  @Test
  void aLastRunWithoutConductorsLeavesThoseOfTheOthers() {
    String sentence = "for each run, there must be a conductor (where the run contains it)";
    for (Finding finding : Given.check(sentence, PLAN).findings()) {
      assertThat(List.of("unknown", "empty")).contains(finding.element().id());
    }
    assertThat(Given.explain(sentence, PLAN, "known").verdict()).isEqualTo(MET);
    assertThat(Given.explain(sentence, PLAN, "empty").verdict()).isEqualTo(BROKEN);
  }
}
