package org.rimefast.plan.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How messages quote, list and guess words. */
public final class Wording {
  private static final int SHOWN = 60;

  private Wording() {}

  /** The text in quotes, shortened, with control characters replaced. */
  public static String quoted(String text) {
    String start = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
    StringBuilder shown = new StringBuilder("\"");
    start.codePoints().map(c -> isPrintable(c) ? c : ' ').forEach(shown::appendCodePoint);
    return shown.append('"').toString();
  }

  /** What a text holds that cannot be printed in a line, in words; null if there is nothing. */
  static @Nullable String unprintable(String text) {
    if (text.codePoints().allMatch(Wording::isPrintable)) {
      return null;
    }
    return text.codePoints().anyMatch(Character::isISOControl)
        ? "a control character"
        : "half of a character (an unpaired surrogate)";
  }

  private static boolean isPrintable(int codePoint) {
    return !Character.isISOControl(codePoint)
        && Character.getType(codePoint) != Character.SURROGATE;
  }

  /** Words joined as a sentence lists them: {@code a, b or c}. */
  public static String either(Collection<String> words) {
    List<String> all = List.copyOf(words);
    if (all.size() < 2) {
      return String.join("", all);
    }
    return String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.get(all.size() - 1);
  }

  /** The word nearest to a misspelt one, if any is near enough to be meant. */
  public static Optional<String> nearest(String word, Collection<String> known) {
    if (word.length() > SHOWN) {
      return Optional.empty();
    }
    String best = null;
    // One slip in three characters; two characters are too few to guess from.
    int least = (word.length() < 3 ? 0 : (word.length() + 1) / 3) + 1;
    for (String candidate : known) {
      int distance = distance(word, candidate);
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Single-character edits and swaps of neighbours between two words; a difference of case counts
   * as none.
   */
  static int distance(String left, String right) {
    String a = left.toLowerCase(java.util.Locale.ROOT);
    String b = right.toLowerCase(java.util.Locale.ROOT);
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
        least = Math.min(least, cost[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, cost[i - 2][j - 2] + 1);
        }
        cost[i][j] = least;
      }
    }
    return cost[a.length()][b.length()];
  }
}
