/**
 * What can stand at a place of a text that is being written.
 *
 * <p>What enters: the text, a place in it and what its standard defines. What leaves: words that
 * the compiler would take there. What may never be in it: a second grammar; whether a word fits is
 * asked of the compiler.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.complete;
