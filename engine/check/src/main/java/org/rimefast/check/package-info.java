/**
 * Checks a plan against a standard.
 *
 * <p>What enters: a typed standard and a plan. What leaves: a verdict for every rule and element,
 * and findings that explain themselves. What may never be in it: a rule, a file format, a clock or
 * a locale.
 *
 * <p>Use:
 *
 * <pre>{@code
 * Dictionary dictionary = SteelModules.dictionary();
 * Standard standard = new RuleCompiler(dictionary.vocabulary()).compile(text).standard().orElseThrow();
 * CheckResult result = new Checker(dictionary, standard).check(plan, CheckOptions.DEFAULT);
 * }</pre>
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check;
