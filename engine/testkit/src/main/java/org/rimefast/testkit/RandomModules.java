package org.rimefast.testkit;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;
import org.rimefast.testkit.internal.ModuleMaker;

/**
 * A module as a shop might have planned it, invented by chance: a shell with its corrugation as
 * measured, framed at 16 in, with openings, boxes, what holds them, panels, luminaires, and runs
 * that go along the studs through their service holes, around corners and over the roof. It has the
 * mistakes of the trade at rates that a shop would believe, and some plans lack values or state
 * tolerances. The same seed gives the same bytes everywhere. Immutable.
 *
 * <p>Use:
 *
 * <pre>{@code
 * Plan plan = RandomModules.of(7).feet(40).plan();
 * String large = RandomModules.of(7).elements(100_000).json();
 * }</pre>
 *
 * <p>Lengths in it are chosen so that all of them are exact in every unit, and so that no rib
 * begins exactly where a part does: a verdict may not hang on how a computer rounds.
 */
public final class RandomModules {
  private static final long MOST = 100_000;

  /** How many millimetres of a module go to one element, roughly. */
  private static final long MILLIMETRES = 65;

  private static final int MOST_TRIES = 20;

  private final long seed;
  private final int feet;
  private final int elements;
  private final String units;

  private RandomModules(long seed, int feet, int elements, String units) {
    this.seed = seed;
    this.feet = feet;
    this.elements = elements;
    this.units = units;
  }

  /** The module of a seed, 20 ft or 40 ft long, in millimetres. */
  public static RandomModules of(long seed) {
    return new RandomModules(seed, 0, 0, "mm");
  }

  /**
   * The same for a shell of this length.
   *
   * @throws IllegalArgumentException unless it is 20 or 40
   */
  public RandomModules feet(int length) {
    if (length != 20 && length != 40) {
      throw new IllegalArgumentException("modules are 20 or 40 ft long, not " + length);
    }
    return new RandomModules(seed, length, 0, units);
  }

  /**
   * The same in a shell so long that it holds about {@code count} elements (openings, parts and
   * runs), within a twentieth, as densely as in a room: for measuring how work grows.
   *
   * @throws IllegalArgumentException unless it is 500 to 100 000
   */
  public RandomModules elements(int count) {
    if (count < 500 || count > MOST) {
      throw new IllegalArgumentException("from 500 to " + MOST + " elements, not " + count);
    }
    return new RandomModules(seed, 40, count, units);
  }

  /**
   * The same module, written in another unit of length.
   *
   * @param symbol {@code mm}, {@code cm}, {@code m}, {@code in} or {@code ft}
   * @throws IllegalArgumentException for any other
   */
  public RandomModules units(String symbol) {
    if (!ModuleMaker.isUnit(symbol)) {
      throw new IllegalArgumentException("a plan has no unit " + symbol);
    }
    return new RandomModules(seed, feet, elements, symbol);
  }

  /** The module as the text of a plan file. */
  public String json() {
    if (elements == 0) {
      return ModuleMaker.make(seed, feet, 0, units).text();
    }
    long length = elements * MILLIMETRES;
    for (int i = 0; i < MOST_TRIES; i++) {
      ModuleMaker.Made made = ModuleMaker.make(seed, feet, length, units);
      if (Math.abs(made.elements() - elements) <= elements / 20) {
        return made.text();
      }
      length = length * elements / made.elements();
    }
    throw new IllegalStateException("seed " + seed + " comes to no " + elements + " elements");
  }

  /**
   * The module as a plan.
   *
   * @throws IllegalStateException if the plan that was made has a fault, which is our own bug
   */
  public Plan plan() {
    return read(json());
  }

  private Plan read(String json) {
    PlanReading reading =
        new PlanReader()
            .read("random-module-" + seed + ".json", json.getBytes(StandardCharsets.UTF_8));
    return reading
        .plan()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    reading.faults().stream()
                        .map(fault -> fault.pointer() + ": " + fault.message())
                        .limit(5)
                        .collect(Collectors.joining("\n", "seed " + seed + ":\n", ""))));
  }
}
