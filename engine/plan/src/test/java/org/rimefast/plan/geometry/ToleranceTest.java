package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.END;
import static org.rimefast.plan.geometry.SamplePlan.ROOF;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.STUD;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Run;
import org.rimefast.plan.Tolerances;

/**
 * What the plan draws and what might be built instead: the same layout twice, the second time with
 * every value moved within its tolerance. No distance may then leave what the bounds allow.
 */
class ToleranceTest {
  private static final double ELECTRICAL = 4;
  private static final double SHELL = 6;

  /** Draws a plan; with {@code shake}, moves every value by up to its tolerance. */
  private static final class Draft {
    private final Random layout;
    private final Random shaker;
    private final double shake;

    Draft(long seed, long shakeSeed, double shake) {
      this.layout = new Random(seed);
      this.shaker = new Random(shakeSeed);
      this.shake = shake;
    }

    /** A value with its own tolerance. */
    Amount own(double value, double plusMinus) {
      return mm(moved(value, plusMinus), plusMinus);
    }

    /** A value with its trade's tolerance. */
    Amount trade(double value, double plusMinus) {
      return mm(moved(value, plusMinus));
    }

    private double moved(double value, double plusMinus) {
      double share = shaker.nextInt(3) == 0 ? shaker.nextDouble() : 1;
      return value + shake * (shaker.nextBoolean() ? share : -share) * plusMinus;
    }

    private double between(double low, double high) {
      return low + (high - low) * layout.nextDouble();
    }

    SamplePlan plan() {
      SamplePlan plan = SamplePlan.whole();
      plan.shell = new org.rimefast.plan.ShellSize("short", 1500, 1200, 1100);
      plan.tolerances = new Tolerances(mm(SHELL), mm(3), mm(ELECTRICAL), null);
      boolean level = layout.nextInt(4) == 0;
      double lining = 12.7;
      Amount[] linings = {own(lining, 1), own(lining, 1)};
      plan.face(
          Face.LEFT,
          layout.nextBoolean() ? SIDE : END,
          layout.nextBoolean() ? own(between(0, 278), 9) : trade(between(0, 278), SHELL),
          layout.nextBoolean() ? own(between(5, 60), 5) : trade(between(5, 60), SHELL),
          level ? Ribs.LEVEL : Ribs.UPRIGHT,
          STUD,
          linings[0]);
      plan.face(
          Face.FRONT,
          layout.nextBoolean() ? SIDE : END,
          trade(between(0, 278), SHELL),
          own(between(5, 60), 2),
          Ribs.UPRIGHT,
          STUD,
          linings[1]);
      plan.face(Face.ROOF, ROOF, trade(between(0, 209), SHELL), mm(30));
      int openings = layout.nextInt(3);
      for (int i = 0; i < openings; i++) {
        plan.opening(
            layout.nextBoolean() ? Face.LEFT : Face.FRONT,
            own(between(50, 900), 3),
            own(between(50, 700), 2),
            own(between(50, 500), 2),
            own(between(50, 400), 1));
      }
      for (int i = 0; i < 2; i++) {
        Face face = layout.nextInt(3) == 0 ? Face.FRONT : Face.LEFT;
        FaceFrame frame = FaceFrame.of(face, plan.shell);
        double along = between(0, frame.alongExtent());
        double up = between(0, frame.upExtent());
        Amount depth = own(between(20, 60), 1);
        // The mount is right and the lining as thick as it comes out, but the box may stand off.
        boolean free = layout.nextBoolean();
        double standsOff = moved(0, free ? 2 : ELECTRICAL);
        Amount builtLining = linings[face == Face.LEFT ? 0 : 1];
        Amount front = null;
        if (free) {
          front = mm(-5 + standsOff, 2);
        } else if (shake > 0) {
          front = mm(-builtLining.millimetres() + standsOff);
        }
        plan.box(
            face,
            layout.nextBoolean() ? own(along, 7) : trade(along, ELECTRICAL),
            layout.nextBoolean() ? own(up, 1) : trade(up, ELECTRICAL),
            own(between(20, 120), 2),
            own(between(20, 120), 3),
            depth,
            Mount.FLUSH,
            front);
      }
      for (int i = 0; i < 2; i++) {
        Run.PathPoint[] path = new Run.PathPoint[2 + layout.nextInt(2)];
        boolean corner = layout.nextInt(3) == 0;
        for (int p = 0; p < path.length; p++) {
          path[p] =
              new Run.PathPoint(
                  "/runs/" + i + "/path/" + p,
                  corner && p == 0 ? Face.FRONT : Face.LEFT,
                  trade(between(0, 1200), ELECTRICAL),
                  own(between(0, 1100), 5),
                  layout.nextBoolean()
                      ? own(between(0, 50), 6)
                      : trade(between(0, 50), ELECTRICAL));
        }
        plan.run(Run.Kind.EMT, own(between(10, 30), 2), path);
      }
      return plan;
    }
  }

  @Test
  void whateverIsBuiltWithinToleranceStaysWithinTheBounds() {
    double tightest = 0;
    double tightestFacing = 0;
    double tightestRun = 0;
    double tightestProud = 0;
    double tightestGap = 0;
    int holed = 0;
    for (int seed = 0; seed < 6000; seed++) {
      ModuleGeometry drawn = new Draft(seed, 0, 0).plan().geometry();
      ModuleGeometry built = new Draft(seed, seed * 31L + 7, 1).plan().geometry();
      holed += drawn.plan().openings().isEmpty() ? 0 : 1;
      for (int i = 0; i < 2; i++) {
        tightest =
            Math.max(
                tightest,
                share(
                    "clearance " + seed,
                    built.clearance(i) - drawn.clearance(i),
                    drawn.positionTolerance(i)));
        tightestRun =
            Math.max(
                tightestRun,
                share(
                    "run clearance " + seed,
                    built.runClearance(i) - drawn.runClearance(i),
                    drawn.runPositionTolerance(i)));
        tightestProud =
            Math.max(
                tightestProud,
                share("proud " + seed, built.proud(i) - drawn.proud(i), drawn.proudTolerance(i)));
        for (int j = 0; j < 2; j++) {
          share(
              "run to part " + seed,
              built.runGap(i, j) - drawn.runGap(i, j),
              drawn.runGapTolerance(i, j));
        }
        tightestFacing = Math.max(tightestFacing, facing(seed, drawn, built, i));
      }
      tightestGap =
          Math.max(
              tightestGap,
              share("gap " + seed, built.gap(0, 1) - drawn.gap(0, 1), drawn.gapTolerance(0, 1)));
      share(
          "run to run " + seed,
          built.gapBetweenRuns(0, 1) - drawn.gapBetweenRuns(0, 1),
          drawn.gapToleranceBetweenRuns(0, 1));
    }
    assertThat(holed).isGreaterThan(2000);
    // The bounds are not idle: some case nearly uses each of them up.
    assertThat(tightest).isGreaterThan(0.8);
    assertThat(tightestFacing).isGreaterThan(0.95);
    assertThat(tightestRun).isGreaterThan(0.6);
    assertThat(tightestProud).isGreaterThan(0.95);
    assertThat(tightestGap).isGreaterThan(0.8);
  }

  private static double share(String what, double difference, double bound) {
    assertThat(Math.abs(difference)).as(what).isLessThanOrEqualTo(bound + 1e-9);
    return Math.abs(difference) / bound;
  }

  private static double facing(int seed, ModuleGeometry drawn, ModuleGeometry built, int part) {
    Face face = drawn.plan().parts().get(part).face();
    CorrugatedSheet drawnSheet = Objects.requireNonNull(drawn.sheet(face));
    CorrugatedSheet builtSheet = Objects.requireNonNull(built.sheet(face));
    double tolerance = drawn.facesTolerance(part);
    double tightest = 0;
    for (Zone zone : Zone.values()) {
      double drawnMargin =
          drawnSheet.marginInside(zone, drawn.facesFrom(part), drawn.facesTo(part));
      double builtMargin =
          builtSheet.marginInside(zone, built.facesFrom(part), built.facesTo(part));
      double drawnGap = drawnSheet.gapTo(zone, drawn.facesFrom(part), drawn.facesTo(part));
      double builtGap = builtSheet.gapTo(zone, built.facesFrom(part), built.facesTo(part));
      // At the ends of a face a stretch may come into it or leave it as the phase moves.
      if (isAwayFromEnds(drawn, drawnSheet, part)) {
        tightest =
            Math.max(tightest, share("margin " + seed, builtMargin - drawnMargin, tolerance));
        tightest = Math.max(tightest, share("gap to " + seed, builtGap - drawnGap, tolerance));
      }
    }
    return tightest;
  }

  private static boolean isAwayFromEnds(ModuleGeometry geometry, CorrugatedSheet sheet, int part) {
    return geometry.facesFrom(part) > 300 && geometry.facesTo(part) < sheet.extent() - 300;
  }

  @Test
  void withoutTolerancesNothingMayDiffer() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, 1000, 1200);
    plan.run(Run.Kind.EMT, mm(20), SamplePlan.at(Face.LEFT, 1, 2, 3));
    plan.runs.clear();
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.positionTolerance(0)).isZero();
    assertThat(geometry.facesTolerance(0)).isZero();
  }

  /** Away from every edge: along 4 + 2/2 + 6 (phase), up 4 + 3/2, out 4 + 1 + 6 (standoff). */
  @Test
  void theBoundIsTheLengthOfTheSumsAlongEachAxis() {
    SamplePlan plan = SamplePlan.whole();
    plan.tolerances = new Tolerances(mm(6), mm(3), mm(4), null);
    plan.box(Face.LEFT, mm(6000), mm(1200), mm(54, 2), mm(90, 3), mm(47.6, 1), Mount.FLUSH, null);
    plan.stud(Face.LEFT, 3000, null);
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.positionTolerance(0))
        .isCloseTo(Math.sqrt(11 * 11 + 5.5 * 5.5 + 11 * 11), within(1e-9));
    assertThat(geometry.facesTolerance(0)).isEqualTo(11);
    assertThat(geometry.facesTolerance(1)).isEqualTo(3 + 6);
    // Both on the same studs: the standoff moves them together.
    assertThat(geometry.gapTolerance(0, 1))
        .isCloseTo(Math.sqrt(8 * 8 + 8.5 * 8.5 + 8 * 8), within(1e-9));
  }

  /**
   * An opening leaves a front wall up to 236 mm: 4 mm into the web that comes back from the bay at
   * 232 mm, 18 mm wide and 45.6 mm deep. A box stands above that edge. If the ribs lie 3 mm to the
   * left, the edge is 7 mm into the web: it comes nearer by 3 * 45.6 / 18 = 7.6 mm, not by 3.
   */
  @Test
  void atACutEdgeTheRibsMoveTheSheetTowardTheBox() {
    ModuleGeometry drawn = boxAboveACutEdge(0);
    ModuleGeometry built = boxAboveACutEdge(-3);
    double moved = drawn.clearance(0) - built.clearance(0);
    assertThat(moved).isCloseTo(3 * 45.6 / 18, within(1e-9));
    assertThat(drawn.positionTolerance(0))
        .isCloseTo(Math.sqrt(3 * 3 + 7.6 * 7.6), within(1e-9))
        .isGreaterThan(moved);
  }

  private static ModuleGeometry boxAboveACutEdge(double phase) {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.FRONT, END, mm(phase, 3), mm(25));
    plan.opening(Face.FRONT, 236, 0, 2350 - 236, 2693);
    plan.box(Face.FRONT, mm(260), mm(1200), mm(60), mm(60), mm(40), null, mm(16.3));
    return plan.geometry();
  }
}
