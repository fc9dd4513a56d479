package org.rimefast.lang.internal.message;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Small matters of English. */
public final class English {
  private English() {}

  /** The words with {@code a} or {@code an} before them. */
  public static String withArticle(String words) {
    if (words.isEmpty()) {
      return words;
    }
    return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  /** {@code a, b or c}, at most {@code most} of them. */
  public static String either(Collection<String> words, int most) {
    List<String> shown = words.stream().limit(most).toList();
    if (words.size() > most) {
      return String.join(", ", shown) + " and " + (words.size() - most) + " more";
    }
    int last = shown.size() - 1;
    return last < 1
        ? String.join("", shown)
        : String.join(", ", shown.subList(0, last)) + " or " + shown.get(last);
  }

  /** In double quotes. */
  public static String quoted(String words) {
    return "\"" + words + "\"";
  }

  /** With its first letter as a capital. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** No longer than a message can bear. */
  public static String shortened(String words) {
    if (words.length() <= 60) {
      return words;
    }
    int cut = Character.isHighSurrogate(words.charAt(56)) ? 56 : 57;
    return words.substring(0, cut) + "...";
  }
}
