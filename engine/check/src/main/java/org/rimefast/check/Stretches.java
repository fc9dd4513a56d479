package org.rimefast.check;

import java.util.Arrays;

/**
 * Parts of the path of an element, in the order of the path, as positions along it in metres from
 * its start. Used again and again without new memory, so keep no reference to it.
 */
public final class Stretches {
  private double[] ends = new double[8];
  private int size;
  private boolean known = true;

  /** No stretch yet. */
  public Stretches() {}

  /**
   * Adds a stretch; one point if both ends are equal.
   *
   * @throws IllegalArgumentException if it ends before it begins
   */
  public void add(double from, double to) {
    if (!(from <= to)) {
      throw new IllegalArgumentException("a stretch from " + from + " m to " + to + " m");
    }
    if (2 * size == ends.length) {
      ends = Arrays.copyOf(ends, 2 * ends.length);
    }
    ends[2 * size] = from;
    ends[2 * size + 1] = to;
    size++;
  }

  /** The plan does not say where they are. */
  public void unknown() {
    known = false;
  }

  /** Forgets all. */
  public void clear() {
    size = 0;
    known = true;
  }

  /** False if the plan does not say where they are. */
  public boolean isKnown() {
    return known;
  }

  /** How many there are; a path may have none. */
  public int size() {
    return size;
  }

  /** Where the stretch at {@code index} begins, in metres. */
  public double from(int index) {
    return ends[2 * index];
  }

  /** Where the stretch at {@code index} ends, in metres. */
  public double to(int index) {
    return ends[2 * index + 1];
  }
}
