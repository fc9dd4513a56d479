package org.rimefast.lang.tooling;

import org.rimefast.lang.source.Span;

/**
 * One statement of a text, whether or not it can be read.
 *
 * @param keyword the word it begins with: {@code rule}
 * @param name what it is called; the keyword if that cannot be told
 * @param title its title in quotes; may be empty
 * @param nameSpan where its name stands; the keyword if it has none
 * @param span the whole statement
 */
public record OutlineEntry(String keyword, String name, String title, Span nameSpan, Span span) {}
