/**
 * JSON text and JSON trees with places.
 *
 * <p>What enters: bytes. What leaves: a tree whose values know their line, column and JSON pointer,
 * and what is wrong with the text in words for people. What may never be in it: anything of plans.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.plan.internal.json;
