package org.rimefast.check;

import java.util.Optional;
import org.rimefast.plan.PlanSource;

/**
 * Names an element of a plan to people and programs.
 *
 * @param noun what it is: {@code box}
 * @param id its id; empty for what there is one of, such as the room
 * @param where where it is on the module, in words: {@code left wall, along 2635 mm, up 450 mm};
 *     may be empty
 * @param pointer its place in the plan as a JSON pointer
 * @param place line and column in the plan file; empty if the plan was built
 */
public record ElementName(
    String noun, String id, String where, String pointer, Optional<PlanSource.Place> place) {
  /** {@code box R-3}, or {@code room}. */
  public String label() {
    return id.isEmpty() ? noun : noun + " " + id;
  }
}
