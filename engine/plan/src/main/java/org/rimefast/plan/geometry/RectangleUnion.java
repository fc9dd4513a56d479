package org.rimefast.plan.geometry;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The area that rectangles cover together: a line sweeps over their ends, and a tree of stretches
 * keeps how much of it is covered. Takes n log n.
 */
final class RectangleUnion {
  private final double[] levels;
  private final int[] covers; // how many rectangles cover all of a node's stretch
  private final double[] covered; // how much of a node's stretch is covered

  private RectangleUnion(double[] levels) {
    this.levels = levels;
    this.covers = new int[4 * levels.length];
    this.covered = new double[4 * levels.length];
  }

  /**
   * The area of what any of the rectangles covers.
   *
   * @param rectangles four numbers each: least of both coordinates, then greatest; one whose
   *     greatest is not more than its least counts for nothing
   */
  static double area(double[] rectangles) {
    int count = rectangles.length / 4;
    Integer[] ends = new Integer[2 * count];
    double[] levels = new double[2 * count];
    int kept = 0;
    for (int i = 0; i < count; i++) {
      int at = 4 * i;
      if (rectangles[at] < rectangles[at + 2] && rectangles[at + 1] < rectangles[at + 3]) {
        levels[kept] = rectangles[at + 1];
        ends[kept++] = at;
        levels[kept] = rectangles[at + 3];
        ends[kept++] = at + 2;
      }
    }
    if (kept == 0) {
      return 0;
    }
    ends = Arrays.copyOf(ends, kept);
    Arrays.sort(ends, Comparator.comparingDouble(end -> rectangles[end]));
    double[] distinct = Arrays.stream(levels, 0, kept).sorted().distinct().toArray();
    return new RectangleUnion(distinct).sweep(rectangles, ends);
  }

  private double sweep(double[] rectangles, Integer[] ends) {
    double area = 0;
    double last = rectangles[ends[0]];
    for (int end : ends) {
      area += covered[1] * (rectangles[end] - last);
      last = rectangles[end];
      int at = end & ~3;
      int from = Arrays.binarySearch(levels, rectangles[at + 1]);
      int to = Arrays.binarySearch(levels, rectangles[at + 3]);
      add(1, 0, levels.length - 1, from, to, end == at ? 1 : -1);
    }
    return area;
  }

  /** Adds one rectangle to, or takes it from, the stretch between two levels. */
  private void add(int node, int first, int last, int from, int to, int change) {
    if (to <= first || from >= last) {
      return;
    }
    if (from <= first && to >= last) {
      covers[node] += change;
    } else {
      int middle = (first + last) >>> 1;
      add(2 * node, first, middle, from, to, change);
      add(2 * node + 1, middle, last, from, to, change);
    }
    if (covers[node] > 0) {
      covered[node] = levels[last] - levels[first];
    } else {
      covered[node] = last - first == 1 ? 0 : covered[2 * node] + covered[2 * node + 1];
    }
  }
}
