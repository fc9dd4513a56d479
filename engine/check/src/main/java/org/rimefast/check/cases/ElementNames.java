package org.rimefast.check.cases;

import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Face;

/** Finds the elements that cases name. */
final class ElementNames {
  private ElementNames() {}

  /** The handle of the element with this id, of a face or of the room; -1 if there is none. */
  static int handle(PlanFacts facts, String name) {
    int handle = facts.handleOf(name);
    if (handle >= 0) {
      return handle;
    }
    for (Face face : Face.values()) {
      boolean isWall = face.isWall() && name.equals(face.word() + " wall");
      if (isWall || name.equals(face.word())) {
        return facts.handleOf(face);
      }
    }
    return name.equals("room") ? facts.room() : -1;
  }
}
