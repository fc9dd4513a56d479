package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a plan file.
 *
 * @param code stable name of the kind of fault: {@code unknown-field}
 * @param pointer the JSON pointer of the value
 * @param place line and column; null only for a plan that was built
 * @param message one sentence that says what is wrong
 * @param remedy one sentence that says what to write instead
 */
public record PlanFault(
    String code, String pointer, PlanSource.@Nullable Place place, String message, String remedy) {}
