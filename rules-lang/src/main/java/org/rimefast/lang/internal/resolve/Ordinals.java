package org.rimefast.lang.internal.resolve;

import java.util.List;

/** The words that count those that have been spoken of: {@code the second box}. */
public final class Ordinals {
  private static final List<String> WORDS =
      List.of(
          "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
          "tenth");

  private Ordinals() {}

  /** How many there are words for. */
  public static int most() {
    return WORDS.size();
  }

  /** The word for a number from 1 to {@link #most()}. */
  public static String word(int number) {
    return WORDS.get(number - 1);
  }

  /** The number of a word; 0 if it is no such word. */
  static int number(String word) {
    return WORDS.indexOf(word) + 1;
  }
}
