package org.rimefast.cli;

import org.rimefast.report.TextOptions;

/** Chooses how wide and how colourful text is. */
final class Layouts {
  private Layouts() {}

  /** Colour and the terminal's own width only where a person looks on. */
  static TextOptions of(Surroundings surroundings) {
    if (!surroundings.terminal()) {
      return TextOptions.PLAIN;
    }
    // The variable NO_COLOR, set to anything, asks every program for text without colour.
    boolean colour =
        !surroundings.has("NO_COLOR")
            && !surroundings.environment().getOrDefault("TERM", "").equals("dumb");
    return new TextOptions(width(surroundings), colour);
  }

  private static int width(Surroundings surroundings) {
    String columns = surroundings.environment().getOrDefault("COLUMNS", "");
    boolean digits = !columns.isEmpty() && columns.length() <= 5;
    for (int i = 0; i < columns.length(); i++) {
      digits &= columns.charAt(i) >= '0' && columns.charAt(i) <= '9';
    }
    if (!digits) {
      return TextOptions.PLAIN.width();
    }
    return Math.min(
        TextOptions.GREATEST_WIDTH, Math.max(TextOptions.LEAST_WIDTH, Integer.parseInt(columns)));
  }
}
