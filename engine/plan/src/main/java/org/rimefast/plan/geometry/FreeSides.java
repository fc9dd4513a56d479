package org.rimefast.plan.geometry;

import java.util.List;
import java.util.TreeSet;

/**
 * How far it is from each side of a part to what stands beside it on its face: the next part that
 * overlaps it in the other direction and in depth, or the end of the face. A stud and the track
 * that it stands in are not in each other's way.
 */
final class FreeSides {
  static final int LEFT = 0;
  static final int RIGHT = 1;
  static final int BELOW = 2;
  static final int ABOVE = 3;
  static final int SIDES = 4;

  private static final double FIRST_LOOK = 200;
  private static final double ROUNDING = 1e-6;

  private final ModuleGeometry geometry;
  private final OnFace onFace;
  private final double[] least;
  private final double[] most;
  private final double[] drawn;
  private final int[] nearest; // the part at each side, or -1 for the end of the face

  FreeSides(ModuleGeometry geometry, OnFace onFace) {
    this.geometry = geometry;
    this.onFace = onFace;
    int count = SIDES * geometry.plan().parts().size();
    this.least = new double[count];
    this.most = new double[count];
    this.drawn = new double[count];
    this.nearest = new int[count];
    for (int at = 0; at < count; at++) {
      workOut(at);
    }
  }

  double least(int part, int side) {
    return least[SIDES * part + side];
  }

  double most(int part, int side) {
    return most[SIDES * part + side];
  }

  /** The gap as drawn, what has no place left out. */
  double drawn(int part, int side) {
    return drawn[SIDES * part + side];
  }

  /** The part that is nearest at a side as drawn; -1 if it is the end of the face. */
  int nearest(int part, int side) {
    return nearest[SIDES * part + side];
  }

  private void workOut(int at) {
    PlacedPart part = geometry.placed(at / SIDES);
    int side = at % SIDES;
    nearest[at] = -1;
    if (!part.isComplete()) {
      least[at] = Double.NaN;
      most[at] = Double.NaN;
      drawn[at] = Double.NaN;
      return;
    }
    double end =
        side == RIGHT ? part.frame().alongExtent() : side == ABOVE ? part.frame().upExtent() : 0;
    double room = Math.max(0, ahead(part, side, end));
    double tolerance = isAlong(side) ? part.alongTolerance() : part.upTolerance();
    for (double look = FIRST_LOOK; ; look *= 4) {
      drawn[at] = room;
      least[at] = Math.max(0, room - tolerance);
      most[at] = room + tolerance;
      look(at, part, side, Math.min(look, room));
      if (look >= room || most[at] <= look) {
        return;
      }
    }
  }

  /** What stands beside a part up to some way off. */
  private void look(int at, PlacedPart part, int side, double way) {
    onFace.within(
        part.frame().face(),
        part.alongMin() - (side == LEFT ? way : 0),
        part.upMin() - (side == BELOW ? way : 0),
        part.outMin(),
        part.alongMax() + (side == RIGHT ? way : 0),
        part.upMax() + (side == ABOVE ? way : 0),
        part.outMax(),
        other -> {
          if (other != at / SIDES) {
            consider(at, part, side, other);
          }
        });
  }

  private void consider(int at, PlacedPart part, int side, int index) {
    Certainty fitted = geometry.studsInTracks().standsIn(at / SIDES, index);
    if (fitted == Certainty.YES) {
      return;
    }
    PlacedPart other = geometry.placed(index);
    double along = part.alongTolerance() + other.alongTolerance();
    double up = part.upTolerance() + other.upTolerance();
    double out = part.outTolerance() + other.outTolerance();
    double tolerance = isAlong(side) ? along : up;
    double across =
        isAlong(side)
            ? overlap(part.upMin(), part.upMax(), other.upMin(), other.upMax())
            : overlap(part.alongMin(), part.alongMax(), other.alongMin(), other.alongMax());
    double acrossTolerance = isAlong(side) ? up : along;
    double deep = overlap(part.outMin(), part.outMax(), other.outMin(), other.outMax());
    // How far the other reaches past this side of the part, and where it begins.
    double past = ahead(part, side, farEnd(other, side));
    double gap = ahead(part, side, nearEnd(other, side));
    if (geometry.isFitted(across)
        || geometry.isFitted(deep)
        || across < ROUNDING - acrossTolerance
        || deep < ROUNDING - out
        || past < ROUNDING - tolerance) {
      return;
    }
    least[at] = Math.min(least[at], Double.isNaN(gap) ? 0 : Math.max(0, gap - tolerance));
    if (across > ROUNDING && deep > ROUNDING && past > ROUNDING && gap < drawn[at]) {
      drawn[at] = Math.max(0, gap);
      nearest[at] = index;
    }
    if (fitted == Certainty.NO
        && across > acrossTolerance + ROUNDING
        && deep > out + ROUNDING
        && past > tolerance + ROUNDING) {
      // False where an extent is not known: then it hides nothing for certain.
      most[at] = Double.isNaN(gap) ? most[at] : Math.min(most[at], Math.max(0, gap) + tolerance);
    }
  }

  private static boolean isAlong(int side) {
    return side == LEFT || side == RIGHT;
  }

  /** How far a place lies beyond a side of a part. */
  private static double ahead(PlacedPart part, int side, double place) {
    return switch (side) {
      case LEFT -> part.alongMin() - place;
      case RIGHT -> place - part.alongMax();
      case BELOW -> part.upMin() - place;
      default -> place - part.upMax();
    };
  }

  private static double nearEnd(PlacedPart other, int side) {
    return switch (side) {
      case LEFT -> other.alongMax();
      case RIGHT -> other.alongMin();
      case BELOW -> other.upMax();
      default -> other.upMin();
    };
  }

  private static double farEnd(PlacedPart other, int side) {
    return switch (side) {
      case LEFT -> other.alongMin();
      case RIGHT -> other.alongMax();
      case BELOW -> other.upMin();
      default -> other.upMax();
    };
  }

  /** How far two stretches overlap; negative if they do not, NaN if that is not known. */
  static double overlap(double aMin, double aMax, double bMin, double bMax) {
    return Math.min(aMax, bMax) - Math.max(aMin, bMin);
  }

  /** Pointers of what is missing of a part, and of those without a place that may be beside it. */
  List<String> missing(int part) {
    TreeSet<String> pointers = new TreeSet<>(geometry.placed(part).missing());
    if (pointers.isEmpty()) {
      for (int other : onFace.unplaced(geometry.placed(part).frame().face())) {
        for (int side = 0; side < SIDES; side++) {
          if (mayStandBeside(part, side, other)) {
            pointers.addAll(geometry.placed(other).missing());
          }
        }
      }
    }
    return List.copyOf(pointers);
  }

  private boolean mayStandBeside(int part, int side, int other) {
    PlacedPart own = geometry.placed(part);
    PlacedPart placed = geometry.placed(other);
    double across =
        isAlong(side)
            ? overlap(own.upMin(), own.upMax(), placed.upMin(), placed.upMax())
            : overlap(own.alongMin(), own.alongMax(), placed.alongMin(), placed.alongMax());
    double deep = overlap(own.outMin(), own.outMax(), placed.outMin(), placed.outMax());
    double gap = ahead(own, side, nearEnd(placed, side));
    return !(across < 0 || deep < 0 || gap > drawn(part, side));
  }
}
