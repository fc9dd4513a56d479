package org.rimefast.lang.vocabulary;

import java.util.List;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** What kind of value a word stands for. */
public sealed interface ValueType {

  /**
   * A number with a dimension.
   *
   * @param dimension what it measures
   * @param example the unit that help texts use; of the same dimension
   * @param whole true if it counts something, so that it is a whole number and not less than 0
   */
  @SuppressWarnings("JavaLangClash") // always written ValueType.Number where both are in sight
  record Number(Dimension dimension, Unit example, boolean whole) implements ValueType {
    /** A number that can lie anywhere. */
    public Number(Dimension dimension, Unit example) {
      this(dimension, example, false);
    }

    /** The number of something. */
    public static Number count() {
      return new Number(Dimension.NUMBER, Units.ONE, true);
    }
  }

  /**
   * One of a closed list of words, such as the kinds of mount.
   *
   * @param name what the list is called in messages: {@code mount}
   * @param words the words; each may be several words
   */
  record Choice(String name, List<String> words) implements ValueType {
    /** Copies the list. */
    public Choice {
      words = List.copyOf(words);
    }
  }

  /** Free text, compared as it stands. */
  record Text() implements ValueType {}
}
