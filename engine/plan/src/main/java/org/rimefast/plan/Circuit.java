package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * A branch circuit. Null means not given.
 *
 * @param panel the id of the panel that feeds it
 * @param breaker rating of its breaker
 * @param voltage its voltage
 * @param load the current that it is laid out for
 * @param terminals the temperature that its terminals are marked for
 */
public record Circuit(
    String id,
    String pointer,
    @Nullable String panel,
    @Nullable Amount breaker,
    @Nullable Amount voltage,
    @Nullable Amount load,
    @Nullable Amount terminals)
    implements Element {}
