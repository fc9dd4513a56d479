package org.rimefast.lang.internal.meaning;

import java.util.ArrayList;
import java.util.List;

/** Shows two texts as one, with the words that differ in brackets. */
public final class WordDifference {
  /** Beyond this, words are not aligned. */
  private static final int MOST_WORDS = 2_000;

  private WordDifference() {}

  /** {@code must have clearance [was: >= 2 in] [now: > 3 in]}. */
  public static String show(String before, String after) {
    List<String> old = List.of(before.split(" ", -1));
    List<String> fresh = List.of(after.split(" ", -1));
    if (old.size() > MOST_WORDS || fresh.size() > MOST_WORDS) {
      return "[was: " + before + "] [now: " + after + "]";
    }
    int[][] common = common(old, fresh);
    List<String> shown = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    List<String> come = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < old.size() || j < fresh.size()) {
      if (i < old.size() && j < fresh.size() && old.get(i).equals(fresh.get(j))) {
        flush(gone, come, shown);
        shown.add(old.get(i));
        i++;
        j++;
      } else if (j >= fresh.size() || (i < old.size() && common[i + 1][j] >= common[i][j + 1])) {
        gone.add(old.get(i++));
      } else {
        come.add(fresh.get(j++));
      }
    }
    flush(gone, come, shown);
    return String.join(" ", shown);
  }

  /** How many words, in order, the rest of both from two places on have in common. */
  private static int[][] common(List<String> old, List<String> fresh) {
    int[][] common = new int[old.size() + 1][fresh.size() + 1];
    for (int i = old.size() - 1; i >= 0; i--) {
      for (int j = fresh.size() - 1; j >= 0; j--) {
        common[i][j] =
            old.get(i).equals(fresh.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    return common;
  }

  private static void flush(List<String> gone, List<String> come, List<String> shown) {
    if (!gone.isEmpty()) {
      shown.add("[was: " + String.join(" ", gone) + "]");
    }
    if (!come.isEmpty()) {
      shown.add("[now: " + String.join(" ", come) + "]");
    }
    gone.clear();
    come.clear();
  }
}
