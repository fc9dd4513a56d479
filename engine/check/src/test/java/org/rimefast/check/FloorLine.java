package org.rimefast.check;

import org.rimefast.plan.Face;
import org.rimefast.plan.Part;
import org.rimefast.plan.ShellSize;

/** A word of a test: how far one walks along a wall to the next receptacle. */
final class FloorLine {
  private FloorLine() {}

  /**
   * The greatest distance of a point of the floor line from the nearest box of the wall, in
   * millimetres; NaN if a box has no place, the length of the wall if it has no box.
   */
  static double greatestWay(PlanFacts facts, int wall) {
    Face face = facts.face(wall);
    ShellSize shell = facts.plan().shell();
    double length = face == Face.LEFT || face == Face.RIGHT ? shell.length() : shell.width();
    double[] places =
        facts.plan().parts().stream()
            .filter(part -> part instanceof Part.Box && part.face() == face)
            .mapToDouble(part -> PathWords.millimetres(part.along()))
            .sorted()
            .toArray();
    if (places.length == 0) {
      return length;
    }
    // The ends of the wall have a receptacle on one side only.
    double greatest = Math.max(places[0], length - places[places.length - 1]);
    for (int i = 1; i < places.length; i++) {
      greatest = Math.max(greatest, (places[i] - places[i - 1]) / 2);
    }
    return greatest;
  }
}
