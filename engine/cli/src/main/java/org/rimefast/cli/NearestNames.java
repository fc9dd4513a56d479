package org.rimefast.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the known names that someone may have meant. */
final class NearestNames {
  private static final int MOST = 3;

  private NearestNames() {}

  /** Up to three names, nearest first; none that differs in more than a third of its letters. */
  static List<String> of(String written, List<String> known) {
    List<String> near = new ArrayList<>();
    for (String name : known) {
      if (holds(written, name) || distance(written, name) <= Math.max(2, name.length() / 3)) {
        near.add(name);
      }
    }
    near.sort(
        Comparator.<String>comparingInt(name -> distance(written, name))
            .thenComparing(name -> !holds(written, name))
            .thenComparing(Comparator.naturalOrder()));
    return List.copyOf(near.subList(0, Math.min(MOST, near.size())));
  }

  /** {@code "; did you mean a or b?"}, or a full stop if nothing is near. */
  static String ending(String written, List<String> known) {
    List<String> near = of(written, known);
    return near.isEmpty() ? "." : "; did you mean " + String.join(" or ", near) + "?";
  }

  /** True if one of the two stands in the other. */
  private static boolean holds(String written, String name) {
    return written.length() > 2 && (name.contains(written) || written.contains(name));
  }

  /** Letters to change, add or drop. */
  private static int distance(String left, String right) {
    int[] above = new int[right.length() + 1];
    for (int j = 0; j <= right.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= left.length(); i++) {
      int[] row = new int[right.length() + 1];
      row[0] = i;
      for (int j = 1; j <= right.length(); j++) {
        int change = left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(above[j - 1] + change, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[right.length()];
  }
}
