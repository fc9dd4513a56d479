package org.rimefast.plan;

import org.jspecify.annotations.Nullable;

/**
 * What the foam is sprayed with. Null means not given.
 *
 * @param nozzle the narrowest gap into which the gun's nozzle goes
 * @param reach how far foam is carried sideways from the nozzle
 */
public record Foaming(@Nullable Amount nozzle, @Nullable Amount reach) {
  /** Where it stands in a plan file. */
  public static final String POINTER = "/foaming";

  /** Nothing is given. */
  public static final Foaming UNKNOWN = new Foaming(null, null);
}
