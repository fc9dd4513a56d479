package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * Where the module stands. Null means not given.
 *
 * @param pointer where it stands in the plan: {@code /site}
 * @param name the place
 * @param outdoorDesignTemperature the winter design temperature
 */
public record Site(
    String pointer, @Nullable String name, @Nullable Amount outdoorDesignTemperature) {}
