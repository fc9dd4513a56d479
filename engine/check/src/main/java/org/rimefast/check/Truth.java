package org.rimefast.check;

/** Kleene's three truth values. */
public enum Truth {
  FALSE,
  UNKNOWN,
  TRUE;

  private static final Truth[] VALUES = values();

  /** FALSE if either is, else UNKNOWN if either is. */
  public Truth and(Truth other) {
    return VALUES[Math.min(ordinal(), other.ordinal())];
  }

  /** TRUE if either is, else UNKNOWN if either is. */
  public Truth or(Truth other) {
    return VALUES[Math.max(ordinal(), other.ordinal())];
  }

  /** FALSE for TRUE and the other way round; UNKNOWN stays. */
  public Truth not() {
    return VALUES[2 - ordinal()];
  }

  /** TRUE or FALSE. */
  public static Truth of(boolean value) {
    return value ? TRUE : FALSE;
  }
}
