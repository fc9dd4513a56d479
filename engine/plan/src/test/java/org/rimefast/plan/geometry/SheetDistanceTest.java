package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.rimefast.plan.Face;

/**
 * Distances from boxes to sheets against JTS Topology Suite 1.20, which measures in the section
 * plane: the face is cut into bands along the ribs (the code cuts it across them), the section of
 * each band is clipped and measured by JTS, and the distance along the ribs is added by Pythagoras.
 */
class SheetDistanceTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  @Test
  void distancesAgreeWithJtsOnRandomSections() {
    Random random = new Random(20261125);
    int meeting = 0;
    int holed = 0;
    for (int i = 0; i < 12_000; i++) {
      RandomSheet sheet = new RandomSheet(random, 3000, i % 3 == 0 ? 3 : 0);
      double minS = sheet.extentS * (1.2 * random.nextDouble() - 0.1);
      double minT = sheet.extentT * (1.2 * random.nextDouble() - 0.1);
      double maxO = 40 - 150 * random.nextDouble();
      double maxS = minS + (i % 50 == 0 ? 1500 : 200) * random.nextDouble();
      double maxT = minT + 200 * random.nextDouble();
      double minO = maxO - 80 * random.nextDouble();
      double expected = jtsDistance(sheet, minS, minT, minO, maxS, maxT, maxO);
      double actual = sheet.distance(minS, minT, minO, maxS, maxT, maxO);
      assertThat(actual)
          .as("section %d", i)
          .isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
      meeting += expected == 0 ? 1 : 0;
      holed += sheet.holes.isEmpty() ? 0 : 1;
    }
    // Both the boxes that the sheet passes through and the faces with openings are well covered.
    assertThat(meeting).isBetween(1000, 6000);
    assertThat(holed).isGreaterThan(2000);
  }

  private static double jtsDistance(
      RandomSheet sheet,
      double minS,
      double minT,
      double minO,
      double maxS,
      double maxT,
      double maxO) {
    Geometry section =
        JTS.createLineString(
            sheet.corners().stream()
                .map(corner -> new Coordinate(corner[0], corner[1]))
                .toArray(Coordinate[]::new));
    Geometry box = JTS.toGeometry(new Envelope(minS, maxS, minO, maxO));
    TreeSet<Double> bands = new TreeSet<>(List.of(0.0, sheet.extentT));
    for (double[] hole : sheet.holes) {
      bands.add(Math.min(sheet.extentT, Math.max(0, hole[1])));
      bands.add(Math.min(sheet.extentT, Math.max(0, hole[3])));
    }
    double best = Double.POSITIVE_INFINITY;
    for (double band : bands) {
      Double next = bands.higher(band);
      if (next == null) {
        break;
      }
      double alongRibs = Math.max(0, Math.max(band - maxT, minT - next));
      for (double[] steel : steel(sheet, (band + next) / 2)) {
        Geometry strip = JTS.toGeometry(new Envelope(steel[0], steel[1], -10, 100));
        double across = section.intersection(strip).distance(box);
        best = Math.min(best, Math.hypot(alongRibs, across));
      }
    }
    return best;
  }

  /** What is left of the face across the ribs at t. */
  private static List<double[]> steel(RandomSheet sheet, double t) {
    TreeSet<Double> edges = new TreeSet<>(List.of(0.0, sheet.extentS));
    for (double[] hole : sheet.holes) {
      edges.add(Math.min(sheet.extentS, Math.max(0, hole[0])));
      edges.add(Math.min(sheet.extentS, Math.max(0, hole[2])));
    }
    List<double[]> steel = new ArrayList<>();
    for (double edge : edges) {
      Double next = edges.higher(edge);
      if (next != null && sheet.isSteel((edge + next) / 2, t)) {
        steel.add(new double[] {edge, next});
      }
    }
    return steel;
  }

  @Test
  void nearestPointsAreAsFarApartAsTheDistanceAndLieOnBothBodies() {
    Random random = new Random(4);
    for (int i = 0; i < 3000; i++) {
      RandomSheet sheet = new RandomSheet(random, 1500, 2);
      double minA = 1500 * random.nextDouble();
      double minU = 1500 * random.nextDouble();
      double minO = -150 * random.nextDouble();
      Nearest nearest =
          Objects.requireNonNull(
              sheet.sheet.nearest(minA, minU, minO, minA + 60, minU + 90, minO + 40));
      double distance = sheet.sheet.distance(minA, minU, minO, minA + 60, minU + 90, minO + 40);
      assertThat(nearest.distance()).isEqualTo(distance);
      assertThat(nearest.onElement().distanceTo(nearest.onOther()))
          .isCloseTo(distance, within(1e-9));
      FaceFrame frame = sheet.sheet.frame();
      Point on = nearest.onElement();
      assertThat(frame.along(on.x(), on.y())).isBetween(minA - 1e-9, minA + 60 + 1e-9);
      assertThat(frame.up(on.y(), on.z())).isBetween(minU - 1e-9, minU + 90 + 1e-9);
      assertThat(frame.out(on.x(), on.y(), on.z())).isBetween(minO - 1e-9, minO + 40 + 1e-9);
      assertOnSteel(sheet, nearest.onOther());
    }
  }

  private static void assertOnSteel(RandomSheet sheet, Point at) {
    FaceFrame frame = sheet.sheet.frame();
    double along = frame.along(at.x(), at.y());
    double up = frame.up(at.y(), at.z());
    double s = sheet.upright ? along : up;
    double t = sheet.upright ? up : along;
    double o = frame.out(at.x(), at.y(), at.z());
    assertThat(s).isBetween(-1e-9, sheet.extentS + 1e-9);
    assertThat(t).isBetween(-1e-9, sheet.extentT + 1e-9);
    Geometry section =
        JTS.createLineString(
            sheet.corners().stream()
                .map(corner -> new Coordinate(corner[0], corner[1]))
                .toArray(Coordinate[]::new));
    assertThat(section.distance(JTS.createPoint(new Coordinate(s, o)))).isLessThan(1e-9);
    double inside = 1e-6; // a point on the edge of a hole is steel
    assertThat(
            sheet.holes.stream()
                .noneMatch(
                    hole ->
                        s > hole[0] + inside
                            && s < hole[2] - inside
                            && t > hole[1] + inside
                            && t < hole[3] - inside))
        .isTrue();
  }

  @Test
  void anOpeningThatTakesUpTheWholeFaceLeavesNoSteel() {
    SamplePlan plan = SamplePlan.whole().opening(Face.REAR, 0, 0, 2350, 2693);
    CorrugatedSheet sheet = Objects.requireNonNull(plan.geometry().sheet(Face.REAR));
    assertThat(sheet.distance(0, 0, -10, 10, 10, -5)).isInfinite();
    assertThat(sheet.nearest(0, 0, -10, 10, 10, -5)).isNull();
    assertThat(sheet.segmentDistance(0, 0, -10, 10, 10, -5)).isInfinite();
  }
}
