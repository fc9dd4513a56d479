/**
 * The cases of a standard as tests of JUnit.
 *
 * <p>What enters: the file of a standard, and what stands beside it. What leaves: a test for each
 * case, which fails in the words that a case report has. What may never be in it: a verdict or an
 * expectation of its own.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.testkit;
