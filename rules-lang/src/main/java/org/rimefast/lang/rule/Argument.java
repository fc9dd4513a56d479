package org.rimefast.lang.rule;

/** What stands at a slot: an element or a value. */
public sealed interface Argument permits Reference, Value {}
