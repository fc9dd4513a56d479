/**
 * Exact quantities.
 *
 * <p>What enters: spellings of units and of numbers as people write them ({@code 5 ft 6-1/2 in}).
 * What leaves: exact rational values with a unit and a dimension, and conversions that lose
 * nothing. What may never be in it: rounding (except where a {@code double} is asked for), a
 * locale, or anything of plans or rules.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.units;
