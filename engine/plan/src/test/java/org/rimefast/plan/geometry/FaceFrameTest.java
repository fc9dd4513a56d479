package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimefast.plan.Face;

class FaceFrameTest {
  @ParameterizedTest
  @EnumSource
  void faceCoordinatesComeBackFromTheModule(Face face) {
    FaceFrame frame = FaceFrame.of(face, SamplePlan.SHELL);
    Random random = new Random(1);
    for (int i = 0; i < 1000; i++) {
      double along = random.nextDouble() * frame.alongExtent();
      double up = random.nextDouble() * frame.upExtent();
      double out = random.nextDouble() * 200 - 150;
      Point at = frame.toModule(along, up, out);
      assertThat(frame.along(at.x(), at.y())).isCloseTo(along, within(1e-9));
      assertThat(frame.up(at.y(), at.z())).isCloseTo(up, within(1e-9));
      assertThat(frame.out(at.x(), at.y(), at.z())).isCloseTo(out, within(1e-9));
    }
  }

  /** Whoever stands at {@code out < 0} and looks outward has along 0 at the left hand. */
  @ParameterizedTest
  @EnumSource(names = {"LEFT", "RIGHT", "FRONT", "REAR"})
  void alongRunsFromTheLeftHandEndSeenFromInside(Face face) {
    FaceFrame frame = FaceFrame.of(face, SamplePlan.SHELL);
    Point eye = frame.toModule(100, 0, -10);
    Point ahead = frame.toModule(100, 0, 0);
    Point right = frame.toModule(101, 0, -10);
    // Facing +x the right hand points to +y, facing +y to -x: a quarter turn the same way.
    double lookX = (ahead.x() - eye.x()) / 10;
    double lookY = (ahead.y() - eye.y()) / 10;
    assertThat(right.x() - eye.x()).isCloseTo(-lookY, within(1e-9));
    assertThat(right.y() - eye.y()).isCloseTo(lookX, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void everyAxisOfTheModuleIsUsedOnce(Face face) {
    FaceFrame frame = FaceFrame.of(face, SamplePlan.SHELL);
    double[] moved = new double[3];
    Point from = frame.toModule(0, 0, 0);
    Point along = frame.toModule(1, 0, 0);
    moved[frame.alongAxis()] += from.distanceTo(along);
    Point up = frame.toModule(0, 1, 0);
    moved[frame.upAxis()] += from.distanceTo(up);
    Point out = frame.toModule(0, 0, 1);
    moved[frame.outAxis()] += from.distanceTo(out);
    assertThat(moved).containsExactly(1, 1, 1);
    assertThat(coordinate(along, frame.alongAxis()) - coordinate(from, frame.alongAxis()))
        .isNotZero();
    assertThat(coordinate(out, frame.outAxis()) - coordinate(from, frame.outAxis())).isNotZero();
  }

  private static double coordinate(Point point, int axis) {
    return axis == 0 ? point.x() : axis == 1 ? point.y() : point.z();
  }

  @Test
  void aBoxOnTheLeftWallNearTheFrontCornerSeesTheFrontWall() {
    SamplePlan plan = SamplePlan.whole();
    // The phase puts an inward rib of the front wall, 104 mm wide, at its left-hand end.
    plan.box(Face.LEFT, 12032 - 27 - 5, 1200);
    ModuleGeometry geometry = plan.geometry();
    ShellNearest nearest = Objects.requireNonNull(geometry.nearestShell(0));
    assertThat(nearest.face()).isEqualTo(Face.FRONT);
    assertThat(geometry.clearance(0)).isCloseTo(5, within(1e-9));
    assertThat(nearest.nearest().onOther().x()).isCloseTo(12032, within(1e-9));
  }

  @Test
  void aBoxOnTheRearEndOfTheRightWallSeesTheRearWall() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.RIGHT, 12032 - 27 - 5, 1200);
    ModuleGeometry geometry = plan.geometry();
    assertThat(Objects.requireNonNull(geometry.nearestShell(0)).face()).isEqualTo(Face.REAR);
    assertThat(geometry.clearance(0)).isCloseTo(5, within(1e-9));
  }
}
