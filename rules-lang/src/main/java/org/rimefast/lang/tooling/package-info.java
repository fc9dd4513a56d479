/**
 * What an editor asks about rule text while it is written: what stands at a place, what could stand
 * there, where a name is used.
 *
 * <p>What enters: a text, right or wrong. What leaves: answers of the readers that compile it. What
 * may never be in it: a second way of reading rule text.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.tooling;
