package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.rimefast.lang.internal.meaning.RuleMeaning;
import org.rimefast.lang.internal.meaning.WordDifference;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Checks that rules are still as they were when their amendments were written. */
final class SeenChecker {
  private static final int WIDTH = 100;

  /** An edition that needs no quotes. */
  private static final Pattern PLAIN =
      Pattern.compile("[0-9]+([.,/'_-][0-9]+)*|[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final SourceText source;
  private final List<Diagnostic> diagnostics;

  SeenChecker(SourceText source, List<Diagnostic> diagnostics) {
    this.source = source;
    this.diagnostics = diagnostics;
  }

  /**
   * Compares an amendment with its rule.
   *
   * @param rule the rule as the base has it
   * @param edition the base's edition
   */
  Pin check(Statement.Amendment amendment, Rule rule, String edition) {
    String words = RuleMeaning.words(rule);
    String hash = RuleMeaning.hash(rule);
    String line = line(edition, hash, words);
    if (amendment.seen().isEmpty()) {
      Span at = insertion(amendment.span().end());
      String inserted = lineEnd(at) + "  " + line.replace("\n", lineEnd(at));
      diagnostics.add(
          Problems.fixable(
              DiagnosticCode.MISSING_SEEN,
              amendment.rule().span(),
              "The amendment does not say which rule "
                  + rule.id()
                  + " it was written for, so nobody would see if that rule changes.",
              "Add this line, or let \"rimefast pin\" add it: " + line.replaceAll("\n *", " "),
              at,
              inserted));
      return pin(amendment, Pin.State.MISSING, "", words, at, inserted);
    }
    Statement.Seen seen = amendment.seen().get(0);
    repeated(amendment);
    String renewed = line.replace("\n", lineEnd(seen.span()));
    String before = seen.text().text();
    if (seen.hash().text().equals(hash)) {
      boolean current = before.equals(words) && seen.edition().text().equals(edition);
      return pin(
          amendment,
          current ? Pin.State.CURRENT : Pin.State.REWORDED,
          before,
          words,
          seen.span(),
          renewed);
    }
    String difference =
        before.equals(words)
            ? "Its words are the same, but what they mean is not."
            : "It reads now: " + WordDifference.show(before, words) + ".";
    diagnostics.add(
        new Diagnostic(
            DiagnosticCode.CHANGED_RULE,
            Diagnostic.Level.ERROR,
            seen.span(),
            "The rule " + rule.id() + " is not as it was when this amendment was written.",
            difference + " If the amendment still holds, \"rimefast pin\" accepts that.",
            List.of(new Diagnostic.Related(rule.sentenceSpan(), "the rule is here")),
            List.of(new Diagnostic.Fix(seen.span(), renewed))));
    return pin(amendment, Pin.State.CHANGED, before, words, seen.span(), renewed);
  }

  private void repeated(Statement.Amendment amendment) {
    if (amendment.seen().size() > 1) {
      diagnostics.add(
          Problems.related(
              DiagnosticCode.REPEATED_PART,
              amendment.seen().get(1).span(),
              "There are two parts called \"seen\".",
              "Keep one of them.",
              List.of(
                  new Diagnostic.Related(
                      amendment.seen().get(0).span(), "the first one is here"))));
    }
  }

  private static Pin pin(
      Statement.Amendment amendment,
      Pin.State state,
      String before,
      String after,
      Span place,
      String line) {
    return new Pin(amendment.rule().text(), amendment.text(), state, before, after, place, line);
  }

  /** The end of a statement, behind a comment that stands on its last line. */
  private Span insertion(int end) {
    int fileEnd = source.spanOf(source.partAt(end)).end();
    String text = source.text();
    int lineEnd = end;
    while (lineEnd < fileEnd && text.charAt(lineEnd) != '\n' && text.charAt(lineEnd) != '\r') {
      lineEnd++;
    }
    int at = text.substring(end, lineEnd).stripLeading().startsWith("--") ? lineEnd : end;
    return new Span(at, at);
  }

  /** As the file ends its lines. */
  private String lineEnd(Span place) {
    String text = source.parts().get(source.partAt(place.start())).text();
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** The part in lines of at most 100 characters, the first without its indent. */
  private static String line(String edition, String hash, String words) {
    String written = PLAIN.matcher(edition).matches() ? edition : "\"" + edition + "\"";
    String start = "seen edition " + written + " hash " + hash + " ";
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int room = WIDTH - 2 - start.length() - 2;
    for (String word : List.of(words.split(" ", -1))) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > room) {
        lines.add(line.toString());
        line.setLength(0);
        room = WIDTH - 4 - 2;
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return start + "\"" + String.join("\"\n    \"", lines) + "\"";
  }

  /** Where the part would stand; for messages of what is not there. */
  static Optional<String> textOf(Statement.Amendment amendment) {
    return amendment.seen().stream().findFirst().map(seen -> seen.text().text());
  }
}
