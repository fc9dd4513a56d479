package org.rimefast.check.internal.steel;

import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.geometry.BoxTree;

/**
 * Finds the parts that {@link Extents} does not hold apart from a part: by a box around everywhere
 * a part can be, as wide as can be in a direction in which it is not known.
 */
final class PossibleParts {
  private static final PlanFacts.Key<PossibleParts> KEY =
      new PlanFacts.Key<>("where parts can be", PossibleParts.class);

  private final double[] boxes;
  private final BoxTree all;
  private final BoxTree unplaced;

  private PossibleParts(PlanFacts facts) {
    int[] parts = facts.members(Nouns.PART);
    boxes = new double[6 * parts.length];
    HandleList without = new HandleList();
    for (int part : parts) {
      Extents.put(facts, part, boxes, 6 * part);
      if (facts.geometry().cuboid(part) == null) {
        without.add(part);
      }
    }
    all = new BoxTree(boxes, parts);
    unplaced = new BoxTree(boxes, without.toArray());
  }

  static PossibleParts of(PlanFacts facts) {
    return facts.keep(KEY, PossibleParts::new);
  }

  /** Adds all parts that may be so near to a part, itself among them. */
  void near(int part, double distance, HandleList found) {
    near(all, part, distance, found);
  }

  /** The same for parts that have no place. */
  void unplacedNear(int part, double distance, HandleList found) {
    near(unplaced, part, distance, found);
  }

  /** Who is no farther in any of three directions is less than twice as far as the crow flies. */
  private void near(BoxTree tree, int part, double distance, HandleList found) {
    int at = 6 * part;
    tree.within(
        boxes[at],
        boxes[at + 1],
        boxes[at + 2],
        boxes[at + 3],
        boxes[at + 4],
        boxes[at + 5],
        2 * Math.max(0, distance) + Touch.ROUNDING,
        found);
  }
}
