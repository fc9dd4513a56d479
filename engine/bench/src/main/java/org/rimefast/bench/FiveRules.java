package org.rimefast.bench;

import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.source.SourceText;

/** The box rule and four others, as text. */
final class FiveRules {
  static final Dictionary DICTIONARY = SteelModules.dictionary();

  private static final String TEXT =
      """
      standard five-rules edition 1

      rule box "The box rule"
        box must sit in outer bay with clearance >= 50 mm
        severity hold stage layout because "bench" source "bench"

      rule depth "A property of some"
        each box where it is recessed must have depth <= 50 mm
        severity hold stage layout because "bench" source "bench"

      rule stud "A distance, unless"
        each stud must have clearance >= 8.4 mm unless it is on the roof
        severity hold stage layout because "bench" source "bench"

      rule touch "Neighbours"
        box must not touch a bar (where it is metal)
        severity hold stage layout because "bench" source "bench"

      rule cover "Foam cover"
        luminaire must have foam cover >= 2 in
        severity hold stage layout because "bench" source "bench"
      """;

  private FiveRules() {}

  static Checker checker() {
    Compilation compilation =
        new RuleCompiler(DICTIONARY.vocabulary()).compile(new SourceText("five.rime", TEXT));
    return new Checker(
        DICTIONARY,
        compilation
            .standard()
            .orElseThrow(() -> new IllegalStateException("faults: " + compilation.diagnostics())));
  }
}
