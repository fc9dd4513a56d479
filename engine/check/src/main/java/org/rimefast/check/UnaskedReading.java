package org.rimefast.check;

import org.rimefast.plan.InspectReading;

/**
 * A reading of a plan that no inspect item of the standard asks for, so that it decides nothing.
 *
 * @param reading the reading
 * @param of what it is of: {@code box R-9}
 * @param why one sentence
 */
public record UnaskedReading(InspectReading reading, String of, String why) {}
