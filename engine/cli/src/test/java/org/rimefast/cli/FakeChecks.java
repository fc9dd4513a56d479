package org.rimefast.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Cost;
import org.rimefast.check.ElementName;
import org.rimefast.check.Finding;
import org.rimefast.check.MissingValue;
import org.rimefast.check.RuleResult;
import org.rimefast.check.Verdict;
import org.rimefast.check.WaiverUse;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.StandardStrength;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanFault;
import org.rimefast.plan.PlanReading;
import org.rimefast.plan.PlanSource;
import org.rimefast.plan.Room;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Site;
import org.rimefast.plan.Tolerances;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/**
 * An engine whose answers are written in its input: a plan file holds the one word that says what
 * will be found in it, and a rule file the word that says how it compiles. So the command can be
 * tested for every answer.
 */
final class FakeChecks implements Checks {
  private static final Span SPAN = new Span(0, 1);

  @Override
  public List<String> stages() {
    return List.of("layout", "framing", "rough-in", "pre-foam", "foam", "lining", "handover");
  }

  @Override
  public List<String> shippedNames() {
    return List.of("cold-steel-modules", "wet-rooms");
  }

  @Override
  public Optional<SourceText> shipped(String name) {
    return shippedNames().contains(name)
        ? Optional.of(new SourceText("standard " + name, "standard " + name + " edition 2026-11"))
        : Optional.empty();
  }

  @Override
  public Compilation compile(SourceText text, SourceFinder finder) {
    Diagnostic.Level level =
        text.text().startsWith("wrong") ? Diagnostic.Level.ERROR : Diagnostic.Level.WARNING;
    Diagnostic diagnostic =
        new Diagnostic(
            DiagnosticCode.UNKNOWN_WORD,
            level,
            SPAN,
            "\"" + text.text().strip() + "\" is no word that rules know.",
            "Write a rule.",
            List.of(),
            List.of());
    boolean told = text.text().startsWith("wrong") || text.text().startsWith("warn");
    return new Compilation(
        text,
        level == Diagnostic.Level.ERROR ? Optional.empty() : Optional.of(standard(text)),
        told ? List.of(diagnostic) : List.of());
  }

  @Override
  public CaseCompilation compileCases(SourceText text, Standard standard) {
    return CaseCompiler.compile(text, standard);
  }

  @Override
  public CaseResults runCases(Standard standard, List<Case> cases) {
    throw new IllegalStateException("no rule of this engine has a case");
  }

  @Override
  public StandardStrength strength(Standard standard, List<Case> cases) {
    throw new IllegalStateException("no rule of this engine has a case");
  }

  @Override
  public Optional<String> readAs(Rule rule) {
    return Optional.empty();
  }

  @Override
  public Vocabulary vocabulary() {
    throw new IllegalStateException("no rule of this engine is written with words");
  }

  @Override
  public Optional<SourceText> shippedCases(String name) {
    return Optional.empty();
  }

  @Override
  public CaseResults runShippedCases(Standard standard, List<Case> cases) {
    return runCases(standard, cases);
  }

  @Override
  public WaiverCompilation compileWaivers(SourceText text, Standard standard) {
    return new WaiverCompiler(
            Vocabulary.builder().noun(new Noun("box", "box", "boxes", List.of())).build())
        .compile(text, standard);
  }

  @Override
  public PlanReading read(Path file) throws IOException {
    return read(file.toString().replace('\\', '/'), Files.readAllBytes(file));
  }

  @Override
  public PlanReading read(String name, byte[] bytes) {
    String word = new String(bytes, StandardCharsets.UTF_8).strip();
    if (word.equals("faulty")) {
      return new PlanReading(
          Optional.empty(),
          List.of(
              new PlanFault(
                  "unknown-field",
                  "/boxes/2/detph",
                  new PlanSource.Place(48, 7),
                  "A box has no field \"detph\".",
                  "Write \"depth\"."),
              new PlanFault(
                  "missing-field",
                  "",
                  new PlanSource.Place(1, 1),
                  "The plan does not say in which unit its lengths are.",
                  "Add \"units\": \"mm\".")));
    }
    return new PlanReading(Optional.of(plan(word, name)), List.of());
  }

  @Override
  public List<Cost> costs(Standard standard) {
    return List.of();
  }

  @Override
  public long longestPlan() {
    return 1000;
  }

  @Override
  public CheckResult check(
      Standard standard, Plan plan, CheckOptions options, List<Waiver> waivers) {
    RuleResult result =
        switch (plan.id()) {
          case "sound" -> result(Severity.HOLD, Verdict.MET);
          case "hold" -> result(Severity.HOLD, Verdict.BROKEN);
          case "fix" -> result(Severity.FIX, Verdict.BROKEN);
          case "advise" -> result(Severity.ADVISE, Verdict.BROKEN);
          case "error" -> result(Severity.FIX, Verdict.ERROR);
          case "undecided" -> result(Severity.HOLD, Verdict.UNDECIDED);
          default -> throw new IllegalStateException("this is\nthe fault: " + plan.id());
        };
    String hash = "0123456789abcdef".repeat(4);
    boolean waived = !waivers.isEmpty() && result.count(Verdict.BROKEN) > 0;
    return new CheckResult(
        "rimefast 0.1.0",
        standard,
        hash,
        plan,
        options,
        List.of(waived ? waived(result, waivers.get(0)) : result),
        List.of(),
        waivers.stream().map(waiver -> use(waiver, waived)).toList(),
        List.of());
  }

  private static RuleResult waived(RuleResult result, Waiver waiver) {
    return new RuleResult(
        result.rule(),
        result.counts(),
        result.findings().stream().map(finding -> finding.waivedBy(waiver)).toList(),
        result.appliedToNothing());
  }

  private static WaiverUse use(Waiver waiver, boolean used) {
    return new WaiverUse(
        waiver,
        used ? WaiverUse.State.USED : WaiverUse.State.NO_LONGER_NEEDED,
        used ? 1 : 0,
        List.of(),
        List.of(),
        List.of());
  }

  private static RuleResult result(Severity severity, Verdict verdict) {
    Rule rule = rule(severity);
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (Verdict one : Verdict.values()) {
      counts.put(one, one == verdict ? 1 : 0);
    }
    List<MissingValue> missing =
        verdict == Verdict.UNDECIDED
            ? List.of(new MissingValue("/boxes/2/depth", "depth of box R-3", Optional.empty()))
            : List.of();
    ElementName box =
        new ElementName(
            "box",
            "R-3",
            "left wall, along 2635 mm, up 450 mm",
            "/boxes/2",
            Optional.of(new PlanSource.Place(48, 5)));
    Finding finding = new Finding(rule, verdict, box, "what decided it", List.of(), missing);
    return new RuleResult(
        rule, counts, verdict == Verdict.MET ? List.of() : List.of(finding), Optional.empty());
  }

  private static Standard standard(SourceText text) {
    String name = text.name().startsWith("standard ") ? text.name().substring(9) : "house";
    List<Rule> rules =
        name.equals("wet-rooms")
            ? List.of(rule(Severity.HOLD))
            : List.of(rule(Severity.HOLD), rule(Severity.FIX));
    return new Standard(
        name,
        "2026-11",
        "Standard of the test (invented)",
        "Supports and does not replace local codes.",
        List.of(),
        rules,
        text);
  }

  private static Rule rule(Severity severity) {
    Noun noun = new Noun("box", "box", "boxes", List.of());
    Variable box = new Variable(0, noun);
    ValueType.Number length = new ValueType.Number(Units.INCH.dimension(), Units.INCH);
    Condition requirement =
        new Condition.Compare(
            new Value.Of(
                new Property("box.clearance", "clearance", noun, List.of(), length),
                new Reference.Bound(box),
                List.of(),
                SPAN),
            Comparison.AT_LEAST,
            new Value.Literal(new Quantity(Rational.of(2), Units.INCH, "2 in"), length, SPAN),
            SPAN);
    return new Rule(
        "box-clear-of-steel",
        "A box leaves room for foam behind it",
        box,
        Optional.empty(),
        Optional.empty(),
        requirement,
        severity,
        "pre-foam",
        "foam needs room",
        "common practice, no source",
        "box must have clearance >= 2 in",
        SPAN,
        SPAN);
  }

  private static Plan plan(String word, String name) {
    Map<Face, FaceBuild> faces = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      faces.put(
          face,
          new FaceBuild(
              face,
              "/faces/default",
              null,
              FaceBuild.Ribs.UPRIGHT,
              null,
              null,
              null,
              null,
              null,
              null));
    }
    return new Plan(
        word,
        "Plan of the test (invented): " + word,
        Units.MILLIMETRE,
        Tolerances.NONE,
        new Room("/room", null, null, null),
        new Site("/site", null, null),
        new ShellSize("45G1", 12032, 2352, 2698),
        faces,
        List.of(),
        List.of(),
        List.of(),
        new PlanSource(name, "fedcba9876543210".repeat(4), Map.of()));
  }
}
