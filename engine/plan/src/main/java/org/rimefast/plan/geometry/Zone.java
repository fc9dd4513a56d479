package org.rimefast.plan.geometry;

/** A part of a corrugated sheet's cross-section, as seen from inside. */
public enum Zone {
  /** The flat that is nearest to the room. */
  INWARD_RIB("inward rib"),
  /** The sloping part between an inward rib and an outer bay. */
  WEB("web"),
  /** The flat that is farthest from the room. */
  OUTER_BAY("outer bay");

  private final String word;

  Zone(String word) {
    this.word = word;
  }

  /** The words that plans and rules use: {@code inward rib}. */
  public String word() {
    return word;
  }
}
