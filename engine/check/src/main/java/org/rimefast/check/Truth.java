package org.rimefast.check;

/** Kleene's three truth values. */
public enum Truth {
  FALSE,
  UNKNOWN,
  TRUE;

  /** FALSE if either is, else UNKNOWN if either is. */
  public Truth and(Truth other) {
    if (this == FALSE || other == FALSE) {
      return FALSE;
    }
    return this == TRUE ? other : this;
  }

  /** TRUE if either is, else UNKNOWN if either is. */
  public Truth or(Truth other) {
    if (this == TRUE || other == TRUE) {
      return TRUE;
    }
    return this == FALSE ? other : this;
  }

  /** FALSE for TRUE and the other way round; UNKNOWN stays. */
  public Truth not() {
    return this == UNKNOWN ? UNKNOWN : of(this == FALSE);
  }

  /** TRUE or FALSE. */
  public static Truth of(boolean value) {
    return value ? TRUE : FALSE;
  }
}
