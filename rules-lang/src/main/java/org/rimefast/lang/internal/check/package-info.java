/**
 * From statements to typed rules.
 *
 * <p>What enters: the records of {@code internal.syntax} and a vocabulary. What leaves: the typed
 * rules of {@code rule}, or diagnostics. What may never be in it: a guess.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.check;
