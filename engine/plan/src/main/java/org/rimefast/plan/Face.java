package org.rimefast.plan;

import java.util.Locale;

/**
 * A face of the module, seen from inside.
 *
 * <p>On each, {@code along} runs from the left-hand end seen from inside, {@code up} from the
 * floor, and {@code depth} from the studs' warm face toward the shell. On roof and floor {@code
 * along} runs from the rear end and {@code up} runs across, from the left wall.
 */
public enum Face {
  LEFT,
  RIGHT,
  FRONT,
  REAR,
  ROOF,
  FLOOR;

  /** The word that plans and rules use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True for the four upright faces. */
  public boolean isWall() {
    return this != ROOF && this != FLOOR;
  }
}
