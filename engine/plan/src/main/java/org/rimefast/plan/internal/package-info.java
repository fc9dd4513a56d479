/**
 * From a JSON tree to a plan and back.
 *
 * <p>What enters: a JSON tree, read from a file or made by the builder, or a plan. What leaves: the
 * plan and every fault found on the way, or a JSON tree. What may never be in it: a default for a
 * value that nobody gave.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.plan.internal;
