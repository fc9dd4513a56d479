package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.math.Vector3D;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Run;
import org.rimefast.plan.Tolerances;

/** Lengths and turns against vectors of the JTS Topology Suite, the rest against fine samples. */
class RunPathsTest {
  private static final int LAYOUTS = 2_000;

  private static Run.PathPoint[] path(Random random, double extent) {
    Run.PathPoint[] path = new Run.PathPoint[2 + random.nextInt(4)];
    for (int p = 0; p < path.length; p++) {
      path[p] =
          at(
              random.nextInt(5) == 0 ? Face.REAR : Face.LEFT,
              extent * random.nextDouble(),
              extent * random.nextDouble(),
              60 * random.nextDouble());
    }
    return path;
  }

  private static SamplePlan twoRuns(Random random) {
    SamplePlan plan = SamplePlan.whole();
    plan.run(Run.Kind.EMT, mm(10 + 20 * random.nextDouble()), path(random, 400));
    plan.run(Run.Kind.EMT, mm(10 + 20 * random.nextDouble()), path(random, 400));
    return plan;
  }

  private static List<Vector3D> points(SamplePlan plan, int run) {
    List<Vector3D> points = new ArrayList<>();
    for (Run.PathPoint point : plan.runs.get(run).path()) {
      FaceFrame frame = FaceFrame.of(point.face(), plan.shell);
      double warm = 25 + 41.3; // standoff and stud depth of every face of the sample
      Point at =
          frame.toModule(
              Lengths.millimetres(point.along()),
              Lengths.millimetres(point.up()),
              Lengths.millimetres(point.depth()) - warm);
      points.add(Vector3D.create(at.x(), at.y(), at.z()));
    }
    return points;
  }

  @Test
  void lengthsAndTurnsAreThoseOfTheVectorsBetweenThePoints() {
    Random random = new Random(11);
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = twoRuns(random);
      RunPaths paths = plan.geometry().paths();
      List<Vector3D> points = points(plan, 0);
      double length = 0;
      double turns = 0;
      for (int i = 1; i < points.size(); i++) {
        Vector3D way = points.get(i).subtract(points.get(i - 1));
        length += way.length();
        if (i + 1 < points.size()) {
          Vector3D next = points.get(i + 1).subtract(points.get(i));
          double turn = Math.toDegrees(Math.acos(way.normalize().dot(next.normalize())));
          assertThat(paths.turn(0, i)).isCloseTo(turn, within(1e-5));
          turns += turn;
        }
      }
      assertThat(paths.length(0)).isCloseTo(length, within(1e-6));
      assertThat(paths.turns(0)).isCloseTo(turns, within(1e-4));
    }
  }

  @Test
  void aCornerWrittenFromBothOfItsFacesTurnsOnce() {
    SamplePlan plan = SamplePlan.whole();
    double warm = 25 + 41.3;
    // On the left wall the rear wall's line of studs is at its own depth from the end, and back.
    plan.run(
        Run.Kind.EMT,
        mm(18),
        at(Face.LEFT, 1000, 500, 20),
        at(Face.LEFT, warm - 20, 500, 20),
        at(Face.REAR, plan.shell.width() - (warm - 20), 500, 20),
        at(Face.REAR, 1000, 500, 20));
    RunPaths paths = plan.geometry().paths();
    assertThat(paths.turns(0)).isCloseTo(90, within(1e-6));
    assertThat(paths.turn(0, 1)).isZero();
    assertThat(paths.turn(0, 2)).isCloseTo(90, within(1e-6));
  }

  @Test
  void whatIsMissingMakesLengthAndTurnsUnknown() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(
        Run.Kind.EMT,
        mm(18),
        at(Face.LEFT, 100, 500, 20),
        new Run.PathPoint("/runs/0/path/1", Face.LEFT, mm(900), null, mm(20)),
        at(Face.LEFT, 900, 900, 20));
    ModuleGeometry geometry = plan.geometry();
    assertThat(geometry.paths().length(0)).isNaN();
    assertThat(geometry.paths().turns(0)).isNaN();
    assertThat(geometry.paths().turn(0, 1)).isNaN();
    assertThat(geometry.runMissingForPath(0)).containsExactly("/runs/0/path/1/up");
  }

  /** Every point moved by no more than the tolerance gives a length within the bound. */
  @Test
  void lengthsOfWhatIsBuiltStayWithinTheTolerance() {
    Random random = new Random(12);
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = SamplePlan.whole();
      plan.tolerances = new Tolerances(null, null, mm(5), null);
      Run.PathPoint[] path = path(random, 400);
      Run.PathPoint[] built = new Run.PathPoint[path.length];
      for (int i = 0; i < path.length; i++) {
        built[i] =
            at(
                path[i].face(),
                Lengths.millimetres(path[i].along()) + 10 * random.nextDouble() - 5,
                Lengths.millimetres(path[i].up()) + 10 * random.nextDouble() - 5,
                Lengths.millimetres(path[i].depth()) + 10 * random.nextDouble() - 5);
      }
      plan.run(Run.Kind.EMT, mm(18), path);
      plan.run(Run.Kind.EMT, mm(18), built);
      RunPaths paths = plan.geometry().paths();
      assertThat(Math.abs(paths.length(0) - paths.length(1))).isLessThan(paths.lengthTolerance(0));
    }
  }

  @Test
  void whatLiesAlongsideIsWhatFineSamplesSay() {
    Random random = new Random(13);
    int some = 0;
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = twoRuns(random);
      ModuleGeometry geometry = plan.geometry();
      double distance = 80 * random.nextDouble();
      double reach =
          distance
              + Lengths.millimetres(plan.runs.get(0).diameter()) / 2
              + Lengths.millimetres(plan.runs.get(1).diameter()) / 2;
      double sampled = sampled(points(plan, 0), points(plan, 1), reach);
      double found = geometry.paths().lengthWithin(0, 1, distance);
      assertThat(found).isCloseTo(sampled, within(0.02 * geometry.paths().length(0)));
      some += found > 0 ? 1 : 0;
      // What is alongside at all is what the gap between the two is not greater than.
      assertThat(found > 0).isEqualTo(geometry.gapBetweenRuns(0, 1) <= distance);
    }
    assertThat(some).isBetween(LAYOUTS / 5, LAYOUTS * 4 / 5);
  }

  private static double sampled(List<Vector3D> line, List<Vector3D> other, double reach) {
    int samples = 500;
    double within = 0;
    for (int i = 1; i < line.size(); i++) {
      Vector3D way = line.get(i).subtract(line.get(i - 1));
      for (int s = 0; s < samples; s++) {
        Vector3D point = line.get(i - 1).add(way.divide(samples / (s + 0.5)));
        double least = Double.POSITIVE_INFINITY;
        for (int j = 1; j < other.size(); j++) {
          Vector3D along = other.get(j).subtract(other.get(j - 1));
          Vector3D from = point.subtract(other.get(j - 1));
          double share = from.dot(along) / along.dot(along);
          Vector3D foot = along.divide(1 / Math.max(1e-12, Math.min(1, share)));
          least = Math.min(least, from.subtract(foot).length());
        }
        within += least <= reach ? way.length() / samples : 0;
      }
    }
    return within;
  }

  @Test
  void parallelRunsLieAlongsideForAsLongAsTheyOverlap() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 100, 500, 20), at(Face.LEFT, 1100, 500, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 600, 545, 20), at(Face.LEFT, 3000, 545, 20));
    RunPaths paths = plan.geometry().paths();
    assertThat(paths.lengthWithin(0, 1, 25)).isCloseTo(500, within(0.1));
    assertThat(paths.lengthWithin(0, 1, 24.9)).isZero();
    // A circle of 50 mm around its end: 50 mm2 - 45 mm2 = 21.794 mm squared farther.
    assertThat(paths.lengthWithin(0, 1, 30)).isCloseTo(521.794, within(0.001));
  }

  @Test
  void runsWithinAreAllThatAreNear() {
    Random random = new Random(14);
    SamplePlan plan = SamplePlan.whole();
    plan.tolerances = new Tolerances(null, null, mm(2), null);
    int count = 120;
    for (int i = 0; i < count; i++) {
      plan.run(
          Run.Kind.EMT, i % 9 == 5 ? null : mm(10 + 20 * random.nextDouble()), path(random, 2500));
    }
    ModuleGeometry geometry = plan.geometry();
    int near = 0;
    int far = 0;
    for (int run = 0; run < count; run++) {
      double distance = 150 * random.nextDouble();
      List<Integer> found = new ArrayList<>();
      geometry.paths().runsWithin(run, distance, found::add);
      assertThat(found).doesNotHaveDuplicates().isSorted().doesNotContain(run);
      for (int other = 0; other < count; other++) {
        double gap = geometry.gapBetweenRuns(run, other);
        if (other != run && gap - geometry.gapToleranceBetweenRuns(run, other) <= distance) {
          assertThat(found).contains(other);
          near++;
        }
      }
      far += count - found.size();
    }
    assertThat(near).isGreaterThan(500);
    assertThat(far).isGreaterThan(500);
  }

  @Test
  void partsAtAnEndAreThoseThatItIsNotDrawnApartFrom() {
    Random random = new Random(15);
    int found = 0;
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = SamplePlan.whole();
      plan.tolerances = new Tolerances(null, null, mm(3 * random.nextDouble()), null);
      for (int i = 0; i < 6; i++) {
        plan.box(
            Face.LEFT,
            mm(400 * random.nextDouble()),
            mm(400 * random.nextDouble()),
            mm(54),
            mm(76),
            mm(47.6),
            Mount.FLUSH,
            null);
      }
      plan.run(Run.Kind.EMT, layout % 3 == 0 ? null : mm(18), path(random, 400));
      ModuleGeometry geometry = plan.geometry();
      for (boolean last : new boolean[] {false, true}) {
        List<Integer> expected = new ArrayList<>();
        for (int part = 0; part < 6; part++) {
          if (!geometry.paths().isEndApart(0, last, part)) {
            expected.add(part);
          }
        }
        List<Integer> actual = new ArrayList<>();
        geometry.paths().partsAtEnd(0, last, actual::add);
        assertThat(actual).containsExactlyInAnyOrderElementsOf(expected);
        found += actual.size();
      }
    }
    assertThat(found).isGreaterThan(500);
  }

  @Test
  void anEndIsApartByMoreThanItsRadiusAndTheContactTolerance() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, mm(500), mm(500), mm(54), mm(76), mm(47.6), Mount.FLUSH, null);
    for (double gap : new double[] {9.4, 9.6}) {
      plan.run(
          Run.Kind.EMT,
          mm(18),
          at(Face.LEFT, 527 + gap, 500, 10),
          new Run.PathPoint("/runs/0/path/1", Face.LEFT, null, mm(500), mm(10)));
    }
    RunPaths paths = plan.geometry().paths();
    assertThat(paths.isEndApart(0, false, 0)).isFalse();
    assertThat(paths.isEndApart(1, false, 0)).isTrue();
    // Where the other end is along the wall is not known, so it may be at the box.
    assertThat(paths.isEndApart(0, true, 0)).isFalse();
  }

  @Test
  void whatWaitsInTheWallBehindAPartOnTheLiningIsNotApartFromIt() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, mm(500), mm(500), mm(54), mm(76), mm(47.6), Mount.SURFACE, null);
    plan.run(Run.Kind.EMT, mm(18), at(Face.LEFT, 500, 500, 30), at(Face.LEFT, 500, 900, 30));
    RunPaths paths = plan.geometry().paths();
    assertThat(plan.geometry().runGap(0, 0)).isCloseTo(30 + 12.7 - 9, within(1e-6));
    assertThat(paths.isEndApart(0, false, 0)).isFalse();
    assertThat(paths.isEndApart(0, true, 0)).isTrue();
  }
}
