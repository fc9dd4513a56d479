package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Distances of straight segments in space against two plain methods that share nothing with the
 * code: points sampled on both bodies, between which the distance cannot be greater and, by how far
 * apart the samples are, not much less; and a ternary search along the segment, to each of whose
 * points the nearest point of every facet is found by itself.
 */
class SegmentDistanceTest {
  /** Of one facet: start and end of the piece (s, o), then its range in t. */
  private record Facet(double s1, double o1, double s2, double o2, double minT, double maxT) {
    double distance(double s, double t, double o) {
      double square = (s2 - s1) * (s2 - s1) + (o2 - o1) * (o2 - o1);
      double share = square == 0 ? 0 : ((s - s1) * (s2 - s1) + (o - o1) * (o2 - o1)) / square;
      double at = Math.max(0, Math.min(1, share));
      double ds = s1 + at * (s2 - s1) - s;
      double dt = Math.max(minT, Math.min(maxT, t)) - t;
      double dO = o1 + at * (o2 - o1) - o;
      return Math.sqrt(ds * ds + dt * dt + dO * dO);
    }
  }

  /** The facets of a sheet, cut wherever a hole begins or ends in either direction. */
  private static List<Facet> facets(RandomSheet sheet) {
    List<Facet> facets = new ArrayList<>();
    List<double[]> corners = sheet.corners();
    double[] cutsS = cuts(sheet, 0, sheet.extentS);
    double[] cutsT = cuts(sheet, 1, sheet.extentT);
    for (int c = 0; c + 1 < corners.size(); c++) {
      double[] a = corners.get(c);
      double[] b = corners.get(c + 1);
      for (int i = 0; i + 1 < cutsS.length; i++) {
        double from = Math.max(a[0], cutsS[i]);
        double to = Math.min(b[0], cutsS[i + 1]);
        for (int j = 0; j + 1 < cutsT.length; j++) {
          boolean steel =
              sheet.isSteel((cutsS[i] + cutsS[i + 1]) / 2, (cutsT[j] + cutsT[j + 1]) / 2);
          if (from <= to && steel && cutsS[i] < cutsS[i + 1] && cutsT[j] < cutsT[j + 1]) {
            facets.add(
                new Facet(
                    from,
                    outAt(a, b, from, true),
                    to,
                    outAt(a, b, to, false),
                    cutsT[j],
                    cutsT[j + 1]));
          }
        }
      }
    }
    return facets;
  }

  private static double outAt(double[] a, double[] b, double s, boolean first) {
    if (a[0] == b[0]) {
      return first ? a[1] : b[1];
    }
    return a[1] + (s - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
  }

  private static double[] cuts(RandomSheet sheet, int index, double extent) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, extent));
    for (double[] hole : sheet.holes) {
      cuts.add(Math.max(0, Math.min(extent, hole[index])));
      cuts.add(Math.max(0, Math.min(extent, hole[index + 2])));
    }
    return cuts.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  /** The least value of a convex function of 0 to 1. */
  private static double leastOf(DoubleUnaryOperator convex) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 120; i++) {
      double third = (high - low) / 3;
      if (convex.applyAsDouble(low + third) <= convex.applyAsDouble(high - third)) {
        high -= third;
      } else {
        low += third;
      }
    }
    double inner = convex.applyAsDouble((low + high) / 2);
    return Math.min(inner, Math.min(convex.applyAsDouble(0), convex.applyAsDouble(1)));
  }

  private static double[] randomSegment(Random random, RandomSheet sheet, int i) {
    double length = i % 4 == 0 ? 1000 : 150;
    double s = sheet.extentS * (1.2 * random.nextDouble() - 0.1);
    double t = sheet.extentT * (1.2 * random.nextDouble() - 0.1);
    double o = 30 - 150 * random.nextDouble();
    double[] segment = {
      s,
      t,
      o,
      s + length * (random.nextDouble() - 0.5),
      t + length * (random.nextDouble() - 0.5),
      o + 120 * (random.nextDouble() - 0.5)
    };
    if (i % 7 == 0) {
      segment[3] = s; // along the ribs
      segment[5] = o;
    } else if (i % 11 == 0) {
      segment[4] = t; // across them
      segment[5] = o;
    }
    return segment;
  }

  @Test
  void distancesToTheSheetAgreeWithASearchOverEveryFacet() {
    Random random = new Random(77);
    int crossing = 0;
    for (int i = 0; i < 3000; i++) {
      RandomSheet sheet = new RandomSheet(random, 900, i % 3);
      double[] g = randomSegment(random, sheet, i);
      double expected = Double.POSITIVE_INFINITY;
      for (Facet facet : facets(sheet)) {
        double least =
            leastOf(
                u ->
                    facet.distance(
                        g[0] + u * (g[3] - g[0]),
                        g[1] + u * (g[4] - g[1]),
                        g[2] + u * (g[5] - g[2])));
        expected = Math.min(expected, least);
      }
      double actual = sheet.segmentDistance(g[0], g[1], g[2], g[3], g[4], g[5]);
      // The search itself stops at the rounding of its flat bottom, some 1e-7 beside the minimum.
      assertThat(actual).as("segment %d", i).isCloseTo(expected, within(1e-6));
      crossing += actual < 1e-6 ? 1 : 0;
    }
    assertThat(crossing).isBetween(200, 1500);
  }

  @Test
  void distancesToTheSheetLieBetweenTheBoundsThatSamplesGive() {
    Random random = new Random(78);
    for (int i = 0; i < 2000; i++) {
      RandomSheet sheet = new RandomSheet(random, 400, i % 3);
      double[] g = randomSegment(random, sheet, i);
      double step = 8;
      double least = Double.POSITIVE_INFINITY;
      int samples = 40;
      for (Facet facet : facets(sheet)) {
        int piecesU = (int) Math.ceil(Math.hypot(facet.s2 - facet.s1, facet.o2 - facet.o1) / step);
        int piecesT = (int) Math.ceil((facet.maxT - facet.minT) / step);
        for (int a = 0; a <= piecesU; a++) {
          double u = piecesU == 0 ? 0 : (double) a / piecesU;
          double s = facet.s1 + u * (facet.s2 - facet.s1);
          double o = facet.o1 + u * (facet.o2 - facet.o1);
          for (int b = 0; b <= piecesT; b++) {
            double t = facet.minT + (facet.maxT - facet.minT) * b / piecesT;
            for (int c = 0; c <= samples; c++) {
              double v = (double) c / samples;
              double ds = g[0] + v * (g[3] - g[0]) - s;
              double dt = g[1] + v * (g[4] - g[1]) - t;
              double dO = g[2] + v * (g[5] - g[2]) - o;
              least = Math.min(least, ds * ds + dt * dt + dO * dO);
            }
          }
        }
      }
      least = Math.sqrt(least);
      double length = Math.hypot(Math.hypot(g[3] - g[0], g[4] - g[1]), g[5] - g[2]);
      double blind = step / Math.sqrt(2) + length / samples / 2;
      assertThat(sheet.segmentDistance(g[0], g[1], g[2], g[3], g[4], g[5]))
          .as("segment %d", i)
          .isBetween(least - blind, least + 1e-9);
    }
  }

  @Test
  void nearestPointsOfASegmentAreAsFarApartAsTheDistance() {
    Random random = new Random(79);
    for (int i = 0; i < 2000; i++) {
      RandomSheet sheet = new RandomSheet(random, 900, i % 3);
      double[] g = randomSegment(random, sheet, i);
      double distance = sheet.sheet.segmentDistance(g[0], g[1], g[2], g[3], g[4], g[5]);
      Nearest nearest =
          Objects.requireNonNull(sheet.sheet.segmentNearest(g[0], g[1], g[2], g[3], g[4], g[5]));
      assertThat(nearest.distance()).isEqualTo(distance);
      assertThat(nearest.onElement().distanceTo(nearest.onOther()))
          .isCloseTo(distance, within(1e-9));
      double least =
          facets(sheet).stream()
              .mapToDouble(
                  facet -> {
                    Point at = nearest.onOther();
                    FaceFrame frame = sheet.sheet.frame();
                    double along = frame.along(at.x(), at.y());
                    double up = frame.up(at.y(), at.z());
                    return facet.distance(
                        sheet.upright ? along : up,
                        sheet.upright ? up : along,
                        frame.out(at.x(), at.y(), at.z()));
                  })
              .min()
              .orElseThrow();
      assertThat(least).isLessThan(1e-9);
    }
  }

  @Test
  void distancesToBoxesAgreeWithASearch() {
    Random random = new Random(80);
    for (int i = 0; i < 5000; i++) {
      double[] g = random.doubles(6, -100, 100).toArray();
      double[] low = random.doubles(3, -60, 30).toArray();
      double[] high = {low[0] + 60 * random.nextDouble(), low[1] + 40, low[2] + 5};
      double expected =
          leastOf(
              u -> {
                double sum = 0;
                for (int axis = 0; axis < 3; axis++) {
                  double at = g[axis] + u * (g[axis + 3] - g[axis]);
                  double nearest = Math.max(low[axis], Math.min(high[axis], at));
                  sum += (at - nearest) * (at - nearest);
                }
                return Math.sqrt(sum);
              });
      double actual =
          SegmentBox.distance(
              g[0], g[1], g[2], g[3], g[4], g[5], low[0], low[1], low[2], high[0], high[1],
              high[2]);
      assertThat(actual).isCloseTo(expected, within(1e-6)).isLessThan(expected + 1e-9);
    }
  }

  @Test
  void distancesBetweenSegmentsAgreeWithASearchInASearch() {
    Random random = new Random(81);
    for (int i = 0; i < 3000; i++) {
      double[] a = random.doubles(6, -100, 100).toArray();
      double[] b = random.doubles(6, -100, 100).toArray();
      if (i % 5 == 0) { // parallel
        for (int axis = 0; axis < 3; axis++) {
          b[axis + 3] = b[axis] + 0.7 * (a[axis + 3] - a[axis]);
        }
      } else if (i % 17 == 0) { // a point
        System.arraycopy(b, 0, b, 3, 3);
      }
      double expected = leastOf(u -> leastOf(v -> between(a, u, b, v)));
      double actual =
          SegmentPair.distance(
              a[0], a[1], a[2], a[3], a[4], a[5], b[0], b[1], b[2], b[3], b[4], b[5]);
      assertThat(actual).isCloseTo(expected, within(1e-5)).isLessThan(expected + 1e-9);
    }
  }

  private static double between(double[] a, double u, double[] b, double v) {
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      double d = a[axis] + u * (a[axis + 3] - a[axis]) - b[axis] - v * (b[axis + 3] - b[axis]);
      sum += d * d;
    }
    return Math.sqrt(sum);
  }
}
