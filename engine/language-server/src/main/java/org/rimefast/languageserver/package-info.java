/**
 * Rule text in an editor: what is wrong while it is typed, what could be written, what a word
 * means.
 *
 * <p>What enters: messages of the Language Server Protocol, and files that the host gives. What
 * leaves: the answers of the compiler's own readers, with places counted as the protocol counts
 * them. What may never be in it: a second way of reading rule text.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.languageserver;
