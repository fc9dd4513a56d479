/**
 * Puts the texts of a standard together: its own, those it includes, and those it builds on.
 *
 * <p>What enters: a text and a host that finds others. What leaves: all of them as one, and the
 * statements of each layer. What may never be in it: a file, or a meaning.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.layer;
