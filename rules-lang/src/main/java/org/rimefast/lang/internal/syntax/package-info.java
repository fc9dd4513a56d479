/**
 * Rule text as a tree: statements, sentences, conditions and phrases, each with its whole span.
 *
 * <p>What enters: what the grammar read. What leaves: immutable records. What may never be in it:
 * the meaning of a word.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.syntax;
