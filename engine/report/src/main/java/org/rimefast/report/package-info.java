/**
 * What people and other programs read of a check.
 *
 * <p>What enters: the result of a check, or the faults of a plan or standard that cannot be used; a
 * standard and what came of its cases. What leaves: text and pages for people, JSON for programs.
 * What may never be in it: a decision. Everything printed was decided, measured and worded by the
 * check.
 *
 * <p>Use:
 *
 * <pre>{@code
 * String text = TextReport.write(result, TextOptions.PLAIN);
 * byte[] json = JsonReport.write(List.of(result), List.of());
 * }</pre>
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.report;
