/**
 * Checked, typed rules: what the compiler hands to an engine.
 *
 * <p>Every node is immutable and well typed: constructors refuse what the type checker would. Each
 * keeps the span of the text it was read from.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.rule;
