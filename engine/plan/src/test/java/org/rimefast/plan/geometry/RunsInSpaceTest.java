package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.at;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.rimefast.plan.Face;
import org.rimefast.plan.Material;
import org.rimefast.plan.Part;
import org.rimefast.plan.Placement;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild.Side;
import org.rimefast.plan.Tolerances;

/**
 * Where runs go, against sums done from the numbers that the plan was drawn with: crossings solved
 * in the coordinates of the face, bars and paths sampled point by point, lines given to JTS, and
 * plans whose points are moved at random within the tolerance.
 */
class RunsInSpaceTest {
  private static final int LAYOUTS = 2000;
  private static final double DEPTH = 41.3; // of the studs

  /** A run as drawn: along, up and depth of each point. */
  private record Drawn(double[][] points, double radius) {
    static Drawn random(Random random, double width, double height) {
      double[][] points = new double[2 + random.nextInt(4)][];
      for (int i = 0; i < points.length; i++) {
        points[i] =
            new double[] {
              rounded(200 + width * random.nextDouble()),
              rounded(300 + height * random.nextDouble()),
              rounded(-10 + 60 * random.nextDouble())
            };
      }
      return new Drawn(points, rounded(4 + 12 * random.nextDouble()));
    }

    int addTo(SamplePlan plan, Face face) {
      Run.PathPoint[] path = new Run.PathPoint[points.length];
      for (int i = 0; i < path.length; i++) {
        path[i] = at(face, points[i][0], points[i][1], points[i][2]);
      }
      return plan.run(Run.Kind.EMT, mm(2 * radius), path);
    }

    /** The same with each point moved by at most {@code by} along each axis. */
    Drawn moved(Random random, double by) {
      double[][] moved = new double[points.length][];
      for (int i = 0; i < moved.length; i++) {
        moved[i] = new double[3];
        for (int axis = 0; axis < 3; axis++) {
          moved[i][axis] = points[i][axis] + by * (2 * random.nextDouble() - 1);
        }
      }
      return new Drawn(moved, radius);
    }
  }

  /** A stud as drawn, with the middles of its holes, each 40 wide and 110 high. */
  private record Upright(double along, double low, double high, double[] holes) {
    static final double WIDTH = 32;
    static final double HEIGHT = 110;

    static Upright random(Random random) {
      double low = rounded(100 + 400 * random.nextDouble());
      double[] holes = new double[random.nextInt(4)];
      for (int i = 0; i < holes.length; i++) {
        holes[i] = rounded(low + 1200 * random.nextDouble());
      }
      return new Upright(
          rounded(300 + 800 * random.nextDouble()),
          low,
          rounded(low + 300 + 900 * random.nextDouble()),
          holes);
    }

    int addTo(SamplePlan plan, Face face) {
      int index = plan.parts.size();
      List<Part.ServiceHole> all = new ArrayList<>();
      for (double up : holes) {
        all.add(
            new Part.ServiceHole(
                "/studs/" + index + "/holes/" + all.size(), mm(up), mm(WIDTH), mm(HEIGHT)));
      }
      plan.parts.add(
          new Part.Stud(
              "part-" + index,
              "/studs/" + index,
              new Placement(
                  face,
                  mm(along),
                  mm((low + high) / 2),
                  null,
                  mm(high - low),
                  null,
                  null,
                  Material.STEEL),
              null,
              all));
      return index;
    }
  }

  private static double rounded(double value) {
    return Math.round(10 * value) / 10.0;
  }

  private static SamplePlan tolerant(double electrical, double framing) {
    SamplePlan plan = SamplePlan.whole();
    plan.tolerances = new Tolerances(null, mm(framing), mm(electrical), null);
    return plan;
  }

  /** Where a run goes through a stud's web: up, depth, and the two points of the segment. */
  private static List<double[][]> crossings(Drawn run, Upright stud) {
    List<double[][]> found = new ArrayList<>();
    for (int i = 0; i + 1 < run.points().length; i++) {
      double[] a = run.points()[i];
      double[] b = run.points()[i + 1];
      if ((a[0] < stud.along()) != (b[0] < stud.along())) {
        double t = (stud.along() - a[0]) / (b[0] - a[0]);
        double up = a[1] + t * (b[1] - a[1]);
        double depth = a[2] + t * (b[2] - a[2]);
        if (up >= stud.low() && up <= stud.high() && depth >= 0 && depth <= DEPTH) {
          found.add(new double[][] {{up, depth}, a, b});
        }
      }
    }
    return found;
  }

  /** The outline that a round bar cuts out of the plane of a web, as points of up and depth. */
  private static double[][] outline(Drawn run, double[][] crossing, int steps) {
    double[] d = new double[3];
    double length = 0;
    for (int axis = 0; axis < 3; axis++) {
      d[axis] = crossing[2][axis] - crossing[1][axis];
      length += d[axis] * d[axis];
    }
    length = Math.sqrt(length);
    double[] axisOfLeast =
        Math.abs(d[1]) < Math.abs(d[2]) ? new double[] {0, 1, 0} : new double[] {0, 0, 1};
    double[] n = cross(d, axisOfLeast);
    double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    double[] m = cross(d, n);
    double[][] points = new double[steps][];
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI * i / steps;
      double[] off = new double[3];
      for (int axis = 0; axis < 3; axis++) {
        off[axis] =
            run.radius()
                * (Math.cos(angle) * n[axis] / size + Math.sin(angle) * m[axis] / (size * length));
      }
      double t = -off[0] / d[0];
      points[i] =
          new double[] {crossing[0][0] + off[1] + t * d[1], crossing[0][1] + off[2] + t * d[2]};
    }
    return points;
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  @Test
  void studsHolesOffsetsAndSetBacksAreThoseThatSectionsOfTheDrawingShow() {
    Random random = new Random(1);
    int[] seen = new int[4];
    for (int layout = 0; layout < LAYOUTS; layout++) {
      Face face = Face.values()[random.nextInt(4)];
      SamplePlan plan = SamplePlan.whole();
      Upright[] studs = new Upright[3];
      for (int i = 0; i < studs.length; i++) {
        studs[i] = Upright.random(random);
        studs[i].addTo(plan, face);
      }
      Drawn run = Drawn.random(random, 1000, 1000);
      run.addTo(plan, face);
      RunsInSpace runs = plan.geometry().runs();
      double lowest = Double.POSITIVE_INFINITY;
      double highest = Double.NEGATIVE_INFINITY;
      for (int stud = 0; stud < studs.length; stud++) {
        List<double[][]> expected = crossings(run, studs[stud]);
        assertThat(runs.passes(0, stud))
            .isEqualTo(expected.isEmpty() ? Certainty.NO : Certainty.YES);
        assertThat(runs.passCount(0, stud)).isEqualTo(expected.size());
        seen[expected.isEmpty() ? 0 : 1]++;
        boolean everyInHole = !expected.isEmpty();
        for (int i = 0; i < expected.size(); i++) {
          StudPass pass = runs.pass(0, stud, i);
          double up = expected.get(i)[0][0];
          assertThat(pass.up().drawn()).isCloseTo(up, within(1e-6));
          double setBack = Double.POSITIVE_INFINITY;
          for (double[] point : outline(run, expected.get(i), 360)) {
            setBack = Math.min(setBack, point[1]);
          }
          // Between two of 360 points an ellipse bulges by little.
          assertThat(pass.setBack().drawn())
              .isCloseTo(setBack, within(1e-4 * (1 + DEPTH - setBack)));
          double level = Double.NaN;
          boolean inHole = false;
          for (double hole : studs[stud].holes()) {
            level = !(Math.abs(level - up) <= Math.abs(hole - up)) ? hole : level;
            boolean all = true;
            for (double[] point : outline(run, expected.get(i), 360)) {
              all &= Math.abs(point[0] - hole) <= Upright.HEIGHT / 2;
              all &= Math.abs(point[1] - DEPTH / 2) <= Upright.WIDTH / 2;
            }
            inHole |= all;
          }
          everyInHole &= inHole;
          if (studs[stud].holes().length == 0) {
            assertThat(pass.hole()).isEqualTo(-1);
          } else {
            assertThat(pass.offset().drawn()).isCloseTo(Math.abs(level - up), within(1e-6));
            assertThat(pass.level().drawn()).isCloseTo(level, within(1e-6));
            lowest = Math.min(lowest, level);
            highest = Math.max(highest, level);
          }
        }
        assertThat(runs.passesHole(0, stud)).isEqualTo(everyInHole ? Certainty.YES : Certainty.NO);
        seen[everyInHole ? 2 : 3]++;
      }
      double spread = Math.max(0, highest - lowest);
      assertThat(runs.holeSpread(0, false)).isCloseTo(spread, within(1e-6));
      assertThat(runs.holeSpread(0, true)).isCloseTo(spread, within(1e-6));
    }
    assertThat(Arrays.stream(seen).min().orElseThrow()).isGreaterThan(50);
  }

  @Test
  void whatTheToleranceLeavesNoDoubtOfHoldsForEveryPlanWithinIt() {
    Random random = new Random(2);
    int[] seen = new int[3];
    int[] holes = new int[3];
    for (int layout = 0; layout < LAYOUTS; layout++) {
      double electrical = rounded(0.1 + 8 * random.nextDouble());
      double framing = rounded(0.1 + 8 * random.nextDouble());
      SamplePlan plan = tolerant(electrical, framing);
      Upright stud = Upright.random(random);
      stud.addTo(plan, Face.LEFT);
      Drawn run = Drawn.random(random, 1000, 1000);
      run.addTo(plan, Face.LEFT);
      RunsInSpace runs = plan.geometry().runs();
      Certainty passes = runs.passes(0, 0);
      Certainty inHole = runs.passesHole(0, 0);
      seen[passes.ordinal()]++;
      holes[inHole.ordinal()]++;
      for (int i = 0; i < 15; i++) {
        Drawn moved = run.moved(random, electrical);
        double aside = framing * (2 * random.nextDouble() - 1);
        double up = framing * (2 * random.nextDouble() - 1);
        Upright other =
            new Upright(stud.along() + aside, stud.low() + up, stud.high() + up, stud.holes());
        List<double[][]> crossings = crossings(moved, other);
        if (passes != Certainty.POSSIBLE) {
          assertThat(!crossings.isEmpty()).isEqualTo(passes == Certainty.YES);
        }
        boolean every = !crossings.isEmpty();
        for (double[][] crossing : crossings) {
          boolean any = false;
          for (double hole : stud.holes()) {
            boolean all = true;
            for (double[] point : outline(moved, crossing, 90)) {
              all &= Math.abs(point[0] - hole) <= Upright.HEIGHT / 2;
              all &= Math.abs(point[1] - DEPTH / 2) <= Upright.WIDTH / 2;
            }
            any |= all;
          }
          every &= any;
        }
        if (inHole == Certainty.YES) {
          assertThat(every).isTrue();
        } else if (inHole == Certainty.NO) {
          assertThat(every).isFalse();
        }
      }
    }
    assertThat(Arrays.stream(seen).min().orElseThrow()).isGreaterThan(30);
    assertThat(holes[0] * holes[2]).isPositive();
  }

  @Test
  void aDripLoopIsTheLowestPointOfThePathBeforeItFirstClimbsAboveTheEntry() {
    Random random = new Random(3);
    int loops = 0;
    for (int layout = 0; layout < LAYOUTS; layout++) {
      double tolerance = layout % 2 == 0 ? 0 : rounded(10 * random.nextDouble());
      SamplePlan plan = tolerant(tolerance, 0);
      Drawn run = Drawn.random(random, 1000, 200);
      run.addTo(plan, Face.LEFT);
      RunsInSpace runs = plan.geometry().runs();
      boolean last = random.nextBoolean();
      double drawn = sampledDrip(run, last);
      loops += drawn > 0 ? 1 : 0;
      assertThat(runs.dripLoop(0, last, false)).isLessThanOrEqualTo(drawn + 1e-6);
      assertThat(runs.dripLoop(0, last, true)).isGreaterThanOrEqualTo(drawn - 1e-6);
      if (tolerance == 0) {
        assertThat(runs.dripLoop(0, last, false)).isCloseTo(drawn, within(1e-6));
        assertThat(runs.dripLoop(0, last, true)).isCloseTo(drawn, within(1e-6));
        int lowest = runs.lowest(0, last);
        assertThat(runs.point(0, last, 0).z() - runs.point(0, last, lowest).z())
            .isCloseTo(drawn, within(1e-6));
      }
      for (int i = 0; i < 10; i++) {
        double moved = sampledDrip(run.moved(random, tolerance), last);
        assertThat(moved)
            .isBetween(runs.dripLoop(0, last, false) - 1e-6, runs.dripLoop(0, last, true) + 1e-6);
      }
    }
    assertThat(loops).isBetween(300, LAYOUTS - 300);
  }

  /** Follows the path from an end in small steps; every point of the path is one of them. */
  private static double sampledDrip(Drawn run, boolean last) {
    int count = run.points().length;
    double entry = run.points()[last ? count - 1 : 0][1];
    double lowest = entry;
    for (int i = 0; i + 1 < count; i++) {
      double from = run.points()[last ? count - 1 - i : i][1];
      double to = run.points()[last ? count - 2 - i : i + 1][1];
      for (int step = 0; step <= 200; step++) {
        double up = from + (to - from) * step / 200;
        if (up > entry + 1e-9) {
          return entry - lowest;
        }
        lowest = Math.min(lowest, up);
      }
    }
    return entry - lowest;
  }

  private static LineString line(Drawn run) {
    Coordinate[] points = new Coordinate[run.points().length];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(run.points()[i][0], run.points()[i][1]);
    }
    return new GeometryFactory().createLineString(points);
  }

  @Test
  void runsCrossWhereTheirLinesDoAsAGeometryLibrarySeesThem() {
    Random random = new Random(4);
    int crossed = 0;
    for (int layout = 0; layout < LAYOUTS; layout++) {
      Face face = Face.values()[random.nextInt(6)];
      SamplePlan plan = SamplePlan.whole();
      Drawn[] drawn = new Drawn[4];
      for (int i = 0; i < drawn.length; i++) {
        drawn[i] = Drawn.random(random, 500, 500);
        drawn[i].addTo(plan, face);
      }
      RunsInSpace runs = plan.geometry().runs();
      for (int a = 0; a < drawn.length; a++) {
        for (int b = 0; b < drawn.length; b++) {
          boolean expected = a != b && line(drawn[a]).crosses(line(drawn[b]));
          assertThat(runs.cross(a, b)).isEqualTo(expected ? Certainty.YES : Certainty.NO);
          crossed += expected ? 1 : 0;
        }
      }
    }
    assertThat(crossed).isGreaterThan(1000);
  }

  @Test
  void crossingsThatTheToleranceLeavesNoDoubtOfStay() {
    Random random = new Random(5);
    int[] seen = new int[3];
    for (int layout = 0; layout < LAYOUTS; layout++) {
      double tolerance = rounded(0.1 + 15 * random.nextDouble());
      SamplePlan plan = tolerant(tolerance, 0);
      Drawn one = Drawn.random(random, 500, 500);
      Drawn two = Drawn.random(random, 500, 500);
      one.addTo(plan, Face.RIGHT);
      two.addTo(plan, Face.RIGHT);
      Certainty cross = plan.geometry().runs().cross(0, 1);
      seen[cross.ordinal()]++;
      for (int i = 0; i < 20 && cross != Certainty.POSSIBLE; i++) {
        assertThat(line(one.moved(random, tolerance)).crosses(line(two.moved(random, tolerance))))
            .isEqualTo(cross == Certainty.YES);
      }
    }
    assertThat(Arrays.stream(seen).min().orElseThrow()).isGreaterThan(100);
  }

  @Test
  void runsThatEndOnOneAnotherOrRunOneOverTheOtherDoNotCross() {
    SamplePlan plan = SamplePlan.whole();
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 500, 600, 20), at(Face.LEFT, 900, 600, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 700, 600, 20), at(Face.LEFT, 700, 900, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 600, 600, 50), at(Face.LEFT, 1200, 600, 50));
    plan.run(
        Run.Kind.EMT,
        mm(20),
        at(Face.LEFT, 800, 400, 20),
        at(Face.LEFT, 800, 600, 20),
        at(Face.LEFT, 800, 900, 20));
    RunsInSpace runs = plan.geometry().runs();
    assertThat(runs.cross(0, 1)).isEqualTo(Certainty.NO);
    assertThat(runs.cross(0, 2)).isEqualTo(Certainty.NO);
    assertThat(runs.cross(0, 3)).isEqualTo(Certainty.YES);
    assertThat(runs.crossing(0, 3)).isEqualTo(new Crossing(Face.LEFT, 800, 600));
    assertThat(runs.crossing(0, 1)).isNull();
  }

  @Test
  void theSetBackOfARunIsTheLeastOfItsPoints() {
    Random random = new Random(6);
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = SamplePlan.whole();
      Drawn run = Drawn.random(random, 1000, 1000);
      run.addTo(plan, Face.FRONT);
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i + 1 < run.points().length; i++) {
        for (int step = 0; step <= 50; step++) {
          double from = run.points()[i][2];
          double depth = from + (run.points()[i + 1][2] - from) * step / 50;
          least = Math.min(least, depth - run.radius());
        }
      }
      assertThat(-plan.geometry().proud(0)).isCloseTo(least, within(1e-6));
    }
  }

  @Test
  void theClearanceOfAStretchIsThatOfItsPoints() {
    Random random = new Random(7);
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = SamplePlan.whole();
      Drawn run = Drawn.random(random, 300, 300);
      run.addTo(plan, Face.LEFT);
      ModuleGeometry geometry = plan.geometry();
      RunsInSpace runs = geometry.runs();
      double length = runs.length(0);
      double from = length * random.nextDouble();
      double to = from + (length - from) * random.nextDouble();
      CorrugatedSheet sheet = geometry.sheet(Face.LEFT);
      double least = Double.POSITIVE_INFINITY;
      double done = 0;
      double step = 0.5;
      for (int i = 0; i + 1 < run.points().length; i++) {
        double[] a = run.points()[i];
        double[] b = run.points()[i + 1];
        double way =
            Math.sqrt(
                Math.pow(b[0] - a[0], 2) + Math.pow(b[1] - a[1], 2) + Math.pow(b[2] - a[2], 2));
        for (double s = Math.max(0, from - done); s <= Math.min(way, to - done); s += step) {
          double t = s / way;
          double along = a[0] + t * (b[0] - a[0]);
          double up = a[1] + t * (b[1] - a[1]);
          double out = a[2] + t * (b[2] - a[2]) - DEPTH - 25;
          if (sheet != null) {
            least = Math.min(least, sheet.distance(along, up, out, along, up, out));
          }
        }
        done += way;
      }
      double expected = Math.max(0, least - run.radius());
      // The floor and the other walls are farther; a step misses the nearest point by at most half.
      assertThat(runs.clearance(0, from, to)).isBetween(expected - step, expected + 1e-6);
      assertThat(runs.clearance(0, 0, length)).isCloseTo(geometry.runClearance(0), within(1e-6));
    }
  }

  @Test
  void overlapsAreThoseThatSampledPointsShow() {
    Random random = new Random(8);
    int[] seen = new int[2];
    for (int layout = 0; layout < LAYOUTS; layout++) {
      SamplePlan plan = SamplePlan.whole();
      double along = rounded(300 + 300 * random.nextDouble());
      double up = rounded(400 + 300 * random.nextDouble());
      plan.bar(Face.LEFT, along, up, 100, 80, 40, 5, Material.WOOD);
      Drawn run = Drawn.random(random, 500, 500);
      run.addTo(plan, Face.LEFT);
      double deepest = Double.NEGATIVE_INFINITY; // of the middle line in the bar
      for (int i = 0; i + 1 < run.points().length; i++) {
        for (int step = 0; step <= 2000; step++) {
          double[] p = new double[3];
          for (int axis = 0; axis < 3; axis++) {
            double from = run.points()[i][axis];
            p[axis] = from + (run.points()[i + 1][axis] - from) * step / 2000;
          }
          double x = Math.abs(p[0] - along) - 50;
          double y = Math.abs(p[1] - up) - 40;
          double z = Math.abs(p[2] - 25) - 20;
          double outside =
              Math.sqrt(
                  Math.pow(Math.max(0, x), 2)
                      + Math.pow(Math.max(0, y), 2)
                      + Math.pow(Math.max(0, z), 2));
          double inside = Math.min(0, Math.max(x, Math.max(y, z)));
          deepest = Math.max(deepest, -outside - inside);
        }
      }
      double expected = run.radius() + deepest;
      RunsInSpace runs = plan.geometry().runs();
      assertThat(runs.overlap(0, 0)).isCloseTo(expected, within(0.4));
      if (Math.abs(expected - 0.5) > 0.4) {
        boolean overlaps = expected > 0.5; // the contact tolerance
        assertThat(runs.overlaps(0, 0)).isEqualTo(overlaps ? Certainty.YES : Certainty.NO);
        seen[overlaps ? 1 : 0]++;
      }
    }
    assertThat(Arrays.stream(seen).min().orElseThrow()).isGreaterThan(200);
  }

  @Test
  void whatARunMayTouchIsFoundAmongAllPairs() {
    Random random = new Random(9);
    int found = 0;
    for (int layout = 0; layout < 100; layout++) {
      SamplePlan plan = tolerant(rounded(4 * random.nextDouble()), 2);
      for (int i = 0; i < 20; i++) {
        plan.box(Face.LEFT, 200 + 1500 * random.nextDouble(), 300 + 1000 * random.nextDouble());
        Drawn.random(random, 1500, 1000).addTo(plan, Face.LEFT);
      }
      ModuleGeometry geometry = plan.geometry();
      for (int run = 0; run < 20; run++) {
        List<Integer> parts = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
          if (geometry.runGap(run, i) - geometry.runGapTolerance(run, i) <= 0.5) {
            parts.add(i);
          }
          if (i != run
              && geometry.gapBetweenRuns(run, i) - geometry.gapToleranceBetweenRuns(run, i)
                  <= 0.5) {
            others.add(i);
          }
        }
        List<Integer> foundParts = new ArrayList<>();
        List<Integer> foundRuns = new ArrayList<>();
        geometry.runs().partsAtRun(run, foundParts::add);
        geometry.runs().runsAtRun(run, 0, foundRuns::add);
        assertThat(foundParts).containsExactlyInAnyOrderElementsOf(parts);
        assertThat(foundRuns).containsExactlyInAnyOrderElementsOf(others);
        int of = run;
        parts.forEach(
            part -> {
              List<Integer> back = new ArrayList<>();
              geometry.runs().runsAtPart(part, 0, back::add);
              assertThat(back).contains(of);
            });
        found += parts.size() + others.size();
      }
    }
    assertThat(found).isGreaterThan(500);
  }

  @Test
  void theSideByWhichARunComesIsThatOfItsEnd() {
    SamplePlan plan = SamplePlan.whole();
    plan.box(Face.LEFT, 500, 1200); // 54 wide, 90 high, from -12.7 to 34.9 deep
    plan.run(Run.Kind.EMT, mm(10), at(Face.LEFT, 500, 2000, 10), at(Face.LEFT, 500, 1246, 10));
    plan.run(Run.Kind.EMT, mm(10), at(Face.LEFT, 200, 1190, 10), at(Face.LEFT, 490, 1195, 12));
    plan.run(Run.Kind.EMT, mm(10), at(Face.LEFT, 500, 1200, 10), at(Face.LEFT, 505, 1205, 60));
    plan.run(Run.Kind.EMT, mm(10), at(Face.LEFT, 500, 500, 10), at(Face.LEFT, 500, 1000, 10));
    RunsInSpace runs = plan.geometry().runs();
    assertThat(runs.side(0, true, 0)).isEqualTo(Side.ABOVE);
    assertThat(runs.side(1, true, 0)).isEqualTo(Side.LEFT);
    assertThat(runs.side(2, false, 0)).isEqualTo(Side.BACK);
    assertThat(runs.side(3, true, 0)).as("it ends 155 mm below the box").isNull();
    plan.tolerances = new Tolerances(null, null, mm(20), null);
    assertThat(plan.geometry().runs().side(1, true, 0))
        .as("both may be off by 20 mm, and the bottom is 38 mm away")
        .isNull();
  }

  @Test
  void zonesAreThoseOfTheProfile() {
    // Ribs 0 to 72, webs to 140 and 278, bays 140 to 210, and again every 278 mm.
    SamplePlan plan = SamplePlan.whole();
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 175, 500, 20), at(Face.LEFT, 175, 900, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 202, 500, 20), at(Face.LEFT, 202, 900, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 30, 500, 20), at(Face.LEFT, 175, 500, 20));
    RunsInSpace runs = plan.geometry().runs();
    assertThat(runs.liesIn(0, Zone.OUTER_BAY)).isEqualTo(Certainty.YES);
    assertThat(runs.liesIn(1, Zone.OUTER_BAY)).isEqualTo(Certainty.NO);
    assertThat(runs.faces(0, Zone.INWARD_RIB)).isEqualTo(Certainty.NO);
    assertThat(runs.faces(2, Zone.INWARD_RIB)).isEqualTo(Certainty.YES);
    plan.tolerances = new Tolerances(null, null, mm(30), null);
    assertThat(plan.geometry().runs().liesIn(0, Zone.OUTER_BAY)).isEqualTo(Certainty.POSSIBLE);
  }

  @Test
  void whatIsNotKnownIsPossibleUnlessWhatIsKnownRulesItOut() {
    SamplePlan plan = SamplePlan.whole();
    Upright.random(new Random(10)).addTo(plan, Face.LEFT);
    plan.parts.add(
        new Part.Stud(
            "lost",
            "/studs/1",
            new Placement(Face.LEFT, null, mm(1000), null, mm(400), null, null, Material.STEEL),
            null,
            List.of()));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 0, 1000, 20), at(Face.LEFT, 3000, 1000, 20));
    plan.run(Run.Kind.EMT, mm(20), at(Face.LEFT, 0, 500, 20), at(Face.LEFT, 3000, 500, 20));
    plan.run(
        Run.Kind.EMT, mm(20), at(Face.LEFT, mm(0), null, mm(20)), at(Face.LEFT, 3000, 500, 20));
    RunsInSpace runs = plan.geometry().runs();
    assertThat(runs.passes(0, 1)).isEqualTo(Certainty.POSSIBLE);
    assertThat(runs.missingForPass(0, 1)).containsExactly("/studs/1/along");
    assertThat(runs.passes(1, 1)).isEqualTo(Certainty.NO);
    assertThat(runs.passes(2, 0)).isEqualTo(Certainty.POSSIBLE);
    assertThat(runs.holeSpread(0, true)).isNaN();
    assertThat(runs.missingForHoleSpread(0)).containsExactly("/studs/1/along");
    assertThat(runs.cross(0, 2)).isEqualTo(Certainty.POSSIBLE);
    assertThat(runs.dripLoop(2, true, true)).isNaN();
  }
}
