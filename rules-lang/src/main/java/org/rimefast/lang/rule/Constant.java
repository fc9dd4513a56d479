package org.rimefast.lang.rule;

import java.util.Optional;
import org.rimefast.lang.source.Span;

/**
 * A named constant of a standard: {@code let foam cover be 2 in}.
 *
 * @param name how rules call it; may be several words
 * @param value its value
 * @param because why it is so
 * @param source where it comes from
 * @param span the text it was read from
 */
public record Constant(
    String name,
    Value.Literal value,
    Optional<String> because,
    Optional<String> source,
    Span span) {}
