package org.rimefast.plan;

/** Anything in a plan that has an id. */
public sealed interface Element permits Circuit, Opening, Part, Run {
  /** Its id, unique in the plan. Items of a repeat are {@code ID-1}, {@code ID-2}, ... */
  String id();

  /** Where it stands in the plan file, as a JSON pointer: {@code /boxes/2}. */
  String pointer();
}
