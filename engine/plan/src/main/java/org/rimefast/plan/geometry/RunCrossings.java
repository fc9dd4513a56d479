package org.rimefast.plan.geometry;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;

/**
 * Which runs cross each other as seen from the room: their middle lines meet in the plane of a
 * face, neither lengthwise nor at an end of either. A stretch between points on two faces is looked
 * at on both. Worked out once for all runs whose places on their faces are known.
 */
final class RunCrossings {
  private static final double FACES_APART = 1e7; // millimetres; no shell is as large

  private static final Face[] FACES = Face.values();

  private final Plan plan;
  private final RunGeometry runs;
  private final FaceFrame[] frames;
  private final boolean[] isPlaced;
  private final int[] unplaced;
  private final int[][] crossed;
  private final Certainty[][] certainties;

  RunCrossings(Plan plan, RunGeometry runs) {
    this.plan = plan;
    this.runs = runs;
    this.frames =
        Arrays.stream(FACES)
            .map(face -> FaceFrame.of(face, plan.shell()))
            .toArray(FaceFrame[]::new);
    int count = runs.count();
    this.isPlaced = new boolean[count];
    this.crossed = new int[count][];
    this.certainties = new Certainty[count][];
    IndexList without = new IndexList();
    SegmentTree segments = new SegmentTree();
    double farthest = 0;
    for (int run = 0; run < count; run++) {
      crossed[run] = new int[0];
      certainties[run] = new Certainty[0];
      isPlaced[run] = missing(run).isEmpty();
      if (isPlaced[run]) {
        addSegments(run, segments);
        farthest = Math.max(farthest, runs.run(run).motion());
      } else {
        without.accept(run);
      }
    }
    this.unplaced = without.toArray();
    segments.build();
    for (int i = 0; i < segments.size(); ) {
      int run = segments.owner(i);
      IndexList near = new IndexList();
      double reach = farthest + runs.run(run).motion() + Distances.ROUNDING;
      for (; i < segments.size() && segments.owner(i) == run; i++) {
        segments.near(i, reach, near);
      }
      keep(run, near);
    }
  }

  private void keep(int run, IndexList near) {
    IndexList others = new IndexList();
    near.inOrder(
        other -> {
          if (other != run && find(run, other) != Certainty.NO) {
            others.accept(other);
          }
        });
    crossed[run] = others.toArray();
    certainties[run] =
        Arrays.stream(crossed[run]).mapToObj(other -> find(run, other)).toArray(Certainty[]::new);
  }

  private Face face(int run, int point) {
    return plan.runs().get(run).path().get(point).face();
  }

  private int points(int run) {
    return runs.run(run).line().length / 3;
  }

  /** True if a segment counts on a face. */
  private boolean isOn(int run, int segment, Face face) {
    return face(run, segment) == face || face(run, segment + 1) == face;
  }

  private double along(int run, int point, Face face) {
    double[] line = runs.run(run).line();
    return frames[face.ordinal()].along(line[3 * point], line[3 * point + 1]);
  }

  private double up(int run, int point, Face face) {
    double[] line = runs.run(run).line();
    return frames[face.ordinal()].up(line[3 * point + 1], line[3 * point + 2]);
  }

  private void addSegments(int run, SegmentTree segments) {
    for (int i = 0; i + 1 < points(run); i++) {
      for (Face face : FACES) {
        if (isOn(run, i, face)) {
          double z = FACES_APART * face.ordinal();
          segments.add(
              run,
              along(run, i, face),
              up(run, i, face),
              z,
              along(run, i + 1, face),
              up(run, i + 1, face),
              z,
              0);
        }
      }
    }
  }

  /** JSON pointers of the values that are missing to see where a run lies on its faces. */
  List<String> missing(int run) {
    Set<String> pointers = new LinkedHashSet<>();
    boolean oneFace = runs.run(run).onlyFace() != null;
    for (String pointer : runs.run(run).missing()) {
      if (!oneFace || pointer.endsWith("/along") || pointer.endsWith("/up")) {
        pointers.add(pointer);
      }
    }
    return List.copyOf(pointers);
  }

  /** Runs of which it is not known where they lie on their faces. */
  int[] unplaced() {
    return unplaced;
  }

  boolean isPlaced(int run) {
    return isPlaced[run];
  }

  /** Runs that a run crosses or may cross, of those that have a place. */
  int[] of(int run) {
    return crossed[run];
  }

  /** Whether two runs cross. */
  Certainty cross(int runA, int runB) {
    if (runA == runB) {
      return Certainty.NO;
    }
    if (!isPlaced[runA] || !isPlaced[runB]) {
      return couldCross(runA, runB) ? Certainty.POSSIBLE : Certainty.NO;
    }
    int at = Arrays.binarySearch(crossed[runA], runB);
    return at < 0 ? Certainty.NO : certainties[runA][at];
  }

  private boolean couldCross(int a, int b) {
    for (int i = 0; i + 1 < points(a); i++) {
      for (int j = 0; j + 1 < points(b); j++) {
        for (int side = 0; side < 2; side++) {
          Face face = face(a, i + side);
          if (isOn(b, j, face) && !apart(a, i, b, j, face)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** False if a value is not known. */
  private boolean apart(int a, int i, int b, int j, Face face) {
    FaceFrame frame = frames[face.ordinal()];
    return apart(
            along(a, i, face),
            along(a, i + 1, face),
            along(b, j, face),
            along(b, j + 1, face),
            motion(a, b, frame.alongAxis()))
        || apart(
            up(a, i, face),
            up(a, i + 1, face),
            up(b, j, face),
            up(b, j + 1, face),
            motion(a, b, frame.upAxis()));
  }

  private static boolean apart(double a1, double a2, double b1, double b2, double margin) {
    return Math.max(a1, a2) + margin < Math.min(b1, b2)
        || Math.max(b1, b2) + margin < Math.min(a1, a2);
  }

  private double motion(int a, int b, int axis) {
    Face face = runs.run(a).onlyFace();
    boolean together = face != null && runs.run(b).isOnlyOn(face);
    return RunGeometry.gapMotion(runs.run(a), runs.run(b), axis, !together);
  }

  private Certainty find(int a, int b) {
    Certainty any = Certainty.NO;
    for (Face face : FACES) {
      FaceFrame frame = frames[face.ordinal()];
      double tolerance =
          Distances.norm(motion(a, b, frame.alongAxis()), motion(a, b, frame.upAxis()));
      for (int i = 0; i + 1 < points(a); i++) {
        for (int j = 0; isOn(a, i, face) && j + 1 < points(b); j++) {
          if (isOn(b, j, face) && !apart(a, i, b, j, face)) {
            any = any.or(segments(a, i, b, j, face, tolerance));
          }
        }
      }
    }
    return any;
  }

  /**
   * Whether two segments cross. As their ends move, a crossing is won or lost only where an end of
   * one comes to lie on the other, so one whose ends all lie farther from the other than the
   * tolerance is certain.
   */
  private Certainty segments(int a, int i, int b, int j, Face face, double tolerance) {
    double ends = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 2; k++) {
      ends = Math.min(ends, distance(a, i + k, b, j, face));
      ends = Math.min(ends, distance(b, j + k, a, i, face));
    }
    Point meeting = meeting(a, i, b, j, face);
    if (meeting == null) {
      // Parallel lines that lie on each other cover one another; they do not cross.
      return tolerance > 0 && ends <= tolerance ? Certainty.POSSIBLE : Certainty.NO;
    }
    if (tolerance > 0) {
      return ends > tolerance ? Certainty.YES : Certainty.POSSIBLE;
    }
    boolean atAnEnd = isEnd(a, meeting, face) || isEnd(b, meeting, face);
    return atAnEnd ? Certainty.NO : Certainty.YES;
  }

  private boolean isEnd(int run, Point meeting, Face face) {
    return isNear(run, 0, meeting, face) || isNear(run, points(run) - 1, meeting, face);
  }

  private boolean isNear(int run, int point, Point meeting, Face face) {
    return Distances.norm(along(run, point, face) - meeting.x(), up(run, point, face) - meeting.y())
        <= Distances.ROUNDING;
  }

  private double distance(int run, int point, int other, int segment, Face face) {
    double x = along(run, point, face);
    double y = up(run, point, face);
    double x1 = along(other, segment, face);
    double y1 = up(other, segment, face);
    double x2 = along(other, segment + 1, face);
    double y2 = up(other, segment + 1, face);
    double t = SegmentPair.nearestAt(x1, y1, 0, x2, y2, 0, x, y, 0);
    return Distances.norm(x1 + t * (x2 - x1) - x, y1 + t * (y2 - y1) - y);
  }

  /** Where two segments that are not parallel meet, as along and up; null if they do not. */
  private @Nullable Point meeting(int a, int i, int b, int j, Face face) {
    double x = along(a, i, face);
    double y = up(a, i, face);
    double dx = along(a, i + 1, face) - x;
    double dy = up(a, i + 1, face) - y;
    double ex = along(b, j + 1, face) - along(b, j, face);
    double ey = up(b, j + 1, face) - up(b, j, face);
    double wx = along(b, j, face) - x;
    double wy = up(b, j, face) - y;
    double area = dx * ey - dy * ex;
    double t = (wx * ey - wy * ex) / area;
    double u = (wx * dy - wy * dx) / area;
    boolean meets = area != 0 && t >= 0 && t <= 1 && u >= 0 && u <= 1;
    return meets ? new Point(x + t * dx, y + t * dy, 0) : null;
  }

  /** Where two runs cross, as drawn: its face and its place; null if nowhere. */
  @Nullable Crossing first(int a, int b) {
    for (Face face : FACES) {
      for (int i = 0; i + 1 < points(a); i++) {
        for (int j = 0; isOn(a, i, face) && j + 1 < points(b); j++) {
          Point meeting = isOn(b, j, face) ? meeting(a, i, b, j, face) : null;
          if (meeting != null && !isEnd(a, meeting, face) && !isEnd(b, meeting, face)) {
            return new Crossing(face, meeting.x(), meeting.y());
          }
        }
      }
    }
    return null;
  }
}
