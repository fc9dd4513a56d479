package org.rimefast.lang;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.format.TextLayout;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * Lays rule text out in one way, whoever wrote it.
 *
 * <p>Only white space and line ends change: every word, sign and comment stays, in its order, and
 * the text compiles to the same rules, with other spans. A text that is laid out already comes back
 * equal. Needs no vocabulary: a word that is in none is no obstacle.
 */
public final class RuleFormatter {
  private RuleFormatter() {}

  /**
   * The text, laid out: lines of at most 100 characters where a sentence can be broken, ended by
   * {@code \n}. A statement that cannot be read is left as it stands, byte for byte; so is a whole
   * text that no compiler takes on, such as one longer than {@link Limits#DEFAULT} allows.
   */
  public static String format(SourceText source) {
    return formatting(source).text();
  }

  /** The same, and why statements were left as they stand. Never throws for what is in the text. */
  public static Formatting formatting(SourceText source) {
    Optional<Diagnostic> unfit = UnfitText.problem(source.text(), Limits.DEFAULT.characters());
    if (unfit.isPresent()) {
      return new Formatting(source.text(), List.of(unfit.get()));
    }
    StatementReader.Outline outline =
        StatementReader.outline(source, Limits.DEFAULT.nesting(), Limits.DEFAULT.errors());
    return new Formatting(TextLayout.write(source, outline.statements()), outline.diagnostics());
  }
}
