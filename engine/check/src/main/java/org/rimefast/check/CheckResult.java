package org.rimefast.check;

import java.util.List;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Plan;

/**
 * What a standard says of a plan.
 *
 * @param engine name and version of the engine: {@code rimefast 0.1.0}
 * @param standard the standard
 * @param standardHash SHA-256 of the standard's text, in hex
 * @param plan the plan
 * @param options how it was checked
 * @param rules one for each rule that was due, in the order of the standard
 * @param notDue ids of the rules that are due only after the stage asked for
 * @param waivers every waiver that was handed in, and what came of it, in the order handed in
 * @param unaskedReadings readings of the plan that count for nothing: no inspect item of the
 *     standard asks for them, or their day has not come yet
 */
public record CheckResult(
    String engine,
    Standard standard,
    String standardHash,
    Plan plan,
    CheckOptions options,
    List<RuleResult> rules,
    List<String> notDue,
    List<WaiverUse> waivers,
    List<UnaskedReading> unaskedReadings) {
  /** Copies the lists. */
  public CheckResult {
    rules = List.copyOf(rules);
    notDue = List.copyOf(notDue);
    waivers = List.copyOf(waivers);
    unaskedReadings = List.copyOf(unaskedReadings);
  }

  /** A result without waivers and without readings that nobody asked for. */
  public CheckResult(
      String engine,
      Standard standard,
      String standardHash,
      Plan plan,
      CheckOptions options,
      List<RuleResult> rules,
      List<String> notDue) {
    this(engine, standard, standardHash, plan, options, rules, notDue, List.of(), List.of());
  }

  /** Every finding, in the order of the standard and then of the plan. */
  public List<Finding> findings() {
    return rules.stream().flatMap(result -> result.findings().stream()).toList();
  }

  /** How many of the broken are waived, over all rules. */
  public int waived() {
    return rules.stream().mapToInt(RuleResult::waived).sum();
  }

  /** How many elements got {@code verdict}, over all rules. */
  public int count(Verdict verdict) {
    return rules.stream().mapToInt(result -> result.count(verdict)).sum();
  }
}
