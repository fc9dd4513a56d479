/**
 * Words for messages: lists, articles, nearest words, readings of typed nodes.
 *
 * <p>What enters: words and typed nodes. What leaves: text. What may never be in it: a decision
 * whether something is a fault.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.message;
