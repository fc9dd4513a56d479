package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** Reads the parts that every rule and every inspect item has. */
final class RuleParts {
  /** What the parts say. */
  record Parts(Severity severity, String stage, String because, String source) {}

  private final Fields fields;
  private final Word id;
  private final String owner;
  private final String where;
  private final List<Diagnostic> diagnostics;

  /**
   * A reader.
   *
   * @param id names the rule
   * @param kind what it is: {@code rule}
   * @param where where a missing part belongs: {@code after its sentence}
   */
  RuleParts(Fields fields, Word id, String kind, String where, List<Diagnostic> diagnostics) {
    this.fields = fields;
    this.id = id;
    this.owner = "The " + kind + " " + id.text();
    this.where = where;
    this.diagnostics = diagnostics;
  }

  /** All four; empty if one is missing or wrong, which is then told. */
  Optional<Parts> read(List<String> stages) {
    Optional<Severity> severity = severity();
    Optional<String> stage = stage(stages);
    Optional<String> because = required("because", "because \"room for foam\"");
    Optional<String> source = required("source", "source \"common practice, no source\"");
    return severity.isEmpty() || stage.isEmpty() || because.isEmpty() || source.isEmpty()
        ? Optional.empty()
        : Optional.of(new Parts(severity.get(), stage.get(), because.get(), source.get()));
  }

  /** The text of a part; empty, and told, if there is none. */
  Optional<String> required(String key, String example) {
    Optional<String> text = fields.text(key);
    if (text.isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_PART,
              id.span(),
              owner + " has no " + English.quoted(key) + ".",
              "Add" + (where.isEmpty() ? "" : " " + where) + ", for example: " + example));
    }
    return text;
  }

  private Optional<Severity> severity() {
    Optional<Word> word = fields.word("severity");
    if (word.isEmpty()) {
      required("severity", "severity hold");
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      if (severity.word().equals(word.get().text())) {
        return Optional.of(severity);
      }
      words.add(severity.word());
    }
    diagnostics.add(notOneOf(DiagnosticCode.UNKNOWN_SEVERITY, "severity", word.get(), words));
    return Optional.empty();
  }

  private Optional<String> stage(List<String> stages) {
    Optional<Word> word = fields.word("stage");
    if (word.isEmpty()) {
      required("stage", stages.isEmpty() ? "stage pre-foam" : "stage " + stages.get(0));
      return Optional.empty();
    }
    if (stages.contains(word.get().text())) {
      return Optional.of(word.get().text());
    }
    diagnostics.add(notOneOf(DiagnosticCode.UNKNOWN_STAGE, "stage", word.get(), stages));
    return Optional.empty();
  }

  /** A word that is none of a short list. */
  static Diagnostic notOneOf(DiagnosticCode code, String kind, Word word, List<String> words) {
    List<String> near = Nearest.to(word.text(), words);
    String headline =
        "There is no " + kind + " " + English.quoted(English.shortened(word.text())) + ".";
    String all = "It can be " + English.either(words, 10) + ".";
    if (near.isEmpty()) {
      return Problems.error(code, word.span(), headline, all);
    }
    return Problems.fixable(
        code,
        word.span(),
        headline,
        "Did you mean " + English.quoted(near.get(0)) + "? " + all,
        word.span(),
        near.get(0));
  }
}
