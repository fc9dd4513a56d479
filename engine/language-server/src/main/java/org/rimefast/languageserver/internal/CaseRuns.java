package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.languageserver.CaseOutcome;
import org.rimefast.languageserver.EditorHost;

/** Runs cases, and keeps what came of them until something is typed. */
final class CaseRuns {
  static final String COMMAND = "rimefast.runCases";
  static final String RULE = "rule";
  static final String CASE = "case";

  /** A case and the text it stands in. */
  private record Chosen(Case example, SourceText source) {}

  private final EditorHost host;
  private final Map<Location, Diagnostic> failed = new LinkedHashMap<>();
  private long changes;

  CaseRuns(EditorHost host) {
    this.host = host;
  }

  /** What came of cases holds for the texts they were run with, and for no others. */
  synchronized void forget() {
    failed.clear();
    changes++;
  }

  /** What came out otherwise, by file. */
  synchronized Map<String, List<Diagnostic>> failed() {
    Map<String, List<Diagnostic>> byFile = new LinkedHashMap<>();
    failed.forEach(
        (place, diagnostic) ->
            byFile.computeIfAbsent(place.getUri(), key -> new ArrayList<>()).add(diagnostic));
    return byFile;
  }

  /** How often something was typed so far. */
  synchronized long changes() {
    return changes;
  }

  /**
   * Runs the cases of a rule, or one case, and says what came of it.
   *
   * @param kind {@link #RULE} or {@link #CASE}
   * @param name the rule's id or the case's name
   * @param at how often something had been typed when {@code view} was made
   */
  MessageParams run(View view, String kind, String name, long at) {
    Optional<Standard> standard = view.standard().standard();
    if (standard.isEmpty()) {
      return new MessageParams(
          MessageType.Warning, "The standard has a fault; its cases can be run once that is gone.");
    }
    List<Analysis> texts = new ArrayList<>();
    if (kind.equals(CASE)) {
      texts.add(view.analysis());
    } else {
      texts.add(view.standard());
      view.workspace().casesOf(view.standard()).ifPresent(texts::add);
    }
    List<Chosen> chosen = new ArrayList<>();
    for (Analysis text : texts) {
      boolean sound =
          text.diagnostics().stream()
              .noneMatch(d -> d.level() == org.rimefast.lang.source.Diagnostic.Level.ERROR);
      if (!sound) {
        return new MessageParams(
            MessageType.Warning, "The cases have a fault; they can be run once that is gone.");
      }
      for (Case example : text.cases()) {
        boolean wanted =
            kind.equals(CASE) ? example.name().equals(name) : CaseLenses.speaksOf(example, name);
        if (wanted) {
          chosen.add(new Chosen(example, text.source()));
        }
      }
    }
    if (chosen.isEmpty()) {
      return new MessageParams(MessageType.Warning, "There is no case of " + name + ".");
    }
    List<CaseOutcome> outcomes =
        host.runCases(standard.get(), chosen.stream().map(Chosen::example).toList());
    return told(chosen, outcomes, at);
  }

  private synchronized MessageParams told(
      List<Chosen> chosen, List<CaseOutcome> outcomes, long at) {
    StringBuilder text = new StringBuilder();
    int otherwise = 0;
    for (int i = 0; i < chosen.size(); i++) {
      Case example = chosen.get(i).example();
      List<String> faults = outcomes.get(i).faults();
      Optional<Location> place =
          new Places(chosen.get(i).source()).location(firstLine(chosen.get(i)));
      place.ifPresent(failed::remove);
      if (!faults.isEmpty()) {
        otherwise++;
        String what = String.join("\n", faults);
        text.append("\n\"").append(example.name()).append("\": ").append(what);
        if (at == changes) {
          place.ifPresent(
              where ->
                  failed.put(
                      where,
                      new Diagnostic(
                          where.getRange(),
                          "This case did not come out as expected.\n" + what,
                          DiagnosticSeverity.Error,
                          "rimefast cases")));
        }
      }
    }
    String all = chosen.size() == 1 ? "1 case" : chosen.size() + " cases";
    return otherwise == 0
        ? new MessageParams(MessageType.Info, all + " came out as expected.")
        : new MessageParams(
            MessageType.Warning,
            otherwise + " of " + all + " did not come out as expected." + text);
  }

  /** The line on which a case says its name. */
  private static Span firstLine(Chosen chosen) {
    Span span = chosen.example().span();
    String text = chosen.source().textOf(span);
    int end = 0;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return new Span(span.start(), span.start() + end);
  }
}
