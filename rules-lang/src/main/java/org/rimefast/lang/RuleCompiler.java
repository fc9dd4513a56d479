package org.rimefast.lang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.check.StandardChecker;
import org.rimefast.lang.internal.layer.LayerReader;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Vocabulary;

/** Compiles rule text. Immutable and safe to share between threads. */
public final class RuleCompiler {
  private final Dictionary dictionary;
  private final Limits limits;

  /**
   * A compiler for a vocabulary, with the default limits.
   *
   * @throws IllegalArgumentException if a phrase of the vocabulary holds a word that the language
   *     keeps for itself, such as {@code and}, or is not written in lower case
   */
  public RuleCompiler(Vocabulary vocabulary) {
    this(vocabulary, Limits.DEFAULT);
  }

  /**
   * A compiler for a vocabulary.
   *
   * @throws IllegalArgumentException if a phrase of the vocabulary holds a word that the language
   *     keeps for itself, such as {@code and}, or is not written in lower case
   */
  public RuleCompiler(Vocabulary vocabulary, Limits limits) {
    this.dictionary = new Dictionary(vocabulary);
    this.limits = limits;
  }

  /**
   * Compiles one text that stands by itself: of files that it includes, or of a standard that it
   * builds on, none is found. Never throws for what is wrong in the text.
   */
  public Compilation compile(SourceText source) {
    return compile(source, SourceFinder.NOTHING);
  }

  /**
   * Compiles a text with all that it includes and builds on.
   *
   * @param finder finds what the text names
   */
  public Compilation compile(SourceText source, SourceFinder finder) {
    LayerReader.Read read =
        LayerReader.read(
            source,
            finder,
            new LayerReader.Bounds(
                limits.characters(),
                limits.nesting(),
                limits.errors(),
                limits.files(),
                limits.layers()));
    StandardChecker checker = new StandardChecker(dictionary, read.source());
    Optional<Standard> standard = read.complete() ? checker.check(read.layers()) : Optional.empty();
    List<Diagnostic> all = new ArrayList<>(read.diagnostics());
    all.addAll(checker.diagnostics());
    all.sort(Comparator.comparingInt(diagnostic -> diagnostic.span().start()));
    boolean failed = all.stream().anyMatch(d -> d.level() == Diagnostic.Level.ERROR);
    return new Compilation(
        checker.source(),
        failed ? Optional.empty() : standard,
        limited(all, limits),
        checker.pins());
  }

  /** The stages of the vocabulary, in order. */
  List<String> stages() {
    return dictionary.vocabulary().stages();
  }

  /** As many as the limits let be told, and how many more there are. */
  static List<Diagnostic> limited(List<Diagnostic> all, Limits limits) {
    if (all.size() <= limits.errors()) {
      return all;
    }
    List<Diagnostic> shown = new ArrayList<>(all.subList(0, limits.errors()));
    int rest = all.size() - limits.errors();
    shown.add(
        error(
            DiagnosticCode.TOO_MANY_ERRORS,
            all.get(limits.errors()).span(),
            (rest == 1 ? "One more error is" : rest + " more errors are") + " not shown.",
            "Put the first ones right and compile again."));
    return shown;
  }

  private static Diagnostic error(DiagnosticCode code, Span span, String headline, String help) {
    return new Diagnostic(code, Diagnostic.Level.ERROR, span, headline, help, List.of(), List.of());
  }
}
