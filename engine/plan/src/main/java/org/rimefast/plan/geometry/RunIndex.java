package org.rimefast.plan.geometry;

import java.util.stream.IntStream;

/** Finds runs by the straight stretches that they are made of. */
final class RunIndex {
  private final RunGeometry runs;
  private final double spread;
  private final int[] owner; // the run of each stretch
  private final BoxTree tree;

  /**
   * An index of the runs whose place and diameter are known.
   *
   * @param spread how far any of them may be off
   */
  RunIndex(RunGeometry runs, int count, double spread) {
    this.runs = runs;
    this.spread = spread;
    int stretches = 0;
    for (int run = 0; run < count; run++) {
      stretches += runs.run(run).isComplete() ? runs.run(run).line().length / 3 - 1 : 0;
    }
    this.owner = new int[stretches];
    double[] boxes = new double[6 * stretches];
    int next = 0;
    for (int run = 0; run < count; run++) {
      PlacedRun placed = runs.run(run);
      if (placed.isComplete()) {
        double[] line = placed.line();
        for (int i = 0; i + 5 < line.length; i += 3) {
          for (int axis = 0; axis < 3; axis++) {
            double from = line[i + axis];
            double to = line[i + 3 + axis];
            boxes[6 * next + axis] = Math.min(from, to) - placed.radius();
            boxes[6 * next + 3 + axis] = Math.max(from, to) + placed.radius();
          }
          owner[next++] = run;
        }
      }
    }
    this.tree = new BoxTree(boxes, IntStream.range(0, stretches).toArray());
  }

  /** Collects runs that come within {@code distance} of a box, some of them often. */
  void near(double[] of, int box, double distance, IndexList found) {
    int at = 6 * box;
    tree.within(
        of[at],
        of[at + 1],
        of[at + 2],
        of[at + 3],
        of[at + 4],
        of[at + 5],
        distance + spread,
        found);
    found.replace(owner, -1);
  }

  /** Collects other runs that come within {@code distance} of a run, some of them often. */
  void near(int run, double distance, IndexList found) {
    PlacedRun placed = runs.run(run);
    double[] line = placed.line();
    double reach = distance + spread + placed.radius();
    for (int i = 0; i + 5 < line.length; i += 3) {
      tree.within(
          Math.min(line[i], line[i + 3]),
          Math.min(line[i + 1], line[i + 4]),
          Math.min(line[i + 2], line[i + 5]),
          Math.max(line[i], line[i + 3]),
          Math.max(line[i + 1], line[i + 4]),
          Math.max(line[i + 2], line[i + 5]),
          reach,
          found);
    }
    found.replace(owner, run);
  }
}
