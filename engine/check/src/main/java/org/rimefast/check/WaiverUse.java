package org.rimefast.check;

import java.util.List;
import java.util.Locale;
import org.rimefast.lang.rule.Waiver;

/**
 * What came of a waiver.
 *
 * @param waiver the waiver
 * @param state what came of it
 * @param findings how many broken findings it covers; 0 unless it is used
 * @param beyond broken elements that it names and does not cover, because they are, or may be,
 *     farther off the limit than it reaches
 * @param unsure elements of which it cannot be told whether it means them; it does not cover them
 * @param unknown names in it that are none of the rule's elements in this plan
 */
public record WaiverUse(
    Waiver waiver,
    State state,
    int findings,
    List<String> beyond,
    List<String> unsure,
    List<String> unknown) {

  /** What can come of a waiver. */
  public enum State {
    /** It covers a broken finding. */
    USED,
    /** It means elements, and none of them breaks the rule. */
    NO_LONGER_NEEDED,
    /** It covers nothing: it means no element, or all that is broken lies beyond its bound. */
    UNUSED,
    /** Its first day is still to come. */
    NOT_YET,
    /** Its last day is over. */
    EXPIRED,
    /** Its rule is due only after the stage asked for. */
    NOT_DUE,
    /** It is for another plan. */
    OTHER_PLAN;

    /** The words that reports use: {@code no longer needed}. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** Copies the lists. */
  public WaiverUse {
    beyond = List.copyOf(beyond);
    unsure = List.copyOf(unsure);
    unknown = List.copyOf(unknown);
  }
}
