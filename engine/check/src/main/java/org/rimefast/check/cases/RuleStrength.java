package org.rimefast.check.cases;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Rule;

/**
 * How well cases pin a rule down: what of it they have seen, and which small changes of it they
 * would notice.
 *
 * @param rule the rule
 * @param cases how many cases look at it and come out as expected; no others count
 * @param conditions its conditions that hold no other, in the order of its text
 * @param changes how many changed rules were tried: a comparison turned or made strict, a limit
 *     moved by one step or given the unit it is easily mistaken for, a condition left out, a
 *     quantifier or a word changed, a {@code not} put in or taken away
 * @param unnoticed those after which every case still comes out as expected
 * @param isBounded true if there were more changes than are tried
 */
public record RuleStrength(
    Rule rule,
    int cases,
    List<Seen> conditions,
    int changes,
    List<Unnoticed> unnoticed,
    boolean isBounded) {

  /** Copies the lists. */
  public RuleStrength {
    conditions = List.copyOf(conditions);
    unnoticed = List.copyOf(unnoticed);
  }

  /** How many of the changes some case notices. */
  public int noticed() {
    return changes - unnoticed.size();
  }

  /**
   * How a condition came out over all cases.
   *
   * @param text as written, on one line
   * @param isTrue it was true of something
   * @param isFalse it was false of something
   * @param isUndecided it was neither of something, for want of a value or within the tolerance
   * @param limit how near the cases came to its limit, if it has a fixed one
   */
  public record Seen(
      String text, boolean isTrue, boolean isFalse, boolean isUndecided, Optional<Limit> limit) {}

  /**
   * How near cases came to a limit. A step is the least by which a limit can be off in the way it
   * is written: 1/8 in (or the fraction written, if finer), 1 in for feet, else one in the last
   * place: 1 mm for {@code 50 mm}.
   *
   * @param text the limit as written
   * @param isJustMet a number no more than a step from the limit met the condition
   * @param isJustMissed a number no more than a step from the limit did not
   */
  public record Limit(String text, boolean isJustMet, boolean isJustMissed) {}

  /**
   * A change that no case notices.
   *
   * @param told what no case tells apart: {@code "at least" from "more than"}
   * @param place the text that was changed, on one line
   */
  public record Unnoticed(String told, String place) {}
}
