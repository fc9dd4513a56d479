package org.rimefast.testkit.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The middle line of a run while it is being drawn; a point that repeats the last is dropped. */
final class Path {
  private record At(String face, long along, long up, long depth) {}

  private final List<At> points = new ArrayList<>();
  private long length;

  Path to(String face, long along, long up, long depth) {
    At next = new At(face, along, up, depth);
    @Nullable At last = points.isEmpty() ? null : points.get(points.size() - 1);
    if (!next.equals(last)) {
      length += last == null ? 0 : step(last, next);
      points.add(next);
    }
    return this;
  }

  /** Near enough for setting out straps; around a corner it counts nothing. */
  private static long step(At a, At b) {
    return a.face().equals(b.face())
        ? Math.round(
            Math.sqrt(
                square(a.along() - b.along())
                    + square(a.up() - b.up())
                    + square(a.depth() - b.depth())))
        : 0;
  }

  private static double square(long length) {
    return (double) length * length;
  }

  long length() {
    return length;
  }

  boolean isDrawn() {
    return points.size() > 1;
  }

  List<Tree> points(Chance chance) {
    List<Tree> trees = new ArrayList<>();
    for (At point : points) {
      Tree tree = Tree.of("face", point.face());
      tree.with("along", chance.place(point.along())).with("up", point.up());
      chance.maybe(tree, "depth", point.depth());
      if (chance.oneIn(20)) {
        tree.with("bend", chance.between(60 * Length.MILLIMETRE, 140 * Length.MILLIMETRE));
      }
      trees.add(tree);
    }
    return trees;
  }
}
