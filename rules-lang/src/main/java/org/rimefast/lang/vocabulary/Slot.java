package org.rimefast.lang.vocabulary;

/** What may stand at a {@code _} of a relation's or measure's pattern. */
public sealed interface Slot {
  /** An element of a kind: {@code it}, {@code the box}, {@code a stud}, {@code its face}. */
  record Element(Noun noun) implements Slot {}

  /**
   * A value: {@code outer bay}, {@code 300 mm}, {@code its depth}.
   *
   * @param type its type
   * @param widens true if a greater number makes the relation hold of more and of all that it held
   *     of before, as in {@code within 300 mm of a stud}
   */
  record Of(ValueType type, boolean widens) implements Slot {
    /** A value of which that is not so, or not known. */
    public Of(ValueType type) {
      this(type, false);
    }
  }

  /**
   * A stretch of the path of the element that the word is said of: {@code along its whole length}.
   * The word asks its question of that stretch only.
   */
  record Along(Noun path) implements Slot {}

  /**
   * All elements of a kind, as what a chain may pass: {@code an insulator}. Only the last slot of a
   * relation that follows chains can be one.
   */
  record Kind(Noun noun) implements Slot {}
}
