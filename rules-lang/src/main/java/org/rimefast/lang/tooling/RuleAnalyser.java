package org.rimefast.lang.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.Limits;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.internal.check.CaseChecker;
import org.rimefast.lang.internal.check.StandardChecker;
import org.rimefast.lang.internal.check.WaiverChecker;
import org.rimefast.lang.internal.complete.Setting;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.LayerReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;

/**
 * Answers what an editor asks about rule text. Immutable and safe to share between threads.
 *
 * <p>Use:
 *
 * <pre>{@code
 * RuleAnalyser analyser = new RuleAnalyser(vocabulary);
 * Analysis analysis = analyser.analyse(new SourceText("house.rime", text), finder);
 * analysis.proposals(offset).proposals();
 * }</pre>
 */
public final class RuleAnalyser {
  private final Vocabulary vocabulary;
  private final Dictionary dictionary;
  private final RuleCompiler compiler;
  private final WaiverCompiler waivers;

  /**
   * An analyser for a vocabulary.
   *
   * @throws IllegalArgumentException if a phrase of the vocabulary holds a word that the language
   *     keeps for itself, such as {@code and}, or is not written in lower case
   */
  public RuleAnalyser(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.dictionary = new Dictionary(vocabulary);
    this.compiler = new RuleCompiler(vocabulary);
    this.waivers = new WaiverCompiler(vocabulary);
  }

  /** The words that rules may use. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** Compiles one text that stands by itself and keeps it for questions. */
  public Analysis analyse(SourceText source) {
    return analyse(source, SourceFinder.NOTHING);
  }

  /**
   * Compiles a text with all that it includes and builds on, and keeps them for questions. Never
   * throws for what is wrong in a text.
   *
   * @param finder finds what the text names
   */
  public Analysis analyse(SourceText source, SourceFinder finder) {
    RememberingFinder once = new RememberingFinder(finder);
    Compilation compilation = compiler.compile(source, once);
    Limits limits = Limits.DEFAULT;
    LayerReader.Read read =
        LayerReader.read(
            source,
            once,
            new LayerReader.Bounds(
                limits.characters(), limits.nesting(), 0, limits.files(), limits.layers()));
    return new Analysis(
        read.source(),
        compilation.standard(),
        compilation.diagnostics(),
        compilation.pins(),
        () -> standard(read));
  }

  /**
   * Compiles a text that holds cases of a standard and keeps it for questions.
   *
   * @param standard what {@link #analyse} made of the standard; while that has faults, only what is
   *     wrong with the text by itself is told
   */
  public Analysis analyseCases(SourceText source, Analysis standard) {
    return new Analysis(
        source,
        standard.standard(),
        standard
            .standard()
            .map(known -> CaseCompiler.compile(source, known).diagnostics())
            .orElseGet(() -> alone(source)),
        List.of(),
        () -> cases(source, standard));
  }

  /**
   * Compiles a file of waivers for a standard and keeps it for questions.
   *
   * @param standard what {@link #analyse} made of the standard; while that has faults, only what is
   *     wrong with the text by itself is told
   */
  public Analysis analyseWaivers(SourceText source, Analysis standard) {
    return new Analysis(
        source,
        standard.standard(),
        standard
            .standard()
            .map(known -> waivers.compile(source, known).diagnostics())
            .orElseGet(() -> alone(source)),
        List.of(),
        () -> waivers(source, standard));
  }

  private Analysis.Read standard(LayerReader.Read read) {
    MentionCollector collector = new MentionCollector();
    StandardChecker checker = new StandardChecker(dictionary, read.source(), collector);
    Optional<Standard> standard = checker.checkAll(read.layers());
    List<Statement> statements =
        read.layers().stream().flatMap(layer -> layer.statements().stream()).toList();
    Setting setting =
        new Setting(
            Setting.File.STANDARD,
            standard.map(Standard::name).orElse(""),
            MentionCollector.ruleIds(statements),
            standard.flatMap(Standard::base).map(Standard::rules).orElse(List.of()));
    return new Analysis.Read(
        Analysis.pieces(read.source()),
        checker.known(),
        setting,
        standard.map(Standard::rules).orElse(List.of()),
        standard.map(Standard::withdrawn).orElse(List.of()),
        standard.map(Standard::cases).orElse(List.of()),
        collector.mentions(statements, checker.known()));
  }

  private static Analysis.Read cases(SourceText source, Analysis standard) {
    Analysis.Read under = standard.read();
    List<Statement> statements = statements(source);
    return new Analysis.Read(
        Analysis.pieces(source),
        under.known(),
        under.setting().of(Setting.File.CASES),
        under.rules(),
        under.withdrawn(),
        new CaseChecker(source, Optional.empty(), new ArrayList<>()).check(statements),
        new MentionCollector().mentions(statements, under.known()));
  }

  private Analysis.Read waivers(SourceText source, Analysis standard) {
    Analysis.Read under = standard.read();
    List<Statement> statements = statements(source);
    MentionCollector collector = new MentionCollector();
    standard
        .standard()
        .ifPresent(
            known ->
                new WaiverChecker(dictionary, known, source, collector).check(statements, false));
    return new Analysis.Read(
        Analysis.pieces(source),
        under.known(),
        under.setting().of(Setting.File.WAIVERS),
        under.rules(),
        under.withdrawn(),
        List.of(),
        collector.mentions(statements, under.known()));
  }

  private static List<Statement> statements(SourceText source) {
    return UnfitText.problem(source.text(), Limits.DEFAULT.characters()).isPresent()
        ? List.of()
        : StatementReader.read(source, Limits.DEFAULT.nesting(), 0).statements();
  }

  /** What can be said of a text while its standard is not known. */
  private static List<Diagnostic> alone(SourceText source) {
    Limits limits = Limits.DEFAULT;
    Optional<Diagnostic> refused = UnfitText.problem(source.text(), limits.characters());
    if (refused.isPresent()) {
      return List.of(refused.get());
    }
    return StatementReader.read(source, limits.nesting(), limits.errors()).diagnostics().stream()
        .sorted(Comparator.comparingInt(diagnostic -> diagnostic.span().start()))
        .limit(limits.errors())
        .toList();
  }
}
