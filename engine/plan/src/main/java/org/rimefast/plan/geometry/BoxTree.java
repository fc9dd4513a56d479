package org.rimefast.plan.geometry;

import static org.rimefast.plan.geometry.Distances.gap;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntConsumer;

/**
 * Finds boxes near others: a packed tree of boxes: sorted into slabs by x, each slab into rows by
 * z, each row by y, and then bundled by eights up to one root. Building takes n log n. Immutable,
 * but it keeps the array of boxes that it was given, which must not change.
 */
public final class BoxTree {
  private static final int FAN = 8;

  private final double[] boxes; // six numbers each: least, then greatest x, y, z
  private final int[] items; // leaves, in the order of the tree
  private final double[][] levels; // bounds of the nodes of each level; the first one holds items

  /**
   * A tree of some of the given boxes.
   *
   * @param boxes six numbers each: least, then greatest x, y, z
   * @param items indexes of the boxes to hold
   */
  public BoxTree(double[] boxes, int[] items) {
    this.boxes = boxes;
    this.items = pack(boxes, items);
    int depth = 0;
    for (int nodes = items.length; nodes > 1 || depth == 0; nodes = bundles(nodes)) {
      depth++;
    }
    this.levels = new double[depth][];
    int below = items.length;
    for (int level = 0; level < depth; level++) {
      int nodes = bundles(below);
      levels[level] = new double[6 * nodes];
      for (int node = 0; node < nodes; node++) {
        double[] bounds = levels[level];
        Arrays.fill(bounds, 6 * node, 6 * node + 3, Double.POSITIVE_INFINITY);
        Arrays.fill(bounds, 6 * node + 3, 6 * node + 6, Double.NEGATIVE_INFINITY);
        for (int child = FAN * node; child < Math.min(below, FAN * node + FAN); child++) {
          double[] from = level == 0 ? boxes : levels[level - 1];
          int at = 6 * (level == 0 ? this.items[child] : child);
          for (int axis = 0; axis < 3; axis++) {
            bounds[6 * node + axis] = Math.min(bounds[6 * node + axis], from[at + axis]);
            bounds[6 * node + 3 + axis] =
                Math.max(bounds[6 * node + 3 + axis], from[at + 3 + axis]);
          }
        }
      }
      below = nodes;
    }
  }

  private static int bundles(int nodes) {
    return (nodes + FAN - 1) / FAN;
  }

  private static int[] pack(double[] boxes, int[] items) {
    Integer[] order = Arrays.stream(items).boxed().toArray(Integer[]::new);
    int parts = (int) Math.max(1, Math.ceil(Math.cbrt(bundles(items.length))));
    sort(order, 0, order.length, boxes, 0);
    int slab = bundles(Math.max(1, (order.length + parts - 1) / parts)) * FAN;
    for (int from = 0; from < order.length; from += slab) {
      int to = Math.min(order.length, from + slab);
      sort(order, from, to, boxes, 2);
      int row = bundles(Math.max(1, (slab + parts - 1) / parts)) * FAN;
      for (int start = from; start < to; start += row) {
        sort(order, start, Math.min(to, start + row), boxes, 1);
      }
    }
    return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
  }

  private static void sort(Integer[] order, int from, int to, double[] boxes, int axis) {
    Arrays.sort(
        order,
        from,
        to,
        Comparator.<Integer>comparingDouble(i -> boxes[6 * i + axis] + boxes[6 * i + 3 + axis])
            .thenComparing(Comparator.naturalOrder()));
  }

  /** Reports every item whose box is at most {@code distance} from a box, in the tree's order. */
  public void within(
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ,
      double distance,
      IntConsumer found) {
    if (items.length > 0) {
      int root = levels.length - 1;
      visit(root, 0, minX, minY, minZ, maxX, maxY, maxZ, distance, found);
    }
  }

  private void visit(
      int level,
      int node,
      double minX,
      double minY,
      double minZ,
      double maxX,
      double maxY,
      double maxZ,
      double distance,
      IntConsumer found) {
    int below = level == 0 ? items.length : levels[level - 1].length / 6;
    double[] bounds = level == 0 ? boxes : levels[level - 1];
    for (int child = FAN * node; child < Math.min(below, FAN * node + FAN); child++) {
      int box = level == 0 ? items[child] : child;
      int at = 6 * box;
      double gap =
          Distances.norm(
              gap(minX, maxX, bounds[at], bounds[at + 3]),
              gap(minY, maxY, bounds[at + 1], bounds[at + 4]),
              gap(minZ, maxZ, bounds[at + 2], bounds[at + 5]));
      if (gap <= distance) {
        if (level == 0) {
          found.accept(box);
        } else {
          visit(level - 1, child, minX, minY, minZ, maxX, maxY, maxZ, distance, found);
        }
      }
    }
  }
}
