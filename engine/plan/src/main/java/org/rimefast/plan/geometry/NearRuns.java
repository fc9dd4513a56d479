package org.rimefast.plan.geometry;

/**
 * What runs may touch: every part and every other run whose gap to a run, less what it may differ,
 * is no more than the contact tolerance. Runs cross the whole module, so what is looked up are
 * their segments. Worked out once; n log n for runs that do not crowd.
 */
final class NearRuns {
  private static final int[] NONE = {};

  private final RunGeometry runs;
  private final PartGeometry parts;
  private final double contact;
  private final int[][] runsOfRun;
  private final int[][] partsOfRun;
  private final int[][] runsOfPart;
  private final int[] unplaced;

  NearRuns(RunGeometry runs, PartGeometry parts, int partCount, double contact) {
    this.runs = runs;
    this.parts = parts;
    this.contact = contact + Distances.ROUNDING;
    this.runsOfRun = new int[runs.count()][];
    this.partsOfRun = new int[runs.count()][];
    this.runsOfPart = new int[partCount][];
    IndexList without = new IndexList();
    SegmentTree segments = new SegmentTree();
    double farthest = 0;
    for (int run = 0; run < runs.count(); run++) {
      runsOfRun[run] = NONE;
      partsOfRun[run] = NONE;
      PlacedRun placed = runs.run(run);
      if (!placed.isComplete()) {
        without.accept(run);
        continue;
      }
      double[] line = placed.line();
      for (int i = 0; i + 5 < line.length; i += 3) {
        segments.add(
            run,
            line[i],
            line[i + 1],
            line[i + 2],
            line[i + 3],
            line[i + 4],
            line[i + 5],
            placed.radius());
      }
      farthest = Math.max(farthest, reach(run));
    }
    this.unplaced = without.toArray();
    segments.build();
    findRuns(segments, farthest);
    findParts(segments, farthest);
  }

  private double reach(int run) {
    return runs.run(run).motion() + runs.run(run).radiusTolerance();
  }

  private void findRuns(SegmentTree segments, double farthest) {
    for (int i = 0; i < segments.size(); ) {
      int run = segments.owner(i);
      IndexList near = new IndexList();
      for (; i < segments.size() && segments.owner(i) == run; i++) {
        segments.near(i, contact + farthest + reach(run), near);
      }
      IndexList kept = new IndexList();
      near.inOrder(
          other -> {
            if (other != run
                && runs.gapBetween(run, other) - runs.gapToleranceBetween(run, other) <= contact) {
              kept.accept(other);
            }
          });
      runsOfRun[run] = kept.toArray();
    }
  }

  private void findParts(SegmentTree segments, double farthest) {
    IndexList[] ofRun = new IndexList[runsOfRun.length];
    for (int run = 0; run < ofRun.length; run++) {
      ofRun[run] = new IndexList();
    }
    for (int part = 0; part < runsOfPart.length; part++) {
      runsOfPart[part] = NONE;
      if (!parts.part(part).isComplete()) {
        continue;
      }
      double motion =
          Distances.norm(
              parts.motion(part, 0) + parts.standoff(part, 0),
              parts.motion(part, 1) + parts.standoff(part, 1),
              parts.motion(part, 2) + parts.standoff(part, 2));
      IndexList near = new IndexList();
      segments.near(parts.boxes(), part, contact + farthest + motion, near);
      IndexList kept = new IndexList();
      int of = part;
      near.inOrder(
          run -> {
            if (runs.gap(run, of) - runs.gapTolerance(run, of) <= contact) {
              kept.accept(run);
              ofRun[run].accept(of);
            }
          });
      runsOfPart[part] = kept.toArray();
    }
    for (int run = 0; run < ofRun.length; run++) {
      partsOfRun[run] = ofRun[run].toArray();
    }
  }

  /** Runs that a run may touch. */
  int[] runsOfRun(int run) {
    return runsOfRun[run];
  }

  /** Parts that a run may touch. */
  int[] partsOfRun(int run) {
    return partsOfRun[run];
  }

  /** Runs that a part may touch. */
  int[] runsOfPart(int part) {
    return runsOfPart[part];
  }

  /** Runs of which it is not known where their outside is. */
  int[] unplaced() {
    return unplaced;
  }
}
