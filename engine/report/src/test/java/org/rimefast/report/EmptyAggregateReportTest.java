package org.rimefast.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Checker;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;

/** A report says why there is no smallest of nothing. */
class EmptyAggregateReportTest {
  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "bunk-room", "title": "Bunk room (invented)",
       "units": "mm", "room": {"use": "bunk room", "humidity": "35 %"},
       "shell": {"size": "45G1"},
       "faces": {"default": {"profile": "side wall", "phase": 40, "standoff": 25}},
       "boxes": [{"id": "R-1", "kind": "device", "face": "left", "along": 400, "up": 900,
         "width": 54, "height": 76, "depth": 47.6, "mount": "flush", "material": "steel"}]}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          smallest depth of studs      | there is no stud, so there is no smallest depth
          largest depth of studs       | there is no stud, so there is no largest depth
          average depth of studs       | there is no stud, so there is no average depth
          distance to the nearest stud | there is no stud, so there is no nearest one
          """)
  void bothReportsSayIt(String value, String reason) throws IOException {
    Standard standard =
        new RuleCompiler(SteelModules.dictionary().vocabulary())
            .compile(
                new SourceText(
                    "r.rime",
                    """
                    standard tamarack-house edition 2026-11
                    rule r "A rule"
                      box must have %s <= 4 in
                      severity fix
                      stage framing
                      because "a reason"
                      source "common practice, no source"
                    """
                        .formatted(value)))
            .standard()
            .orElseThrow();
    Plan plan =
        new PlanReader()
            .read("bunk-room.json", PLAN.getBytes(StandardCharsets.UTF_8))
            .plan()
            .orElseThrow();
    CheckResult result =
        new Checker(SteelModules.dictionary(), standard).check(plan, CheckOptions.DEFAULT);
    assertThat(TextReport.write(result, TextOptions.PLAIN).replaceAll("\\s+", " "))
        .contains("cannot be told: " + reason);
    assertThat(new String(JsonReport.write(List.of(result), List.of()), StandardCharsets.UTF_8))
        .contains("cannot be told: " + reason);
  }
}
