package org.rimefast.lang.internal.paraphrase;

/** How much is said to keep a sentence from having a second reading. */
public enum Style {
  /** As a person would say it. */
  PLAIN,
  /**
   * At the slots of a property, elements are counted even where there is one: {@code the first
   * box}.
   */
  CAREFUL
}
