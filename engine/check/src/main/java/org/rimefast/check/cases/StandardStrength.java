package org.rimefast.check.cases;

import java.util.List;
import org.rimefast.lang.rule.Standard;

/**
 * How well cases pin a standard down.
 *
 * @param standard the standard
 * @param rules one for each rule that it wrote or amended, in its order
 */
public record StandardStrength(Standard standard, List<RuleStrength> rules) {
  /** Copies the list. */
  public StandardStrength {
    rules = List.copyOf(rules);
  }

  /** How many small changes of its rules were tried. */
  public int changes() {
    return rules.stream().mapToInt(RuleStrength::changes).sum();
  }

  /** How many of them some case notices. */
  public int noticed() {
    return rules.stream().mapToInt(RuleStrength::noticed).sum();
  }

  /** The share that is noticed, from 0 to 1; 1 if nothing could be changed. */
  public double share() {
    return changes() == 0 ? 1 : (double) noticed() / changes();
  }
}
