/**
 * From phrases to the words of the vocabulary.
 *
 * <p>What enters: a phrase, the vocabulary and what has been spoken of so far. What leaves: every
 * reading of the phrase. What may never be in it: a choice among readings that all make sense.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.resolve;
