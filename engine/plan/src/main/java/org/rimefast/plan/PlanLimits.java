package org.rimefast.plan;

/**
 * How much a reader takes on before it stops with a named fault.
 *
 * @param bytes length of a file
 * @param depth how deep values may be nested
 * @param textLength characters of one text, name or number
 * @param elements openings, parts, runs, conductors and circuits, with every item of a repeat
 *     counted
 * @param faults how many faults are reported before the rest are only counted
 */
public record PlanLimits(long bytes, int depth, int textLength, int elements, int faults) {
  /** 256 MiB, 32 levels, 10 000 characters, 1 000 000 elements, 1 000 faults. */
  public static final PlanLimits DEFAULT = new PlanLimits(256L << 20, 32, 10_000, 1_000_000, 1_000);

  private static final long LONGEST = Integer.MAX_VALUE - 16;
  private static final int DEEPEST = 1_000;

  /**
   * Checks the limits.
   *
   * @throws IllegalArgumentException if one is less than 1, {@code bytes} is more than an array
   *     holds, or {@code depth} is more than 1 000
   */
  public PlanLimits {
    boolean positive = bytes > 0 && depth > 0 && textLength > 0 && elements > 0 && faults > 0;
    if (!positive || bytes > LONGEST || depth > DEEPEST) {
      throw new IllegalArgumentException("limits that no reader can keep");
    }
  }
}
