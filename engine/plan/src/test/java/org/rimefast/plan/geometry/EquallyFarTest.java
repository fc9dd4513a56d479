package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Run;
import org.rimefast.plan.ShellSize;

/** A wall of unknown phase that is exactly as far as the roof, in shells of many sizes. */
class EquallyFarTest {
  private static final List<Face> ENDS = List.of(Face.LEFT, Face.RIGHT, Face.FRONT, Face.REAR);

  private static SamplePlan shell(Face unknown, int size) {
    SamplePlan plan = SamplePlan.whole();
    plan.shell =
        new ShellSize("as given", 11_000 + 7.31 * size, 2300 + 0.37 * size, 2600 + 0.29 * size);
    plan.face(Face.ROOF, SamplePlan.FLAT, null, mm(25));
    return plan.face(unknown, SamplePlan.END, null, mm(25));
  }

  @Test
  void spoilsTheClearanceOfAPartOnNoFaceMoreThanOnAnother() {
    for (Face face : ENDS) {
      for (int size = 0; size < 200; size++) {
        SamplePlan plan = shell(face, size);
        double depth = 30 + 0.0137 * size;
        double away = 66.3 - depth;
        double along = 1000 + 0.013 * size;
        double up = plan.shell.height() - away - 50;
        int level = box(plan, face, along, up, depth);
        int lower = box(plan, face, along, up - 0.01, depth);
        ModuleGeometry geometry = plan.geometry();
        assertThat(geometry.clearance(level)).as("%s %d", face, size).isCloseTo(away, within(1e-9));
        assertThat(geometry.missingForClearance(level)).isEmpty();
        assertThat(geometry.clearance(lower)).isNaN();
        assertThat(geometry.missingForClearance(lower))
            .containsExactly("/faces/" + face.word() + "/phase");
      }
    }
  }

  private static int box(SamplePlan plan, Face face, double along, double up, double depth) {
    return plan.box(face, mm(along), mm(up), mm(300), mm(100), mm(depth), Mount.COVERED, mm(0));
  }

  @Test
  void spoilsTheClearanceOfARunOnNoFaceMoreThanOnAnother() {
    for (Face face : ENDS) {
      for (int size = 0; size < 200; size++) {
        SamplePlan plan = shell(face, size);
        double depth = 30 + 0.0137 * size;
        double up = plan.shell.height() - (66.3 - depth);
        int level = run(plan, face, up, depth);
        int lower = run(plan, face, up - 0.01, depth);
        ModuleGeometry geometry = plan.geometry();
        assertThat(geometry.runClearance(level))
            .as("%s %d", face, size)
            .isCloseTo(66.3 - depth - 6, within(1e-9));
        assertThat(geometry.runClearance(lower)).isNaN();
      }
    }
  }

  private static int run(SamplePlan plan, Face face, double up, double depth) {
    return plan.run(Run.Kind.EMT, mm(12), at(face, 1000, up, depth), at(face, 1300, up, depth));
  }
}
