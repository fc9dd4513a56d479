package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** Checks {@code rule ...}. */
final class RuleChecker {
  private final Dictionary dictionary;
  private final List<Diagnostic> diagnostics;

  RuleChecker(Dictionary dictionary, List<Diagnostic> diagnostics) {
    this.dictionary = dictionary;
    this.diagnostics = diagnostics;
  }

  /** The typed rule; empty, with diagnostics, if something is wrong with it. */
  Optional<Rule> check(Statement.Rule rule, OperandReader operands) {
    Optional<RuleParts.Parts> parts =
        new RuleParts(
                new Fields(rule.fields(), diagnostics),
                rule.id(),
                "rule",
                "after its sentence",
                diagnostics)
            .read(dictionary.vocabulary().stages());
    Result<SentenceChecker.Checked> checked = new SentenceChecker(operands).check(rule.sentence());
    diagnostics.addAll(checked.problems());
    if (!checked.isOk() || parts.isEmpty()) {
      return Optional.empty();
    }
    SentenceChecker.Checked sentence = checked.get();
    return Optional.of(
        new Rule(
            rule.id().text(),
            rule.title().text(),
            sentence.subject(),
            sentence.where(),
            sentence.onlyIf(),
            sentence.requirement(),
            parts.get().severity(),
            parts.get().stage(),
            parts.get().because(),
            parts.get().source(),
            rule.sentenceText(),
            rule.sentence().span(),
            rule.span()));
  }

  /** The severity that a word means. */
  Optional<Severity> severity(Word word) {
    List<String> words = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      if (severity.word().equals(word.text())) {
        return Optional.of(severity);
      }
      words.add(severity.word());
    }
    diagnostics.add(RuleParts.notOneOf(DiagnosticCode.UNKNOWN_SEVERITY, "severity", word, words));
    return Optional.empty();
  }

  /** The stage that a word means. */
  Optional<String> stage(Word word) {
    List<String> stages = dictionary.vocabulary().stages();
    if (stages.contains(word.text())) {
      return Optional.of(word.text());
    }
    diagnostics.add(RuleParts.notOneOf(DiagnosticCode.UNKNOWN_STAGE, "stage", word, stages));
    return Optional.empty();
  }
}
