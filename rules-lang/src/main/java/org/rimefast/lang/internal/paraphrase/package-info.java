/**
 * Typed rules to sentences.
 *
 * <p>What enters: a typed rule or term. What leaves: words that the compiler should read back to
 * the same node, or what in it no words can say. What may never be in it: words that were only
 * copied from the text the rule was read from.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.paraphrase;
