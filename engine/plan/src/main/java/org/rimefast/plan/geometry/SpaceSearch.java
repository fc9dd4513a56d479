package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Looks for free room in the coordinates of a wall: along it, up it, and inward of its ribs. Used
 * again and again by one thread.
 *
 * <p>For what is certainly free, things are taken as large as they can be within their tolerances,
 * and a round bar has the corners of a square one; for what may be free, as small as they can be.
 */
final class SpaceSearch implements IntConsumer {
  private static final double ROUNDING = 1e-6;

  private @Nullable RoomObstacles obstacles;
  private @Nullable FaceFrame frame;
  private @Nullable List<Integer> found;
  private int besides;
  private boolean certain;

  // The region that is asked about: a box, or a quarter disc in plan.
  private double alongMin;
  private double alongMax;
  private double upMin;
  private double upMax;
  private double inMin;
  private double inMax;
  private double hinge;
  private int turn; // 0 for a box; 1 or -1 for a disc that lies on that side of its hinge
  private double reach;

  private double end; // how far along the things in the box reach; negative infinity for none

  // The piece of a line that is looked at: where it enters and leaves.
  private double first;
  private double last;

  /**
   * @param part the part before which room is looked for, which is not in its own way; -1 for none
   */
  void begin(RoomObstacles in, FaceFrame wall, int part, boolean certainly) {
    obstacles = in;
    frame = wall;
    besides = part;
    certain = certainly;
    found = null;
  }

  /**
   * True if a free box of a width starts at some place from {@code low} to {@code high}: after each
   * thing in the way, the next place is where that thing ends.
   */
  boolean findsPlace(
      double low,
      double high,
      double width,
      double upFrom,
      double upTo,
      double inFrom,
      double inTo) {
    turn = 0;
    upMin = upFrom;
    upMax = upTo;
    inMin = inFrom;
    inMax = inTo;
    double at = low;
    while (at <= high + ROUNDING) {
      alongMin = at;
      alongMax = at + width;
      look();
      if (end == Double.NEGATIVE_INFINITY) {
        return true;
      }
      at = end;
    }
    return false;
  }

  /**
   * True if nothing stands in a quarter disc.
   *
   * @param side 1 if it lies toward greater places along the wall, -1 if toward lesser
   */
  boolean isQuarterFree(
      double at, int side, double radius, double upFrom, double upTo, double inFrom) {
    quarter(at, side, radius, upFrom, upTo, inFrom);
    if (radius <= 0) {
      return true;
    }
    look();
    return end == Double.NEGATIVE_INFINITY;
  }

  private void quarter(
      double at, int side, double radius, double upFrom, double upTo, double inFrom) {
    turn = side;
    hinge = at;
    reach = radius;
    alongMin = side > 0 ? at : at - radius;
    alongMax = side > 0 ? at + radius : at;
    upMin = upFrom;
    upMax = upTo;
    inMin = inFrom;
    inMax = inFrom + radius;
  }

  /** Every body in a box, in order. */
  List<Integer> all(
      double from, double to, double upFrom, double upTo, double inFrom, double inTo) {
    turn = 0;
    alongMin = from;
    alongMax = to;
    upMin = upFrom;
    upMax = upTo;
    inMin = inFrom;
    inMax = inTo;
    return collected();
  }

  /** Every body in a quarter disc, in order. */
  List<Integer> inQuarter(
      double at, int side, double radius, double upFrom, double upTo, double inFrom) {
    quarter(at, side, radius, upFrom, upTo, inFrom);
    return collected();
  }

  private List<Integer> collected() {
    List<Integer> all = new ArrayList<>();
    found = all;
    look();
    found = null;
    return List.copyOf(new TreeSet<>(all));
  }

  private void look() {
    end = Double.NEGATIVE_INFINITY;
    FaceFrame wall = Objects.requireNonNull(frame);
    double x1 = x(wall, alongMin, inMin);
    double x2 = x(wall, alongMax, inMax);
    double y1 = y(wall, alongMin, inMin);
    double y2 = y(wall, alongMax, inMax);
    Objects.requireNonNull(obstacles)
        .boxes()
        .within(
            Math.min(x1, x2),
            Math.min(y1, y2),
            upMin,
            Math.max(x1, x2),
            Math.max(y1, y2),
            upMax,
            0,
            this);
  }

  @Override
  public void accept(int box) {
    RoomObstacles all = Objects.requireNonNull(obstacles);
    if (!all.isInRoom(box) || all.boxes().body(box) == besides) {
      return;
    }
    double reaches = all.isPart(box) ? ofPart(all, box) : ofRun(all, box);
    if (reaches > Double.NEGATIVE_INFINITY) {
      end = Math.max(end, reaches);
      List<Integer> list = found;
      if (list != null) {
        list.add(all.boxes().body(box));
      }
    }
  }

  /** How far along a part that is in the region reaches; negative infinity if it is not in it. */
  private double ofPart(RoomObstacles all, int box) {
    FaceFrame wall = Objects.requireNonNull(frame);
    PossibleBoxes boxes = all.boxes();
    Cuboid drawn = all.cuboid(box);
    if (drawn == null && !certain) {
      return Double.NEGATIVE_INFINITY;
    }
    double minX = boxes.least(box, 0);
    double minY = boxes.least(box, 1);
    double minZ = boxes.least(box, 2);
    double maxX = boxes.most(box, 0);
    double maxY = boxes.most(box, 1);
    double maxZ = boxes.most(box, 2);
    if (drawn != null && !certain) {
      minX = drawn.minX() + all.motion(box, 0);
      minY = drawn.minY() + all.motion(box, 1);
      minZ = drawn.minZ() + all.motion(box, 2);
      maxX = drawn.maxX() - all.motion(box, 0);
      maxY = drawn.maxY() - all.motion(box, 1);
      maxZ = drawn.maxZ() - all.motion(box, 2);
      if (minX >= maxX || minY >= maxY || minZ >= maxZ) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    return ofBox(wall, minX, minY, minZ, maxX, maxY, maxZ);
  }

  private double ofBox(
      FaceFrame wall,
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ) {
    double a = wall.along(minX, minY);
    double b = wall.along(maxX, maxY);
    double in = -wall.out(minX, minY, minZ);
    double into = -wall.out(maxX, maxY, maxZ);
    return minZ < upMax - ROUNDING
            && maxZ > upMin + ROUNDING
            && isInPlan(Math.min(a, b), Math.max(a, b), Math.min(in, into), Math.max(in, into))
        ? Math.max(a, b)
        : Double.NEGATIVE_INFINITY;
  }

  private boolean isInPlan(double from, double to, double in, double into) {
    if (from >= alongMax - ROUNDING
        || to <= alongMin + ROUNDING
        || in >= inMax - ROUNDING
        || into <= inMin + ROUNDING) {
      return false;
    }
    if (turn == 0) {
      return true;
    }
    double aside = turn > 0 ? Math.max(0, from - hinge) : Math.max(0, hinge - to);
    return norm(aside, Math.max(0, in - inMin)) < reach - ROUNDING;
  }

  /** The same for a straight piece of a run. */
  private double ofRun(RoomObstacles all, int box) {
    FaceFrame wall = Objects.requireNonNull(frame);
    PlacedRun run = all.run(box);
    double[] line = run.line();
    int i = all.piece(box);
    double a1 = wall.along(line[i], line[i + 1]);
    double a2 = wall.along(line[i + 3], line[i + 4]);
    double u1 = line[i + 2];
    double u2 = line[i + 5];
    double in1 = -wall.out(line[i], line[i + 1], line[i + 2]);
    double in2 = -wall.out(line[i + 3], line[i + 4], line[i + 5]);
    if (Double.isNaN(a1 + a2 + u1 + u2 + in1 + in2 + run.radius())) {
      PossibleBoxes boxes = all.boxes();
      return certain
          ? ofBox(
              wall,
              boxes.least(box, 0),
              boxes.least(box, 1),
              boxes.least(box, 2),
              boxes.most(box, 0),
              boxes.most(box, 1),
              boxes.most(box, 2))
          : Double.NEGATIVE_INFINITY;
    }
    double sign = certain ? 1 : -1;
    double along = sign * motion(run, wall.alongAxis());
    double up = sign * motion(run, wall.upAxis());
    double in = sign * motion(run, wall.outAxis());
    double radius = run.radius() + sign * run.radiusTolerance();
    double square = certain ? radius : 0;
    first = 0;
    last = 1;
    clip(u1, u2, upMin - up - square, upMax + up + square);
    clip(in1, in2, inMin - in - square, inMax + in + square);
    if (turn != 0) {
      clip(a1, a2, alongMin - along - square, alongMax + along + square);
    }
    if (first > last) {
      return Double.NEGATIVE_INFINITY;
    }
    double from = a1 + first * (a2 - a1);
    double to = a1 + last * (a2 - a1);
    if (turn != 0) {
      double near =
          SegmentBox.distance(
              from,
              in1 + first * (in2 - in1),
              0,
              to,
              in1 + last * (in2 - in1),
              0,
              hinge,
              inMin,
              0,
              hinge,
              inMin,
              0);
      double far = certain ? reach + norm(along, in) + radius : reach - norm(along, in);
      return near < far - ROUNDING ? Math.max(from, to) : Double.NEGATIVE_INFINITY;
    }
    double start = Math.min(from, to) - radius - along;
    double stop = Math.max(from, to) + radius + along;
    return start < stop && start < alongMax - ROUNDING && stop > alongMin + ROUNDING
        ? stop
        : Double.NEGATIVE_INFINITY;
  }

  private static double motion(PlacedRun run, int axis) {
    return run.motion(axis) + run.standoff(axis);
  }

  /** Leaves what of the piece lies between two limits, strictly. */
  private void clip(double from, double to, double low, double high) {
    double min = low + ROUNDING;
    double max = high - ROUNDING;
    if (from == to) {
      if (from <= min || from >= max) {
        first = 2;
        last = 1;
      }
      return;
    }
    double a = (min - from) / (to - from);
    double b = (max - from) / (to - from);
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }

  private static double x(FaceFrame wall, double along, double in) {
    return switch (wall.face()) {
      case LEFT, ROOF, FLOOR -> along;
      case RIGHT -> wall.alongExtent() - along;
      case FRONT -> wall.toX(in);
      case REAR -> in;
    };
  }

  private static double y(FaceFrame wall, double along, double in) {
    return switch (wall.face()) {
      case LEFT -> in;
      case RIGHT -> wall.toY(in);
      case FRONT -> along;
      case REAR -> wall.alongExtent() - along;
      case ROOF, FLOOR -> in;
    };
  }
}
