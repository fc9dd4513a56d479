/**
 * The plan of one module: what a planner or a person wrote, typed, with the place of every value.
 *
 * <p>What enters: plan JSON, or calls of the builder. What leaves: an immutable {@link
 * org.rimefast.plan.Plan}, or every fault of the file with place and remedy. What may never be in
 * it: rules, verdicts, or a value that nobody gave.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.plan;
