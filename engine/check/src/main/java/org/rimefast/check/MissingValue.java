package org.rimefast.check;

import java.util.Optional;
import org.rimefast.plan.PlanSource;

/**
 * A value that the plan does not give and a rule asked for.
 *
 * @param pointer where it would stand: {@code /boxes/2/depth}
 * @param description in words: {@code depth of box R-3}
 * @param place line and column of the nearest value that encloses it; empty if the plan was built
 */
public record MissingValue(String pointer, String description, Optional<PlanSource.Place> place) {}
