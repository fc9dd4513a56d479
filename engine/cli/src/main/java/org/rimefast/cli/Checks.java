package org.rimefast.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Cost;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.StandardStrength;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReading;

/** What the commands need of the engine. */
interface Checks {
  /** The stages of the work, in order. */
  List<String> stages();

  /** The names of the shipped standards. */
  List<String> shippedNames();

  /** The words that rules are written with. */
  Vocabulary vocabulary();

  /** The text of a shipped standard. */
  Optional<SourceText> shipped(String name);

  /** The text of the cases that are shipped beside a standard. */
  Optional<SourceText> shippedCases(String name);

  /** Compiles a standard with all that it includes and builds on. */
  Compilation compile(SourceText text, SourceFinder finder);

  /** Compiles the cases that stand beside a standard. */
  CaseCompilation compileCases(SourceText text, Standard standard);

  /** Runs cases, whose plans lie beside them. */
  CaseResults runCases(Standard standard, List<Case> cases);

  /** How well cases pin a standard down. */
  StandardStrength strength(Standard standard, List<Case> cases);

  /** A rule in one canonical sentence, where it can be said so. */
  Optional<String> readAs(Rule rule);

  /** Runs the cases of a shipped standard, whose plans are shipped too. */
  CaseResults runShippedCases(Standard standard, List<Case> cases);

  /** Reads a plan file. */
  PlanReading read(Path file) throws IOException;

  /** Reads a plan that is in memory. */
  PlanReading read(String name, byte[] bytes);

  /** How many bytes of a plan are worth reading. */
  long longestPlan();

  /** Compiles a file of waivers for a standard. */
  WaiverCompilation compileWaivers(SourceText text, Standard standard);

  /** Checks a plan, of which some findings are waived. */
  CheckResult check(Standard standard, Plan plan, CheckOptions options, List<Waiver> waivers);

  /** How the work of each rule grows. */
  List<Cost> costs(Standard standard);
}
