package org.rimefast.lang;

import org.rimefast.lang.internal.paraphrase.SentenceWriter;
import org.rimefast.lang.internal.paraphrase.Style;
import org.rimefast.lang.rule.Term;

/** Rule texts made at random. */
public final class RandomTexts {
  private RandomTexts() {}

  /** A rule whose sentence is made of the forms that the language has. */
  public static String ofWords(long seed) {
    return SourceTexts.rule("r-1", new SentenceMaker(seed).sentence());
  }

  /** Terms and a rule that say typed trees. */
  public static String ofTrees(long seed) {
    RandomRules rules = new RandomRules(seed);
    StringBuilder text = new StringBuilder();
    for (Term term : rules.terms()) {
      text.append(SentenceWriter.definition(term, Style.PLAIN).words()).append('\n');
    }
    String sentence = SentenceWriter.sentence(rules.rule(), Style.PLAIN).words();
    return text.append(SourceTexts.rule("r-1", sentence)).toString();
  }
}
