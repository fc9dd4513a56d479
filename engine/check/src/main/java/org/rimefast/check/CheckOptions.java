package org.rimefast.check;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How a plan is checked.
 *
 * @param stage rules due after this stage are left out; all count if empty
 * @param asOf the date that counts as today; it is an input, and the engine never asks a clock
 * @param threads how many threads; the result is the same for any number
 */
public record CheckOptions(Optional<String> stage, Optional<LocalDate> asOf, int threads) {
  /** All stages, no date, one thread. */
  public static final CheckOptions DEFAULT =
      new CheckOptions(Optional.empty(), Optional.empty(), 1);

  /** Refuses fewer than one thread. */
  public CheckOptions {
    if (threads < 1) {
      throw new IllegalArgumentException("at least one thread, not " + threads);
    }
  }
}
