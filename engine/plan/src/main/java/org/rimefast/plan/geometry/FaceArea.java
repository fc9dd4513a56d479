package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.gap;
import static org.rimefast.plan.geometry.Distances.norm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Opening;
import org.rimefast.plan.ShellSize;

/**
 * What the openings leave of a face, as rectangles, whether or not its profile is known; nothing of
 * a face without steel. Its coordinates turn with the ribs: s across them, t along them, o outward.
 */
final class FaceArea {
  private static final int FROM = 0;
  private static final int MIN_T = 1;
  private static final int TO = 2;
  private static final int MAX_T = 3;

  private final FaceFrame frame;
  private final boolean upright;
  private final double[] rectangles; // four numbers each: from, minT, to, maxT
  private final double[] holes; // the same of the openings, clipped to the face

  private FaceArea(FaceFrame frame, boolean upright, double[] rectangles, double[] holes) {
    this.frame = frame;
    this.upright = upright;
    this.rectangles = rectangles;
    this.holes = holes;
  }

  static FaceArea of(FaceBuild build, ShellSize shell, List<Opening> openings) {
    FaceFrame frame = FaceFrame.of(build.face(), shell);
    boolean upright = build.ribs() == Ribs.UPRIGHT;
    double extentS = upright ? frame.alongExtent() : frame.upExtent();
    double extentT = upright ? frame.upExtent() : frame.alongExtent();
    List<double[]> holes = new ArrayList<>();
    for (Opening opening : openings) {
      if (opening.face() == build.face()) {
        double along = Lengths.millimetres(opening.from());
        double up = Lengths.millimetres(opening.sill());
        double alongEnd = along + Lengths.millimetres(opening.width());
        double upEnd = up + Lengths.millimetres(opening.height());
        double[] hole = {
          Math.max(0, upright ? along : up),
          Math.max(0, upright ? up : along),
          Math.min(extentS, upright ? alongEnd : upEnd),
          Math.min(extentT, upright ? upEnd : alongEnd)
        };
        if (hole[FROM] < hole[TO] && hole[MIN_T] < hole[MAX_T]) {
          holes.add(hole);
        }
      }
    }
    boolean steel = build.profile() == null || build.profile().steel();
    double[] rectangles = steel ? cut(extentS, extentT, holes) : new double[0];
    return new FaceArea(frame, upright, rectangles, flat(holes));
  }

  /** Cuts the face into strips at every edge of a hole, and each strip where holes cross it. */
  private static double[] cut(double extentS, double extentT, List<double[]> holes) {
    double[] edges = new double[2 + 2 * holes.size()];
    edges[1] = extentS;
    for (int i = 0; i < holes.size(); i++) {
      edges[2 + 2 * i] = holes.get(i)[FROM];
      edges[3 + 2 * i] = holes.get(i)[TO];
    }
    java.util.Arrays.sort(edges);
    List<double[]> byStart = new ArrayList<>(holes);
    byStart.sort(Comparator.comparingDouble(hole -> hole[MIN_T]));
    List<double[]> rectangles = new ArrayList<>();
    for (int i = 0; i + 1 < edges.length; i++) {
      double from = edges[i];
      double to = edges[i + 1];
      if (from == to) {
        continue;
      }
      double steelFrom = 0;
      for (double[] hole : byStart) {
        if (hole[FROM] <= from && hole[TO] >= to) {
          if (hole[MIN_T] > steelFrom) {
            rectangles.add(new double[] {from, steelFrom, to, hole[MIN_T]});
          }
          steelFrom = Math.max(steelFrom, hole[MAX_T]);
        }
      }
      if (steelFrom < extentT) {
        rectangles.add(new double[] {from, steelFrom, to, extentT});
      }
    }
    return flat(rectangles);
  }

  private static double[] flat(List<double[]> rectangles) {
    return rectangles.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
  }

  FaceFrame frame() {
    return frame;
  }

  /** What openings take, four numbers each as {@link #from} and so on, clipped to the face. */
  double[] holes() {
    return holes;
  }

  Face face() {
    return frame.face();
  }

  /** True if s runs along the face and t up it; false if the other way round. */
  boolean upright() {
    return upright;
  }

  double extentS() {
    return upright ? frame.alongExtent() : frame.upExtent();
  }

  double extentT() {
    return upright ? frame.upExtent() : frame.alongExtent();
  }

  /** How many rectangles of steel there are. */
  int count() {
    return rectangles.length / 4;
  }

  double from(int index) {
    return rectangles[4 * index + FROM];
  }

  double minT(int index) {
    return rectangles[4 * index + MIN_T];
  }

  double to(int index) {
    return rectangles[4 * index + TO];
  }

  double maxT(int index) {
    return rectangles[4 * index + MAX_T];
  }

  /** No sheet of this face, whatever its profile, can be nearer to the box than this. */
  double leastDistance(double minS, double minT, double maxS, double maxT, double maxO) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      double gapS = gap(minS, maxS, from(i), to(i));
      double gapT = gap(minT, maxT, minT(i), maxT(i));
      best = Math.min(best, norm(gapS, gapT, Math.max(0, -maxO)));
    }
    return best;
  }

  /** No sheet of this face, whatever its profile, can be nearer to the segment than this. */
  double leastSegmentDistance(double s1, double t1, double o1, double s2, double t2, double o2) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      double distance =
          SegmentBox.distance(
              s1,
              t1,
              o1,
              s2,
              t2,
              o2,
              from(i),
              minT(i),
              0,
              to(i),
              maxT(i),
              Double.POSITIVE_INFINITY);
      best = Math.min(best, distance);
    }
    return best;
  }

  /**
   * Distance in the face's plane from a rectangle to the nearest edge across which the sheet ends:
   * an end of the face, or a side of an opening. 0 for a rectangle that an opening holds.
   */
  double edgeDistance(double minS, double minT, double maxS, double maxT) {
    double best = Math.max(0, Math.min(minS, extentS() - maxS));
    for (int i = 0; i < holes.length; i += 4) {
      double gapS = gap(minS, maxS, holes[i + FROM], holes[i + TO]);
      double gapT = gap(minT, maxT, holes[i + MIN_T], holes[i + MAX_T]);
      best = Math.min(best, norm(gapS, gapT));
    }
    return best;
  }
}
