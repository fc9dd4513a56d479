package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import org.junit.jupiter.api.Test;
import org.rimefast.plan.Face;

/**
 * Ten receptacles in a row on a side wall, and the best that shifting the whole row over one pitch
 * can do for the worst of them. That a 4 ft spacing drifts over the ribs and 44 in does not: common
 * practice, no source. Foam all round a box, 2 in: common practice, no source.
 */
class ReceptacleRowTest {
  private static final double FOAM = 50.8;

  /** The greatest least clearance over all places of the ribs, to a tenth of a millimetre. */
  private static double bestOfAllPhases(double spacing, double standoff) {
    double best = 0;
    for (int tenths = 0; tenths < 2780; tenths++) {
      SamplePlan plan = new SamplePlan();
      plan.face(Face.LEFT, SIDE, mm(tenths / 10.0), mm(standoff));
      for (int i = 0; i < 10; i++) {
        plan.box(Face.LEFT, 500 + i * spacing, 1200);
      }
      ModuleGeometry geometry = plan.geometry();
      double worst = Double.POSITIVE_INFINITY;
      for (int i = 0; i < 10; i++) {
        worst = Math.min(worst, geometry.clearance(i));
      }
      best = Math.max(best, worst);
    }
    return best;
  }

  @Test
  void every4FeetSomeBoxMeetsARib() {
    assertThat(bestOfAllPhases(1219.2, 25)).isLessThan(FOAM);
  }

  @Test
  void every44InchesFitsWithEnoughStandoff() {
    // The drift of 9 * 5.6 mm is spread evenly: 25.2 mm to either side of the bays' middles. See
    // WorkedSectionTest for the slanted distance: ((104 - 27 - 25.2) * 36 + 31.4 * 68) / 76.9415.
    double expected = ((104 - 52.2) * 36 + 31.4 * 68) / Math.sqrt(68 * 68 + 36 * 36);
    assertThat(bestOfAllPhases(1117.6, 25)).isGreaterThan(FOAM).isBetween(expected - 0.1, expected);
  }

  @Test
  void every44InchesNoLongerFitsWithLessStandoff() {
    assertThat(bestOfAllPhases(1117.6, 15)).isLessThan(FOAM);
  }

  @Test
  void exactlyFourPitchesStillFit() {
    double expected = ((104 - 27) * 36 + 21.4 * 68) / Math.sqrt(68 * 68 + 36 * 36);
    assertThat(bestOfAllPhases(1112, 15)).isGreaterThan(FOAM).isBetween(expected - 0.1, expected);
  }
}
