package org.rimefast.check;

/** What stands at the slots of a word, counted from 0. */
public interface Arguments {
  /** The element at a slot, as a handle of {@link PlanFacts}. */
  int element(int slot);

  /** The number at a slot. */
  Reading number(int slot);

  /** The place of the word at a slot in its list of words. */
  int word(int slot);

  /** The stretches of the element's path that a slot names. */
  Stretches stretches(int slot);
}
