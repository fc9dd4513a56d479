/**
 * The reference evaluator: slow and plain. It works a rule out again for one element, straight from
 * the typed tree, and records what decided.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.internal.reference;
