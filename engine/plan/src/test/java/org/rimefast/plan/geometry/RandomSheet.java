package org.rimefast.plan.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Opening;
import org.rimefast.plan.ShellSize;

/**
 * A random sheet of a front wall, and the same sheet as plain lists of corners and holes, made
 * without the code under test. s runs across the ribs, t along them, o outward.
 */
final class RandomSheet {
  final double extentS;
  final double extentT;
  final boolean upright;
  final CorrugationProfile profile;
  final double phase;

  /** from, minT, to, maxT of each hole. */
  final List<double[]> holes = new ArrayList<>();

  final CorrugatedSheet sheet;

  RandomSheet(Random random, double greatest, int mostHoles) {
    extentS = greatest * (0.2 + 0.8 * random.nextDouble());
    extentT = greatest * (0.2 + 0.8 * random.nextDouble());
    upright = random.nextBoolean();
    boolean flat = random.nextInt(20) == 0;
    profile =
        new CorrugationProfile(
            "random",
            width(random, 20, 150),
            width(random, 0, 80),
            10 + 140 * random.nextDouble(),
            flat ? 0 : 5 + 60 * random.nextDouble());
    phase = (random.nextDouble() - 0.5) * 1000;
    SamplePlan plan = new SamplePlan();
    int count = random.nextInt(mostHoles + 1);
    for (int i = 0; i < count; i++) {
      double from = extentS * (1.1 * random.nextDouble() - 0.1);
      double minT = extentT * (1.1 * random.nextDouble() - 0.1);
      double to = from + extentS * 0.4 * random.nextDouble();
      double maxT = minT + extentT * 0.4 * random.nextDouble();
      holes.add(new double[] {from, minT, to, maxT});
      if (upright) {
        plan.opening(Face.FRONT, from, minT, to - from, maxT - minT);
      } else {
        plan.opening(Face.FRONT, minT, from, maxT - minT, to - from);
      }
    }
    List<Opening> openings = plan.openings;
    plan.face(
        Face.FRONT,
        profile,
        SamplePlan.mm(phase),
        null,
        upright ? Ribs.UPRIGHT : Ribs.LEVEL,
        null,
        null);
    FaceBuild build = Objects.requireNonNull(plan.faces.get(Face.FRONT));
    ShellSize shell =
        new ShellSize("random", 1000, upright ? extentS : extentT, upright ? extentT : extentS);
    sheet = Objects.requireNonNull(CorrugatedSheet.of(build, shell, openings));
  }

  /** Now and then 0: webs may stand upright and bays may be a mere edge. */
  private static double width(Random random, double least, double greatest) {
    return random.nextInt(10) == 0 ? 0 : least + (greatest - least) * random.nextDouble();
  }

  /** The corners of the whole cross-section, in order, past both ends of the face. */
  List<double[]> corners() {
    List<double[]> corners = new ArrayList<>();
    if (profile.depth() == 0) {
      corners.add(new double[] {-1, 0});
      corners.add(new double[] {extentS + 1, 0});
      return corners;
    }
    double s = phase;
    while (s > -1) {
      s -= profile.outer() + profile.inner() + 2 * profile.web();
    }
    while (s < extentS + 1) {
      corners.add(new double[] {s, 0});
      s += profile.inner();
      corners.add(new double[] {s, 0});
      s += profile.web();
      corners.add(new double[] {s, profile.depth()});
      s += profile.outer();
      corners.add(new double[] {s, profile.depth()});
      s += profile.web();
    }
    corners.add(new double[] {s, 0});
    return corners;
  }

  double distance(double minS, double minT, double minO, double maxS, double maxT, double maxO) {
    return upright
        ? sheet.distance(minS, minT, minO, maxS, maxT, maxO)
        : sheet.distance(minT, minS, minO, maxT, maxS, maxO);
  }

  double segmentDistance(double s1, double t1, double o1, double s2, double t2, double o2) {
    return upright
        ? sheet.segmentDistance(s1, t1, o1, s2, t2, o2)
        : sheet.segmentDistance(t1, s1, o1, t2, s2, o2);
  }

  boolean isSteel(double s, double t) {
    return holes.stream()
        .noneMatch(hole -> s > hole[0] && s < hole[2] && t > hole[1] && t < hole[3]);
  }
}
