package org.rimefast.lang.internal.syntax;

import org.rimefast.lang.source.Span;

/** A word where it stands. */
public record Word(String text, Span span) {}
