/**
 * What the words of corrugated steel modules do on a plan: geometry and relations, never a rule.
 *
 * <p>Geometry is in millimetres, readings are in SI units.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.internal.steel;
