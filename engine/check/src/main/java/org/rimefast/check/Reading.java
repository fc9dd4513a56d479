package org.rimefast.check;

/**
 * Receives a number from a word of the dictionary: an interval in SI units, or the news that there
 * is none. Reused from one element to the next, so keep no reference to it.
 */
public final class Reading {
  private enum State {
    PRESENT,
    MISSING,
    FAILED
  }

  private State state = State.MISSING;
  private double least;
  private double most;

  /** No number yet. */
  public Reading() {}

  /** The number is exactly {@code value}; NaN means that it is missing. */
  public void exactly(double value) {
    between(value, value);
  }

  /** The number is {@code value}, give or take {@code tolerance}. */
  public void around(double value, double tolerance) {
    between(value - tolerance, value + tolerance);
  }

  /**
   * The number lies from {@code low} to {@code high}; NaN for either means that it is missing, and
   * an infinite one that it cannot be worked out.
   */
  public void between(double low, double high) {
    least = low;
    most = high;
    if (Double.isInfinite(low) || Double.isInfinite(high)) {
      state = State.FAILED;
    } else {
      state = low <= high ? State.PRESENT : State.MISSING;
    }
  }

  /** The plan does not give it. */
  public void missing() {
    state = State.MISSING;
  }

  /** It cannot be worked out, for instance after a division by zero. */
  public void failed() {
    state = State.FAILED;
  }

  /** True if there is a number. */
  public boolean isPresent() {
    return state == State.PRESENT;
  }

  /** True if it cannot be worked out. */
  public boolean isFailed() {
    return state == State.FAILED;
  }

  /** The least it can be; only if {@link #isPresent()}. */
  public double least() {
    return least;
  }

  /** The most it can be; only if {@link #isPresent()}. */
  public double most() {
    return most;
  }
}
