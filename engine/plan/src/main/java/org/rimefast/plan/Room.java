package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * The room that the module becomes. Null means not given.
 *
 * @param pointer where it stands in the plan: {@code /room}
 * @param use what it is for, in words
 * @param temperature air temperature in use
 * @param humidity relative humidity in use
 */
public record Room(
    String pointer,
    @Nullable String use,
    @Nullable Amount temperature,
    @Nullable Amount humidity) {}
