package org.rimefast.plan;

import java.util.Locale;

/** What a part is made of, as far as cold travels through it. */
public enum Material {
  STEEL,
  ALUMINIUM,
  PLASTIC,
  WOOD;

  /** The word that plans and rules use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True for what carries cold. */
  public boolean isMetal() {
    return this == STEEL || this == ALUMINIUM;
  }
}
