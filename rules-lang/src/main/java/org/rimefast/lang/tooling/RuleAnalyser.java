package org.rimefast.lang.tooling;

import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;

/**
 * Answers what an editor asks about rule text. Immutable and safe to share between threads.
 *
 * <p>Use:
 *
 * <pre>{@code
 * RuleAnalyser analyser = new RuleAnalyser(vocabulary);
 * Analysis analysis = analyser.analyse(new SourceText("house.rime", text));
 * analysis.proposals(offset).proposals();
 * }</pre>
 */
public final class RuleAnalyser {
  private final Vocabulary vocabulary;
  private final Dictionary dictionary;
  private final RuleCompiler compiler;

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
  }

  /** The words that rules may use. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** Compiles a text and keeps it for questions. Never throws for what is wrong in the text. */
  public Analysis analyse(SourceText source) {
    return new Analysis(dictionary, compiler.compile(source));
  }
}
