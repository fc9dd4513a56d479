package org.rimefast.check;

import java.util.Locale;

/** What a rule says of an element. */
public enum Verdict {
  /** The element does what the rule asks. */
  MET,
  /** It does not. */
  BROKEN,
  /** A value is missing, or the limit lies within the tolerance. */
  UNDECIDED,
  /** The rule does not speak of this element. */
  NOT_APPLICABLE,
  /** The rule could not be worked out for this element, for instance a division by zero. */
  ERROR;

  /** The words that reports use: {@code not applicable}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
