package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * Writes amended rules out in full and reads them again, so that all that is ever said of one is
 * said in the words that hold.
 */
final class RuleWriter {
  private static final int NESTING = 1_000;

  /**
   * A rule that was written out.
   *
   * @param statement its statement
   * @param rule the typed rule
   * @param source the text in which its spans lie
   */
  record Written(Statement.Rule statement, Rule rule, SourceText source) {}

  /** A rule that was written out, or why it cannot be read: one of the two is there. */
  record Attempt(List<Written> written, List<Diagnostic> problems) {}

  private final Dictionary dictionary;
  private final Map<String, Constant> constants;
  private final Terms terms;
  private final Tables tables;
  private SourceText source;

  /**
   * A writer for one text.
   *
   * @param constants those of the standard, as they become known
   */
  RuleWriter(
      Dictionary dictionary,
      Map<String, Constant> constants,
      Terms terms,
      Tables tables,
      SourceText source) {
    this.dictionary = dictionary;
    this.constants = constants;
    this.terms = terms;
    this.tables = tables;
    this.source = source;
  }

  /** The text, with the rules that were kept behind it. */
  SourceText source() {
    return source;
  }

  Dictionary dictionary() {
    return dictionary;
  }

  Map<String, Constant> constants() {
    return constants;
  }

  /**
   * Reads a rule with another sentence, in a text of its own.
   *
   * @param own constants that have another value in this rule
   */
  Attempt attempt(Rule rule, String sentence, Map<String, Constant> own) {
    SourceText alone = new SourceText("", text(rule, sentence));
    return read(rule, alone, own);
  }

  /** The rule as it stands, in a text of its own, where its sentence is one line. */
  Written alone(Rule rule, Map<String, Constant> own) {
    return only(rule, attempt(rule, rule.sentence(), own));
  }

  /** Keeps a rule at the end of the text; the words of an inspect item are not amended. */
  Rule kept(Rule rule, Map<String, Constant> own, String standard) {
    if (rule.question().isPresent()) {
      return rule;
    }
    SourceText more =
        source.with(
            new SourceText.Part(
                standard + ": rule " + rule.id() + " as amended", text(rule, rule.sentence())));
    Written written = only(rule, read(rule, more, own));
    source = more;
    return written.rule();
  }

  private static Written only(Rule rule, Attempt attempt) {
    if (attempt.written().isEmpty()) {
      throw new IllegalStateException(
          "rule " + rule.id() + " cannot be read again: " + attempt.problems());
    }
    return attempt.written().get(0);
  }

  private Attempt read(Rule rule, SourceText text, Map<String, Constant> own) {
    StatementReader.Statements read =
        StatementReader.read(text, text.parts().size() - 1, NESTING, 1);
    if (!read.diagnostics().isEmpty()) {
      return new Attempt(List.of(), read.diagnostics());
    }
    Map<String, Constant> known = new LinkedHashMap<>(constants);
    known.putAll(own);
    OperandReader operands =
        new OperandReader(dictionary, new Constants(known), terms, tables, text);
    Statement.Rule statement = (Statement.Rule) read.statements().get(0);
    List<Diagnostic> problems = new ArrayList<>();
    List<Written> written =
        new RuleChecker(dictionary, problems)
            .check(statement, operands)
            .map(typed -> typed.withChanges(rule.changes()))
            .map(typed -> List.of(new Written(statement, typed, text)))
            .orElse(List.of());
    return new Attempt(written, problems);
  }

  private static String text(Rule rule, String sentence) {
    return "rule "
        + rule.id()
        + " \""
        + rule.title()
        + "\"\n  "
        + sentence
        + "\n  severity "
        + rule.severity().word()
        + "\n  stage "
        + rule.stage()
        + "\n  because \""
        + rule.because()
        + "\"\n  source \""
        + rule.source()
        + "\"\n";
  }
}
