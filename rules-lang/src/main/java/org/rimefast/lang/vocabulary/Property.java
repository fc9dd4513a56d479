package org.rimefast.lang.vocabulary;

import java.util.List;

/**
 * A value that an element has or that can be measured from it: {@code clearance}, {@code distance
 * to _}.
 *
 * <p>A property without slots is written bare, with {@code its}, or with {@code of}: {@code
 * clearance}, {@code its clearance}, {@code clearance of the box}. One with slots is written in the
 * order of its pattern, and whose it is comes last: {@code distance to the shell of the box}.
 *
 * @param id stable id, unique in a vocabulary
 * @param pattern words and {@code _} for each slot
 * @param owner the kind of element that has it
 * @param slots what may stand at each {@code _}, in order
 * @param type the type of the value
 */
public record Property(String id, String pattern, Noun owner, List<Slot> slots, ValueType type) {
  /** Copies the list. */
  public Property {
    slots = List.copyOf(slots);
  }

  @Override
  public String toString() {
    return pattern;
  }
}
