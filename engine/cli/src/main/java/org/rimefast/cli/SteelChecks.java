package org.rimefast.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Checker;
import org.rimefast.check.Cost;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.check.cases.StandardStrength;
import org.rimefast.check.cases.StrengthMeter;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.Paraphrase;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanLimits;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/** The engine with the vocabulary of steel modules. Made of nothing until something is asked. */
final class SteelChecks implements Checks {
  private final PlanReader reader = new PlanReader(PlanLimits.DEFAULT);
  private @Nullable Dictionary dictionary;
  private @Nullable Standard current;
  private @Nullable Checker checker;

  @Override
  public List<String> stages() {
    return dictionary().vocabulary().stages();
  }

  @Override
  public List<String> shippedNames() {
    return StandardLibrary.names();
  }

  @Override
  public Optional<SourceText> shipped(String name) {
    return StandardLibrary.find(name);
  }

  @Override
  public Vocabulary vocabulary() {
    return dictionary().vocabulary();
  }

  @Override
  public Optional<SourceText> shippedCases(String name) {
    return StandardLibrary.cases(name);
  }

  @Override
  public Compilation compile(SourceText text, SourceFinder finder) {
    return new RuleCompiler(dictionary().vocabulary()).compile(text, finder);
  }

  @Override
  public CaseCompilation compileCases(SourceText text, Standard standard) {
    return CaseCompiler.compile(text, standard);
  }

  @Override
  public CaseResults runCases(Standard standard, List<Case> cases) {
    return new CaseRunner(dictionary(), SteelChecks::plan).run(standard, cases);
  }

  @Override
  public StandardStrength strength(Standard standard, List<Case> cases) {
    CaseRunner runner = new CaseRunner(dictionary(), SteelChecks::plan);
    return new StrengthMeter(dictionary(), runner)
        .measure(standard, cases.stream().map(runner::prepare).toList());
  }

  @Override
  public Optional<String> readAs(Rule rule) {
    return new Paraphrase(dictionary().vocabulary()).of(rule).text();
  }

  @Override
  public CaseResults runShippedCases(Standard standard, List<Case> cases) {
    return new CaseRunner(dictionary(), (caseFile, name) -> StandardLibrary.file(name))
        .run(standard, cases);
  }

  @Override
  public WaiverCompilation compileWaivers(SourceText text, Standard standard) {
    return new WaiverCompiler(dictionary().vocabulary()).compile(text, standard);
  }

  @Override
  public PlanReading read(Path file) throws IOException {
    return reader.read(file);
  }

  @Override
  public PlanReading read(String name, byte[] bytes) {
    return reader.read(name, bytes);
  }

  @Override
  public long longestPlan() {
    return PlanLimits.DEFAULT.bytes();
  }

  // The same standard object is checked against plan after plan; an equal one may be another text.
  @SuppressWarnings("ReferenceEquality")
  @Override
  public CheckResult check(
      Standard standard, Plan plan, CheckOptions options, List<Waiver> waivers) {
    Checker ready = checker;
    if (ready == null || current != standard) {
      ready = new Checker(dictionary(), standard);
      checker = ready;
      current = standard;
    }
    return ready.check(plan, options, waivers);
  }

  /** A plan beside the cases that name it. */
  private static Optional<byte[]> plan(String caseFile, String name) throws IOException {
    Path file = Path.of(caseFile).resolveSibling(name);
    return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
  }

  @Override
  public List<Cost> costs(Standard standard) {
    return Cost.of(dictionary(), standard);
  }

  private Dictionary dictionary() {
    Dictionary ready = dictionary;
    if (ready == null) {
      ready = SteelModules.dictionary();
      dictionary = ready;
    }
    return ready;
  }
}
