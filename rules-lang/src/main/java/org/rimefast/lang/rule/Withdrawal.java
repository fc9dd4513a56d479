package org.rimefast.lang.rule;

/**
 * A rule that a standard took out.
 *
 * @param rule the rule as it was
 * @param change by whom and why
 */
public record Withdrawal(Rule rule, Change change) {}
