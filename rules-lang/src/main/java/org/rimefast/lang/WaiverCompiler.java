package org.rimefast.lang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.check.WaiverChecker;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;

/**
 * Compiles files of waivers. Immutable and safe to share between threads.
 *
 * <pre>{@code
 * WaiverCompilation compiled = new WaiverCompiler(vocabulary).compile(text, standard);
 * compiled.diagnostics().forEach(d -> System.out.println(d.headline()));
 * }</pre>
 */
public final class WaiverCompiler {
  private final Dictionary dictionary;
  private final Limits limits;

  /**
   * A compiler for the vocabulary that standards are compiled with, with the default limits.
   *
   * @throws IllegalArgumentException if a phrase of the vocabulary holds a word that the language
   *     keeps for itself
   */
  public WaiverCompiler(Vocabulary vocabulary) {
    this(vocabulary, Limits.DEFAULT);
  }

  /**
   * A compiler for the vocabulary that standards are compiled with.
   *
   * @throws IllegalArgumentException if a phrase of the vocabulary holds a word that the language
   *     keeps for itself
   */
  public WaiverCompiler(Vocabulary vocabulary, Limits limits) {
    this.dictionary = new Dictionary(vocabulary);
    this.limits = limits;
  }

  /**
   * Compiles one text. Never throws for what is wrong in the text.
   *
   * @param standard the standard that plans are checked against
   */
  public WaiverCompilation compile(SourceText source, Standard standard) {
    Optional<Diagnostic> refused = UnfitText.problem(source.text(), limits.characters());
    if (refused.isPresent()) {
      return new WaiverCompilation(source, "", List.of(), List.of(refused.get()));
    }
    StatementReader.Statements read =
        StatementReader.read(source, limits.nesting(), limits.errors());
    WaiverChecker checker = new WaiverChecker(dictionary, standard, source);
    List<Waiver> waivers = checker.check(read.statements(), read.diagnostics().isEmpty());
    List<Diagnostic> all = new ArrayList<>(read.diagnostics());
    all.addAll(checker.diagnostics());
    all.sort(Comparator.comparingInt(diagnostic -> diagnostic.span().start()));
    boolean failed = all.stream().anyMatch(d -> d.level() == Diagnostic.Level.ERROR);
    return new WaiverCompilation(
        source, checker.title(), failed ? List.of() : waivers, RuleCompiler.limited(all, limits));
  }
}
