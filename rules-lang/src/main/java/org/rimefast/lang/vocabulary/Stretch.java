package org.rimefast.lang.vocabulary;

import java.util.List;

/**
 * A part of the path of an element: {@code along its whole length}, {@code before _}, {@code
 * between _ and _}, {@code through _}.
 *
 * @param id stable id, unique in a vocabulary
 * @param pattern words and {@code _} for each slot; {@code and} only as in {@code between _ and _}
 * @param path the kind of element that has a path
 * @param slots what may stand at each {@code _}, in order
 */
public record Stretch(String id, String pattern, Noun path, List<Slot> slots) {
  /** Copies the list. */
  public Stretch {
    slots = List.copyOf(slots);
  }

  @Override
  public String toString() {
    return pattern;
  }
}
