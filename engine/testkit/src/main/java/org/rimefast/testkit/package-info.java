/**
 * What those who write standards and planners test with: the cases of a standard as tests of JUnit,
 * and random modules, invented and seeded, to hold rules and engine to their laws.
 *
 * <p>What enters: the file of a standard and what stands beside it, or a seed. What leaves: a test
 * for each case, which fails in the words that a case report has, or a plan. What may never be in
 * it: a verdict or an expectation of its own, a clock or a locale.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.testkit;
