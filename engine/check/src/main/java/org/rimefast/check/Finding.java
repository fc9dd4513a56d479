package org.rimefast.check;

import java.util.List;
import org.rimefast.lang.rule.Rule;

/**
 * What one rule says of one element, explained.
 *
 * @param rule the rule
 * @param verdict what it says
 * @param element of what
 * @param reason one sentence: what decided the verdict
 * @param evidence the conditions that decided it
 * @param missing every value that is missing, once; empty unless undecided
 */
public record Finding(
    Rule rule,
    Verdict verdict,
    ElementName element,
    String reason,
    List<Evidence> evidence,
    List<MissingValue> missing) {
  /** Copies the lists. */
  public Finding {
    evidence = List.copyOf(evidence);
    missing = List.copyOf(missing);
  }
}
