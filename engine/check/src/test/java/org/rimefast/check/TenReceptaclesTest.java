package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten receptacles in a row on a 278 mm pitch: boxes 54 mm wide and 47.6 mm deep, 12.7 mm lining,
 * 41.3 mm studs, the best phase searched for each. That 44 in fits and 48 in does not: common
 * practice, no source.
 */
class TenReceptaclesTest {
  private static final double SPACING_48_IN = 1219.2;
  private static final double SPACING_44_IN = 1117.6;
  private static final double FOUR_PITCHES = 1112;

  @ParameterizedTest(name = "standoff {0} mm, every {1} mm: all keep 2 in is {2}")
  @CsvSource({
    "25, " + SPACING_48_IN + ", false",
    "25, " + SPACING_44_IN + ", true",
    "25, " + FOUR_PITCHES + ", true",
    "15, " + SPACING_48_IN + ", false",
    "15, " + SPACING_44_IN + ", false",
    "15, " + FOUR_PITCHES + ", true"
  })
  void theSpacingDecidesWhetherAllCanKeepTwoInches(
      double standoff, double spacing, boolean allCan) {
    int best = 0;
    for (double phase = 0; phase < 278; phase += 1) {
      best = Math.max(best, met(phase, standoff, spacing));
    }
    assertThat(best == 10).as("%s of 10 keep 2 in at the best phase", best).isEqualTo(allCan);
  }

  private static int met(double phase, double standoff, double spacing) {
    List<String> boxes = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      boxes.add(Given.box("R" + i, 400 + i * spacing));
    }
    RuleResult result =
        Given.check(
            "box must sit in outer bay with clearance >= 2 in",
            Given.module(phase, standoff, ", 'boxes': [" + String.join(",", boxes) + "]"));
    return result.count(Verdict.MET);
  }
}
