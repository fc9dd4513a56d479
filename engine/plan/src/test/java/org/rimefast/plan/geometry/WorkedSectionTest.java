package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.plan.Face;

/**
 * A box 54 mm wide and 47.6 mm deep, flush with 12.7 mm lining on 41.3 mm studs that stand s off
 * the inward ribs of a 36 mm deep side wall (70 rib, 68 web, 72 bay, 68 web; phase 0). Sizes:
 * common practice, no source. The distances are derived here by hand.
 *
 * <p>Depth from the warm face: the box reaches from -12.7 to 34.9, the ribs are at 41.3 + s. So its
 * back stands 6.4 + s inside the plane of the ribs.
 */
class WorkedSectionTest {
  private static final double RIB_MIDDLE = 35;
  private static final double BAY_MIDDLE = 70 + 68 + 36;
  private static final double WEB_LENGTH = Math.sqrt(68 * 68 + 36 * 36);

  private static ModuleGeometry boxAt(double along, double standoff) {
    SamplePlan plan = SamplePlan.whole().face(Face.LEFT, SIDE, mm(0), mm(standoff));
    plan.box(Face.LEFT, along + 20 * 278, 1200);
    return plan.geometry();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 3.5, 8.4, 15, 25, 44.4})
  void atAnInwardRibTheBoxHasWhatItsBackAndTheStandoffLeave(double standoff) {
    assertThat(boxAt(RIB_MIDDLE, standoff).clearance(0)).isCloseTo(6.4 + standoff, within(1e-9));
  }

  /**
   * In the middle of the bay the back corner is 27 mm from the middle. The web runs from 36 mm off
   * the middle at the bay's depth, 36, to 104 mm off it at the ribs' plane, 0. The corner's
   * distance from the line through both is the cross product of (104 - 27, 6.4 + s) with (68, -36),
   * divided by the web's length: (77 * 36 + (6.4 + s) * 68) / sqrt(68^2 + 36^2). Its foot lies on
   * the web for all these standoffs.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 3.5, 8.4, 15, 25, 44.4})
  void inTheMiddleOfABayTheCornersAreNearerToTheWebsThanTheBackToTheBay(double standoff) {
    double slanted = (77 * 36 + (6.4 + standoff) * 68) / WEB_LENGTH;
    double foot = ((27 - 36) * 68 + (6.4 + standoff + 36) * 36) / (WEB_LENGTH * WEB_LENGTH);
    assertThat(foot).isBetween(0.0, 1.0);
    assertThat(slanted).isLessThan(42.4 + standoff);
    assertThat(boxAt(BAY_MIDDLE, standoff).clearance(0)).isCloseTo(slanted, within(1e-9));
  }

  /** The same with the corner 27 + 20 mm from the middle. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 8.4, 25})
  void offTheMiddleTheSlantedDistanceIsLess(double standoff) {
    double slanted = ((104 - 47) * 36 + (6.4 + standoff) * 68) / WEB_LENGTH;
    assertThat(boxAt(BAY_MIDDLE + 20, standoff).clearance(0)).isCloseTo(slanted, within(1e-9));
    assertThat(boxAt(BAY_MIDDLE - 20, standoff).clearance(0)).isCloseTo(slanted, within(1e-9));
  }

  /** A line along the middle of the box's back meets only the bay straight behind it. */
  @Test
  void straightBackFromAnOuterBayThereIsTheDepthOfTheProfileMore() {
    CorrugatedSheet sheet = Objects.requireNonNull(boxAt(BAY_MIDDLE, 8.4).sheet(Face.LEFT));
    double back = -(6.4 + 8.4);
    assertThat(sheet.distance(BAY_MIDDLE, 1200, back - 1, BAY_MIDDLE, 1201, back))
        .isCloseTo(42.4 + 8.4, within(1e-9))
        .isCloseTo(50.8, within(1e-9));
  }

  @Test
  void theNearestPointsLieOnTheBackCornerAndOnTheWeb() {
    ModuleGeometry geometry = boxAt(BAY_MIDDLE + 20, 25);
    ShellNearest found = Objects.requireNonNull(geometry.nearestShell(0));
    assertThat(found.face()).isEqualTo(Face.LEFT);
    assertThat(found.nearest().distance()).isEqualTo(geometry.clearance(0));
    Point corner = found.nearest().onElement();
    assertThat(corner.x()).isCloseTo(20 * 278 + BAY_MIDDLE + 47, within(1e-9));
    assertThat(corner.y()).isCloseTo(31.4, within(1e-9));
    assertThat(corner.z()).isEqualTo(1200);
    Point onWeb = found.nearest().onOther();
    // The web leaves the bay at 36 mm off its middle, y = -36, and rises 36 on 68.
    double offMiddle = onWeb.x() - 20 * 278 - BAY_MIDDLE;
    assertThat(onWeb.y()).isCloseTo(-36 + (offMiddle - 36) * 36 / 68, within(1e-9));
    assertThat(corner.distanceTo(onWeb)).isCloseTo(geometry.clearance(0), within(1e-9));
  }

  @Test
  void theCuboidIsWhereTheSectionSays() {
    Cuboid box = Objects.requireNonNull(boxAt(BAY_MIDDLE, 25).cuboid(0));
    assertThat(box.minX()).isCloseTo(20 * 278 + 174 - 27, within(1e-9));
    assertThat(box.maxX()).isCloseTo(20 * 278 + 174 + 27, within(1e-9));
    assertThat(box.minY()).isCloseTo(31.4, within(1e-9));
    assertThat(box.maxY()).isCloseTo(31.4 + 47.6, within(1e-9));
    assertThat(box.minZ()).isEqualTo(1155);
    assertThat(box.maxZ()).isEqualTo(1245);
  }
}
