/**
 * The compiler of the rule language.
 *
 * <p>What enters: rule text and a vocabulary. What leaves: a typed standard, or diagnostics with
 * spans. What may never be in it: steel, plans, files, clocks, locales, or a text of the parser
 * generator.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang;
