package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.plan.Plan;

/**
 * A box 47.6 mm deep, flush with 12.7 mm lining, on 41.3 mm studs that stand s off the ribs of the
 * side profile (72/68/70 mm, 36 mm deep; common practice, no source). Expected values are worked
 * out by hand here, from the section alone.
 */
class WorkedSectionTest {
  /**
   * The first rib runs from 40 to 110 mm, the first bay from 178 to 250 mm; far from the end wall.
   */
  private static final double PHASE = 40;

  private static final double RIB_MIDDLE = 75 + 4 * 278;
  private static final double BAY_MIDDLE = 214 + 4 * 278;

  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 8.4, 15, 25, 44.4, 60})
  void atAnInwardRibThereIsSixPointFourPlusTheStandoff(double standoff) {
    assertThat(clearance(RIB_MIDDLE, standoff)).isCloseTo(6.4 + standoff, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 8.4, 15, 25, 44.4, 60})
  void inTheMiddleOfABayTheWebsMayBeNearerThanTheSheetStraightBack(double standoff) {
    double straightBack = 42.4 + standoff;
    // Seen from the box's back corner, 27 mm from the middle of the bay: the web starts 9 mm aside
    // at
    // the depth of the bay, and ends 77 mm aside at the depth of the rib, 36 mm nearer.
    double toWeb = distanceToSegment(9, straightBack, 77, straightBack - 36);
    assertThat(clearance(BAY_MIDDLE, standoff))
        .isCloseTo(Math.min(straightBack, toWeb), within(0.05));
  }

  /** The distance from the origin to the segment from (x1, y1) to (x2, y2). */
  private static double distanceToSegment(double x1, double y1, double x2, double y2) {
    double dx = x2 - x1;
    double dy = y2 - y1;
    double foot = -(x1 * dx + y1 * dy) / (dx * dx + dy * dy);
    double clamped = Math.max(0, Math.min(1, foot));
    return Math.hypot(x1 + clamped * dx, y1 + clamped * dy);
  }

  @Test
  void twoInchesAtAnInwardRibNeedAStandoffOf44Point4() {
    assertThat(verdict(RIB_MIDDLE, 44.4)).isEqualTo(Verdict.MET);
    assertThat(verdict(RIB_MIDDLE, 44.3)).isEqualTo(Verdict.BROKEN);
  }

  @Test
  void straightBackInABayTwoInchesNeedAStandoffOf8Point4() {
    assertThat(verdict(BAY_MIDDLE, 8.3)).isEqualTo(Verdict.BROKEN);
    assertThat(42.4 + 8.4).isCloseTo(50.8, within(1e-9));
  }

  private static double clearance(double along, double standoff) {
    Plan plan = Given.module(PHASE, standoff, ", 'boxes': [" + Given.box("B", along) + "]");
    Finding finding = Given.explain("box must have clearance >= 2 in", plan, "B");
    return finding.evidence().get(0).measurement().orElseThrow().least() * 1000;
  }

  private static Verdict verdict(double along, double standoff) {
    Plan plan = Given.module(PHASE, standoff, ", 'boxes': [" + Given.box("B", along) + "]");
    return Given.explain("box must have clearance >= 2 in", plan, "B").verdict();
  }
}
