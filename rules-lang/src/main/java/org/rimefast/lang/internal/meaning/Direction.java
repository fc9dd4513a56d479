package org.rimefast.lang.internal.meaning;

/**
 * How a value or a condition moves when one number in it becomes another. A condition rises when it
 * becomes true of more.
 */
enum Direction {
  /** It does not depend on the number. */
  STILL,
  UP,
  DOWN,
  /** It is true of other cases than before, neither of all those nor only of those. */
  ASIDE,
  /** That cannot be told. */
  UNKNOWN;

  Direction reversed() {
    return switch (this) {
      case UP -> DOWN;
      case DOWN -> UP;
      default -> this;
    };
  }

  /** Of two parts, either of which moves the whole its own way. */
  Direction with(Direction other) {
    if (this == STILL || this == other) {
      return other == ASIDE && this == ASIDE ? UNKNOWN : other;
    }
    return other == STILL ? this : UNKNOWN;
  }
}
