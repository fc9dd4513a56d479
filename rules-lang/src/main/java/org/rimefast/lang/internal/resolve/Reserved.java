package org.rimefast.lang.internal.resolve;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Words that the language keeps for itself, and the shape of a vocabulary's words. */
final class Reserved {
  private static final Set<String> WORDS =
      Set.of(
          "be",
          "severity",
          "stage",
          "because",
          "source",
          "for",
          "where",
          "must",
          "not",
          "if",
          "unless",
          "then",
          "otherwise",
          "and",
          "or",
          "with",
          "have",
          "has",
          "is",
          "are",
          "does",
          "do",
          "least",
          "most",
          "than",
          "exactly",
          "between",
          "times",
          "divided");

  private static final Pattern WORD =
      Pattern.compile("[\\p{L}\\p{M}]([\\p{L}\\p{M}0-9]|[-'][\\p{L}\\p{M}0-9])*'?");

  private static final String BETWEEN = "between _ and _";

  private Reserved() {}

  /** Refuses a stretch that rule text cannot hold; it alone may be {@code between _ and _}. */
  static void checkStretch(String pattern) {
    check(pattern.equals(BETWEEN) ? "_ _" : pattern, false);
  }

  /**
   * Refuses a phrase that rule text cannot hold.
   *
   * @param verb true for a verb, which may begin with {@code have}
   */
  static void check(String phrase, boolean verb) {
    List<String> parts = List.of(phrase.split(" ", -1));
    for (int i = 0; i < parts.size(); i++) {
      String part = parts.get(i);
      boolean have = verb && i == 0 && (part.equals("have") || part.equals("has"));
      if (part.equals("_") || have) {
        continue;
      }
      if (WORDS.contains(part)) {
        throw new IllegalArgumentException(
            "the phrase \"" + phrase + "\" holds \"" + part + "\", which the language keeps");
      }
      if (!WORD.matcher(part).matches() || !part.equals(part.toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException(
            "the phrase \""
                + phrase
                + "\" holds \""
                + part
                + "\"; words are lower-case letters with inner hyphens, one space apart");
      }
    }
  }
}
