/**
 * Runs the cases of a standard: examples of what its rules must say.
 *
 * <p>What enters: a standard, its typed cases, and the plans that they name, from the host. What
 * leaves: for each case whether all came out as expected, and if not, what did instead and why.
 * What may never be in it: a verdict of its own; all come from {@link org.rimefast.check.Checker}.
 *
 * <p>Use:
 *
 * <pre>{@code
 * CaseRunner runner = new CaseRunner(SteelModules.dictionary(), files);
 * CaseResults results = runner.run(standard, standard.cases());
 * }</pre>
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.cases;
