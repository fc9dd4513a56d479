package org.rimefast.examples;

import java.io.IOException;
import java.nio.file.Path;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Finding;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/** How a planner embeds the checks: compile a standard, read a plan, check, read the findings. */
public final class PlannerWithChecks {
  private final Checker checker;

  /** A planner that checks against a shipped standard. */
  public PlannerWithChecks(String standardName) {
    Dictionary dictionary = SteelModules.dictionary();
    SourceText text =
        StandardLibrary.find(standardName)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no standard " + standardName + "; shipped: " + StandardLibrary.names()));
    Compilation compilation = new RuleCompiler(dictionary.vocabulary()).compile(text);
    Standard standard =
        compilation
            .standard()
            .orElseThrow(() -> new IllegalArgumentException("" + compilation.diagnostics()));
    checker = new Checker(dictionary, standard);
  }

  /** Checks the plan in a file. */
  public CheckResult check(Path file) throws IOException {
    PlanReading reading = new PlanReader().read(file);
    return checker.check(
        reading.plan().orElseThrow(() -> new IllegalArgumentException("" + reading.faults())),
        CheckOptions.DEFAULT);
  }

  /** Prints one line for each finding of the plan named on the command line. */
  public static void main(String[] arguments) throws IOException {
    CheckResult result = new PlannerWithChecks("cold-steel-modules").check(Path.of(arguments[0]));
    for (Finding finding : result.findings()) {
      System.out.println(
          finding.element().label() + ": " + finding.verdict().words() + ": " + finding.reason());
    }
  }
}
