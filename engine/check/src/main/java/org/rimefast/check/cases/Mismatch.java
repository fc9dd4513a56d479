package org.rimefast.check.cases;

import java.util.Optional;
import org.rimefast.lang.rule.Rule;

/**
 * Something that did not come out as a case expects.
 *
 * @param rule the rule that says otherwise; empty if it is all of them together
 * @param expected what was expected: {@code broken by box R-1}
 * @param found what came out instead, and why: {@code met by box R-1: clearance of box R-1 is ...}
 */
public record Mismatch(Optional<Rule> rule, String expected, String found) {}
