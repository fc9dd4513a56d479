package org.rimefast.lang.vocabulary;

/** What may stand at a {@code _} of a relation's or measure's pattern. */
public sealed interface Slot {
  /** An element of a kind: {@code it}, {@code the box}, {@code a stud}, {@code its face}. */
  record Element(Noun noun) implements Slot {}

  /** A value: {@code outer bay}, {@code 300 mm}, {@code its depth}. */
  record Of(ValueType type) implements Slot {}
}
