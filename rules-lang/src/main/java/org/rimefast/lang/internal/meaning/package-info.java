/**
 * What a typed rule means, apart from its words: its identity, what a change of it does, and how
 * two texts differ.
 *
 * <p>What enters: typed rules. What leaves: hashes, effects, words. What may never be in it: a
 * decision whether something is a fault.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.meaning;
