package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;

/** Laws that hold for every section, checked on random ones. */
class GeometryLawsTest {
  private static double clearance(
      Face face, double phase, double standoff, double along, double width) {
    SamplePlan plan = new SamplePlan();
    plan.face(face, SIDE, mm(phase), mm(standoff));
    plan.box(face, mm(along), mm(1200), mm(width), mm(90), mm(47.6), Mount.FLUSH, null);
    return plan.geometry().clearance(0);
  }

  @Property(tries = 1000, seed = "1")
  void movingPartAndPhaseTogetherChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 278) double phase,
      @ForAll @DoubleRange(min = 0, max = 60) double standoff,
      @ForAll @DoubleRange(min = 3000, max = 6000) double along,
      @ForAll @DoubleRange(min = 1, max = 400) double width,
      @ForAll @DoubleRange(min = -1500, max = 1500) double shift) {
    assertThat(clearance(Face.LEFT, phase + shift, standoff, along + shift, width))
        .isCloseTo(clearance(Face.LEFT, phase, standoff, along, width), within(1e-9));
  }

  @Property(tries = 1000, seed = "2")
  void onePitchFurtherEverythingIsTheSame(
      @ForAll @DoubleRange(min = 0, max = 278) double phase,
      @ForAll @DoubleRange(min = 0, max = 60) double standoff,
      @ForAll @DoubleRange(min = 3000, max = 6000) double along,
      @ForAll @DoubleRange(min = 1, max = 400) double width) {
    double here = clearance(Face.LEFT, phase, standoff, along, width);
    assertThat(clearance(Face.LEFT, phase, standoff, along + 278, width))
        .isCloseTo(here, within(1e-9));
    assertThat(clearance(Face.LEFT, phase + 278, standoff, along, width))
        .isCloseTo(here, within(1e-9));
  }

  /** The profile reads the same from both ends: a rib that starts at p ends at length - p - 70. */
  @Property(tries = 1000, seed = "3")
  void theMirroredRightWallHasTheSameClearance(
      @ForAll @DoubleRange(min = 0, max = 278) double phase,
      @ForAll @DoubleRange(min = 0, max = 60) double standoff,
      @ForAll @DoubleRange(min = 500, max = 11000) double along,
      @ForAll @DoubleRange(min = 1, max = 400) double width) {
    double left = clearance(Face.LEFT, phase, standoff, along, width);
    double right = clearance(Face.RIGHT, 12032 - phase - 70, standoff, 12032 - along, width);
    assertThat(right).isCloseTo(left, within(1e-9));
    // Seen from inside, the same numbers on the other wall are the same section.
    assertThat(clearance(Face.RIGHT, phase, standoff, along, width)).isCloseTo(left, within(1e-9));
  }

  @Property(tries = 1000, seed = "4")
  void moreStandoffNeverBringsABoxNearer(
      @ForAll @DoubleRange(min = 0, max = 278) double phase,
      @ForAll @DoubleRange(min = 0, max = 60) double standoff,
      @ForAll @DoubleRange(min = 0, max = 60) double more,
      @ForAll @DoubleRange(min = 1, max = 400) double width) {
    double near = clearance(Face.LEFT, phase, standoff, 5000, width);
    double far = clearance(Face.LEFT, phase, standoff + more, 5000, width);
    assertThat(far).isBetween(near - 1e-9, near + more + 1e-9);
  }

  @Property(tries = 1000, seed = "5")
  void aBoxOnTheRibsPlaneIsAtLeastAsFarAsThePlaneAndAtMostTheDepthFarther(
      @ForAll @DoubleRange(min = 0, max = 278) double phase,
      @ForAll @DoubleRange(min = 0, max = 60) double standoff,
      @ForAll @DoubleRange(min = 1, max = 400) double width) {
    assertThat(clearance(Face.LEFT, phase, standoff, 5000, width))
        .isBetween(6.4 + standoff - 1e-9, 6.4 + standoff + 36 + 1e-9);
  }
}
