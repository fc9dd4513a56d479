package org.rimefast.check;

import java.util.Optional;
import org.rimefast.lang.rule.Comparison;

/**
 * A measured number beside its limit. Numbers are in SI units; texts are in the unit that the
 * rule's author wrote.
 *
 * @param quantity what was measured: {@code clearance of box R-3}
 * @param least least value within the plan's tolerances
 * @param most greatest value within the plan's tolerances; the same as {@code least} without
 *     tolerance
 * @param measured the value as text: {@code 0.252 in}, {@code 1.9 to 2.1 in}
 * @param measuredInPlanUnits the value in the plan's own unit, if it is a length and that differs
 * @param comparison how it is compared
 * @param limit the limit in SI units (its least, where the limit itself is uncertain)
 * @param limitText the limit as written: {@code 2 in}
 * @param limitName the name of the constant that gave the limit, if one did
 * @param margin how far the value lies on the right side of the limit in the worst case; negative
 *     if it does not; 0 for an equality
 * @param marginText the amount of the margin, without sign: {@code 1.748 in}
 */
public record Measurement(
    String quantity,
    double least,
    double most,
    String measured,
    Optional<String> measuredInPlanUnits,
    Comparison comparison,
    double limit,
    String limitText,
    Optional<String> limitName,
    double margin,
    String marginText) {}
