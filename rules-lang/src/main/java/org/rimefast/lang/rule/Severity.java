package org.rimefast.lang.rule;

import java.util.Locale;

/** How much a broken rule matters; gravest first. */
public enum Severity {
  /** Do not pass the hold point. */
  HOLD,
  /** Put right before handover. */
  FIX,
  /** Worth knowing. */
  ADVISE;

  /** The word that rules and reports use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
