package org.rimefast.plan.geometry;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** A growing list of boxes, each around a segment of a run, and a tree to find them by. */
final class SegmentTree {
  private double[] boxes = new double[6 * 16];
  private int[] owners = new int[16];
  private int size;
  private BoxTree tree = new BoxTree(new double[0], new int[0]);

  /** Adds the box around two points, wider by a margin. */
  void add(
      int run, double x1, double y1, double z1, double x2, double y2, double z2, double margin) {
    if (size == owners.length) {
      owners = Arrays.copyOf(owners, 2 * size);
      boxes = Arrays.copyOf(boxes, 12 * size);
    }
    owners[size] = run;
    boxes[6 * size] = Math.min(x1, x2) - margin;
    boxes[6 * size + 1] = Math.min(y1, y2) - margin;
    boxes[6 * size + 2] = Math.min(z1, z2) - margin;
    boxes[6 * size + 3] = Math.max(x1, x2) + margin;
    boxes[6 * size + 4] = Math.max(y1, y2) + margin;
    boxes[6 * size + 5] = Math.max(z1, z2) + margin;
    size++;
  }

  /** Makes it ready for questions. */
  void build() {
    int[] items = new int[size];
    Arrays.setAll(items, i -> i);
    tree = new BoxTree(boxes, items);
  }

  int size() {
    return size;
  }

  int owner(int segment) {
    return owners[segment];
  }

  /** Reports the runs of all segments whose boxes are this near to that of a segment. */
  void near(int segment, double distance, IntConsumer found) {
    near(boxes, segment, distance, found);
  }

  /** Reports the runs of all segments whose boxes are this near to a box. */
  void near(double[] of, int box, double distance, IntConsumer found) {
    int at = 6 * box;
    tree.within(
        of[at],
        of[at + 1],
        of[at + 2],
        of[at + 3],
        of[at + 4],
        of[at + 5],
        distance,
        segment -> found.accept(owners[segment]));
  }
}
