package org.rimefast.check;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Waiver;

/**
 * What one rule says of one element, explained.
 *
 * @param rule the rule
 * @param verdict what it says
 * @param element of what
 * @param reason one sentence: what decided the verdict
 * @param evidence the conditions that decided it
 * @param missing every value that is missing, once; empty unless undecided
 * @param waiver what allows it to stay broken; empty if nothing does
 */
public record Finding(
    Rule rule,
    Verdict verdict,
    ElementName element,
    String reason,
    List<Evidence> evidence,
    List<MissingValue> missing,
    Optional<Waiver> waiver) {
  /** Copies the lists. */
  public Finding {
    evidence = List.copyOf(evidence);
    missing = List.copyOf(missing);
  }

  /** A finding that nothing waives. */
  public Finding(
      Rule rule,
      Verdict verdict,
      ElementName element,
      String reason,
      List<Evidence> evidence,
      List<MissingValue> missing) {
    this(rule, verdict, element, reason, evidence, missing, Optional.empty());
  }

  /** The same finding, waived. */
  public Finding waivedBy(Waiver permission) {
    return new Finding(rule, verdict, element, reason, evidence, missing, Optional.of(permission));
  }
}
