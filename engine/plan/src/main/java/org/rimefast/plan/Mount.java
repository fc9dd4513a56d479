package org.rimefast.plan;

import java.util.Locale;

/** How a box, panel or luminaire stands to the lining. */
public enum Mount {
  /** Its front is flush with the lining's room side: its body is in the wall. */
  FLUSH,
  /** Its front is flush with the studs' warm face, covered by the lining. */
  COVERED,
  /** It stands on the finished lining: its back is at the lining's room side. */
  SURFACE;

  /** The word that plans and rules use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
