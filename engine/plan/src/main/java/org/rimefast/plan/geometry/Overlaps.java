package org.rimefast.plan.geometry;

/**
 * Which bodies are drawn into one another by more than the contact tolerance. What is drawn to
 * touch is fitted on site, so there the other tolerances leave nothing open; they do for what is
 * drawn into another by less than they allow. A stud stands in its tracks, and is not in their way.
 */
final class Overlaps {
  private final RunGeometry runs;
  private final PartGeometry parts;
  private final StudsInTracks tracks;
  private final double contact;

  Overlaps(RunGeometry runs, PartGeometry parts, StudsInTracks tracks, double contact) {
    this.runs = runs;
    this.parts = parts;
    this.tracks = tracks;
    this.contact = contact;
  }

  /** How far one part would have to move to be out of another, the shortest way. */
  double depth(int partA, int partB) {
    double least = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      least = Math.min(least, depth(partA, partB, axis));
    }
    return least;
  }

  private double depth(int partA, int partB, int axis) {
    double[] boxes = parts.boxes();
    int a = 6 * partA + axis;
    int b = 6 * partB + axis;
    return Math.min(boxes[a + 3] - boxes[b], boxes[b + 3] - boxes[a]);
  }

  Certainty ofParts(int partA, int partB) {
    Certainty all = tracks.reachesOut(partA, partB);
    for (int axis = 0; axis < 3; axis++) {
      double tolerance = parts.gapMotion(partA, partB, axis);
      all = all.and(more(depth(partA, partB, axis) - contact, tolerance));
    }
    return all;
  }

  /** How far a run's outside lies in a part; less than 0 if it does not, NaN if not known. */
  double depthOfRun(int run, int part) {
    PlacedRun placed = runs.run(run);
    if (!placed.isComplete() || !parts.part(part).isComplete()) {
      return Double.NaN;
    }
    double[] line = placed.line();
    double distance = Lines.distanceToBox(line, parts.boxes(), part);
    if (distance > 0) {
      return placed.radius() - distance;
    }
    double deepest = 0;
    for (int i = 0; i + 5 < line.length; i += 3) {
      deepest = Math.max(deepest, deepest(line, i, part));
    }
    return placed.radius() + deepest;
  }

  Certainty ofRun(int run, int part) {
    return more(depthOfRun(run, part) - contact, runs.gapTolerance(run, part));
  }

  /** What is drawn to be 0 or less is so, whatever may be off. */
  static Certainty more(double depth, double tolerance) {
    return depth <= Distances.ROUNDING ? Certainty.NO : Certainty.more(depth, tolerance);
  }

  /**
   * The greatest distance from a segment's points within a part to the nearest of its sides. Each
   * side's distance changes evenly along the segment, so the greatest least one is at an end, or
   * where the distances of two sides are equal.
   */
  private double deepest(double[] line, int i, int part) {
    double best = Math.max(inside(line, i, part, 0), inside(line, i, part, 1));
    for (int one = 0; one < 6; one++) {
      for (int two = 0; two < one; two++) {
        double start = side(line, i, part, one, 0) - side(line, i, part, two, 0);
        double end = side(line, i, part, one, 1) - side(line, i, part, two, 1);
        double t = start / (start - end);
        if (t > 0 && t < 1) {
          best = Math.max(best, inside(line, i, part, t));
        }
      }
    }
    return best;
  }

  private double inside(double[] line, int i, int part, double t) {
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < 6; side++) {
      least = Math.min(least, side(line, i, part, side, t));
    }
    return least;
  }

  /** The distance of a segment's point at t from a side of a part, toward its inside. */
  private double side(double[] line, int i, int part, int side, double t) {
    int axis = side % 3;
    double at = line[i + axis] + t * (line[i + 3 + axis] - line[i + axis]);
    double plane = parts.boxes()[6 * part + side];
    return side < 3 ? at - plane : plane - at;
  }
}
