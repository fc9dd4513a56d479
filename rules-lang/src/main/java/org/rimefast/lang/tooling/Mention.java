package org.rimefast.lang.tooling;

import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.Span;

/**
 * A place where a word stands for something.
 *
 * @param span the word or phrase; for a property or relation with slots, up to the end of what
 *     stands at the last of them
 * @param meaning what it stands for
 * @param declaration true where a constant, term or rule gets its name
 */
public record Mention(Span span, Meaning meaning, boolean declaration) {}
