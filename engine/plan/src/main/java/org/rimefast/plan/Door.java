package org.rimefast.plan;

import java.util.Locale;

/**
 * The leaf of a door, as wide as its opening.
 *
 * @param hinge the side of its hinges, seen from the room
 * @param opens where it swings
 */
public record Door(Hinge hinge, Swing opens) {
  /** The side of the hinges, seen from the room. */
  public enum Hinge {
    LEFT,
    RIGHT;

    /** The word that plans use. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Where a leaf swings. */
  public enum Swing {
    INWARD,
    OUTWARD;

    /** The word that plans use. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
