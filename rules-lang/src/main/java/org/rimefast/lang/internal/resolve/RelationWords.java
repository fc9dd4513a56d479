package org.rimefast.lang.internal.resolve;

/** The part of a pattern that can be named without its slots. */
final class RelationWords {
  private RelationWords() {}

  static String beforeSlot(String pattern) {
    int slot = pattern.indexOf('_');
    return slot < 0 ? pattern : pattern.substring(0, slot).strip();
  }
}
