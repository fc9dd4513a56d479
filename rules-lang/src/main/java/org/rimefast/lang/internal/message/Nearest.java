package org.rimefast.lang.internal.message;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds the words that a misspelt one may have meant. */
public final class Nearest {
  private static final int LONGEST = 80;

  private Nearest() {}

  private record Scored(String word, int distance) {}

  /** The words within a third of their length, nearest first; at most three. */
  public static List<String> to(String written, Collection<String> words) {
    if (written.length() > LONGEST) {
      return List.of();
    }
    return words.stream()
        .distinct()
        .filter(word -> Math.abs(word.length() - written.length()) <= limit(word))
        .map(word -> new Scored(word, distance(written, word)))
        .filter(scored -> scored.distance() <= limit(scored.word()))
        .sorted(Comparator.comparingInt(Scored::distance).thenComparing(Scored::word))
        .limit(3)
        .map(Scored::word)
        .toList();
  }

  private static int limit(String word) {
    return word.length() < 3 ? 0 : Math.max(1, word.length() / 3);
  }

  /** Edits that turn one word into the other; two letters that change places count as one. */
  static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] current = new int[b.length() + 1];
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        current[j] = Math.min(Math.min(current[j - 1], last[j]) + 1, last[j - 1] + cost);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          current[j] = Math.min(current[j], beforeLast[j - 2] + 1);
        }
      }
      beforeLast = last;
      last = current;
    }
    return last[b.length()];
  }
}
