/**
 * Lays rule text out anew.
 *
 * <p>What enters: rule text and its pieces. What leaves: the same pieces and comments in the same
 * order, with other white space between them. What may never be in it: a vocabulary, a meaning, or
 * a change of a single word.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.format;
