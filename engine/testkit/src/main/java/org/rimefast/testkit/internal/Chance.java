package org.rimefast.testkit.internal;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** What falls out by chance, the same for the same seed. */
final class Chance {
  private final long seed;
  private final Random random;
  private final int forgetting;
  private final boolean measured;

  Chance(long seed) {
    this.seed = seed;
    // Neighbouring seeds give near the same first numbers.
    random = new Random(seed * 0x9E3779B97F4A7C15L);
    forgetting = pick(List.of(0, 0, 60, 25));
    measured = oneIn(3);
  }

  /** Another chance of the same seed, for what must not hang on how much fell out before. */
  Chance of(String purpose) {
    return new Chance(31 * seed + purpose.hashCode());
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** A length on the grid, from {@code low} to less than {@code high}. */
  long between(long low, long high) {
    long steps = Math.max(1, (high - low) / Length.GRID);
    return snap(low) + random.nextInt((int) steps) * Length.GRID;
  }

  /** The place on the grid at or before a length. */
  static long snap(long length) {
    return Math.floorDiv(length, Length.GRID) * Length.GRID;
  }

  /** Puts a value, unless this module's author forgot it. */
  Tree maybe(Tree tree, String field, @Nullable Object value) {
    boolean forgotten = forgetting > 0 && random.nextInt(forgetting) == 0;
    return forgotten || value == null ? tree : tree.with(field, value);
  }

  /** A place as authors give it: mostly plain, now and then in inches or with a tolerance. */
  Length place(long length) {
    int how = random.nextInt(24);
    if (how == 0) {
      return new Length(length, null, "in");
    }
    boolean own = how == 1 && measured;
    return new Length(length, own ? 2 * Length.MILLIMETRE + Length.GRID : null, null);
  }
}
