package org.rimefast.languageserver;

import java.util.List;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/** Texts to edit, and the compiler to ask of them. */
final class Texts {
  private static final RuleCompiler COMPILER =
      new RuleCompiler(SteelModules.dictionary().vocabulary());

  /** A standard with one of each statement. */
  static final String HOUSE =
      """
      standard tamarack-house edition 2026-11
        title "House standard of Tamarack Modular (invented)"

      let foam behind a box be 2 in
        because "one lift of foam has to fit"
        source "common practice, no source"

      let wet room be a room where its humidity >= 50 %
        because "water stays on whatever is cold"

      rule box-in-outer-bay "A box stands in an outer bay"
        each box where its room is a wet room must sit in outer bay
          with clearance >= foam behind a box
        severity hold
        stage layout
        because "at a rib there may be millimetres"
        source "common practice, no source"

      rule few-boxes "A wet room has few boxes"
        for each wet room, number of boxes (where its clearance < foam behind a box) must be at most 8
        severity advise
        stage layout
        because "each takes foam away"
        source "common practice, no source"

      """;

  private Texts() {}

  static String shipped() {
    return StandardLibrary.find("cold-steel-modules").orElseThrow().text();
  }

  static List<Diagnostic> diagnostics(String text) {
    return COMPILER.compile(new SourceText("house.rime", text)).diagnostics();
  }

  static boolean compiles(String text) {
    return COMPILER.compile(new SourceText("house.rime", text)).standard().isPresent();
  }

  /** A standard whose one rule has this sentence. */
  static String rule(String sentence) {
    return HOUSE.substring(0, HOUSE.indexOf("rule "))
        + "rule x \"t\"\n  "
        + sentence
        + "\n  severity fix\n  stage framing\n  because \"b\"\n  source \"s\"\n";
  }
}
