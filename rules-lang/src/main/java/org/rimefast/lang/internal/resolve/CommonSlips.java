package org.rimefast.lang.internal.resolve;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Words that people reach for and the language does not have, and what to write for them. */
final class CommonSlips {
  private static final String EACH = "Write \"each\" for all of them, \"some\" for at least one.";
  private static final String COMPARE =
      "Compare with >=, >, <=, < or =, or with \"at least\", \"more than\", \"at most\", \"less"
          + " than\".";
  private static final String WHERE =
      "Write \"where\" and a condition: each box where it is ... must ...";
  private static final String IF = "Write \"if\" or \"unless\" and a condition.";

  private static final Map<String, String> HELP =
      Map.ofEntries(
          Map.entry("any", EACH),
          Map.entry("all", EACH),
          Map.entry("both", EACH),
          Map.entry("between", "Write two comparisons: >= for one end and <= for the other."),
          Map.entry("less", "After \"less\" comes \"than\": less than 50 mm."),
          Map.entry("more", "After \"more\" comes \"than\": more than 50 mm."),
          Map.entry("at", "After \"at\" comes \"least\" or \"most\": at least 50 mm."),
          Map.entry("greater", COMPARE),
          Map.entry("larger", COMPARE),
          Map.entry("bigger", COMPARE),
          Map.entry("smaller", COMPARE),
          Map.entry("over", COMPARE),
          Map.entry("under", COMPARE),
          Map.entry("above", COMPARE),
          Map.entry("below", COMPARE),
          Map.entry("minimum", COMPARE),
          Map.entry("maximum", COMPARE),
          Map.entry("min", COMPARE),
          Map.entry("max", COMPARE),
          Map.entry("equal", COMPARE),
          Map.entry("equals", COMPARE),
          Map.entry("than", COMPARE),
          Map.entry("nearest", "Write \"the nearest\": distance to the nearest stud."),
          Map.entry("that", WHERE),
          Map.entry("which", WHERE),
          Map.entry("whose", WHERE),
          Map.entry("when", IF),
          Map.entry("while", IF),
          Map.entry("except", IF),
          Map.entry("only", IF));

  private CommonSlips() {}

  /** What to write for a word; null if it is none of these. */
  static @Nullable String help(String word) {
    return HELP.get(word);
  }
}
