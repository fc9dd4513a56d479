package org.rimefast.lang.vocabulary;

import java.util.List;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;

/** What kind of value a word stands for. */
public sealed interface ValueType {

  /**
   * A number with a dimension.
   *
   * @param dimension what it measures
   * @param example the unit that help texts use; of the same dimension
   */
  @SuppressWarnings("JavaLangClash") // always written ValueType.Number where both are in sight
  record Number(Dimension dimension, Unit example) implements ValueType {}

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
