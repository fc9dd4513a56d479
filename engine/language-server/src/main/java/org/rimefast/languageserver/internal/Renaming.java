package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.Mention;

/**
 * Gives a constant, term or rule another name wherever it stands. The compiler judges: what would
 * not compile, or would mean something else, is refused with its own words.
 */
final class Renaming {
  /** A name in a file, where {@code start} and {@code end} count from the beginning of the file. */
  private record Place(String file, int start, int end) {}

  /** A replacement in one file. */
  private record Edit(Span span, String text, boolean isName) {}

  private final View view;
  private final Mention mention;
  private final List<Analysis> before;

  /** Edits by file, and in each by where they begin. */
  private final Map<String, TreeMap<Integer, Edit>> edits = new LinkedHashMap<>();

  private final Map<String, String> texts = new HashMap<>();

  Renaming(View view, Mention mention) {
    this.view = view;
    this.mention = mention;
    this.before = Names.projects(view, mention.meaning());
  }

  /**
   * The edits.
   *
   * @throws ResponseErrorException if the name cannot be changed so
   */
  WorkspaceEdit to(String newName) {
    String name = newName.strip().replaceAll("\\s+", " ");
    for (Analysis analysis : before) {
      firstError(analysis)
          .ifPresent(
              error -> {
                throw refusal(
                    "The text has a fault that hides where names stand: "
                        + in(analysis, error.span())
                        + error.headline());
              });
    }
    before.forEach(analysis -> collect(analysis, name));
    requireAlone();
    renewPins();
    check();
    Map<String, List<TextEdit>> changes = new LinkedHashMap<>();
    edits.forEach(
        (file, ordered) -> {
          LineIndex lines = new LineIndex(text(file));
          changes.put(
              file,
              ordered.values().stream()
                  .map(edit -> new TextEdit(lines.range(edit.span()), edit.text()))
                  .toList());
        });
    return new WorkspaceEdit(changes);
  }

  private void collect(Analysis analysis, String name) {
    SourceText source = analysis.source();
    for (Mention same : Names.same(analysis, mention.meaning())) {
      String written = source.textOf(same.span());
      if (written.contains("--")) {
        throw refusal("A comment stands within the name; move it first.");
      }
      String file = file(analysis, same.span());
      if (!Uris.isUri(file)) {
        throw refusal(
            "This name is given by a shipped standard, which cannot be changed here; a standard that"
                + " builds on it can amend or withdraw its rules.");
      }
      put(analysis, same.span(), form(written.replaceAll("\\s+", " "), name), true);
    }
  }

  private void put(Analysis analysis, Span span, String text, boolean isName) {
    String file = file(analysis, span);
    SourceText source = analysis.source();
    texts.put(file, source.parts().get(source.partAt(span.start())).text());
    Span local = new Places(source).local(span);
    edits
        .computeIfAbsent(file, key -> new TreeMap<>())
        .put(local.start(), new Edit(local, text, isName));
  }

  /** The new name in the form in which the old one is written: one, or several. */
  private String form(String written, String name) {
    if (!(mention.meaning() instanceof Meaning.OfTerm meaning)) {
      return name;
    }
    Term term = meaning.term();
    String noun = term.noun().singular();
    boolean plural = written.equals(term.plural()) && !written.equals(term.singular());
    if (!plural || !name.endsWith(noun)) {
      return name;
    }
    return name.substring(0, name.length() - noun.length()) + term.noun().plural();
  }

  /** In a file that another standard includes as well, the name may stand for something else. */
  private void requireAlone() {
    Set<String> known =
        before.stream().map(analysis -> analysis.source().name()).collect(Collectors.toSet());
    for (String file : List.copyOf(edits.keySet())) {
      for (Analysis root : view.workspace().roots(file)) {
        if (!known.contains(root.source().name())) {
          throw refusal(
              "The file "
                  + last(file)
                  + " is also part of "
                  + last(root.source().name())
                  + ", where the name is not the same one.");
        }
      }
    }
  }

  /**
   * An amendment tells the words of the rule that it was written for, names among them. They are
   * renewed where they were right before, since another name changes nothing that the rule asks.
   */
  private void renewPins() {
    if (before.stream().allMatch(analysis -> analysis.pins().isEmpty())) {
      return;
    }
    Workspace after = after();
    for (Analysis analysis : before) {
      Optional<Analysis> renamed = again(after, analysis);
      if (renamed.isEmpty() || renamed.get().pins().size() != analysis.pins().size()) {
        continue;
      }
      for (int i = 0; i < analysis.pins().size(); i++) {
        Pin pin = analysis.pins().get(i);
        Pin fresh = renamed.get().pins().get(i);
        boolean stale = fresh.state() != Pin.State.CURRENT && pin.state() == Pin.State.CURRENT;
        if (stale || fresh.state() == Pin.State.CHANGED) {
          put(analysis, pin.place(), fresh.line(), false);
        }
      }
    }
  }

  /** Compiles the texts as they would be. */
  private void check() {
    Workspace after = after();
    Set<Place> found = new HashSet<>();
    Set<Place> wanted = wanted();
    List<Analysis> renamed = new ArrayList<>();
    for (Analysis analysis : before) {
      again(after, analysis).ifPresent(renamed::add);
    }
    for (Analysis analysis : List.copyOf(renamed)) {
      firstError(analysis)
          .ifPresent(
              error -> {
                throw refusal((error.headline() + " " + error.help()).strip());
              });
    }
    Set<String> keys = new HashSet<>();
    for (Analysis analysis : renamed) {
      for (Mention same : analysis.mentions()) {
        if (isSameKind(same) && wanted.contains(place(analysis, same.span()))) {
          keys.add(Names.key(same.meaning()));
        }
      }
    }
    for (Analysis analysis : renamed) {
      for (Mention same : analysis.mentions()) {
        if (isSameKind(same) && keys.contains(Names.key(same.meaning()))) {
          found.add(place(analysis, same.span()));
        }
      }
    }
    if (keys.size() != 1 || !found.equals(wanted)) {
      throw refusal("With this name the text would mean something else.");
    }
  }

  /** Where the new name would stand. */
  private Set<Place> wanted() {
    Set<Place> wanted = new HashSet<>();
    edits.forEach(
        (file, ordered) -> {
          int shift = 0;
          for (Edit edit : ordered.values()) {
            int start = edit.span().start() + shift;
            if (edit.isName()) {
              wanted.add(new Place(Uris.key(file), start, start + edit.text().length()));
            }
            shift += edit.text().length() - (edit.span().end() - edit.span().start());
          }
        });
    return wanted;
  }

  private Workspace after() {
    Map<String, String> changed = new HashMap<>();
    edits.forEach(
        (file, ordered) -> {
          StringBuilder text = new StringBuilder();
          int at = 0;
          for (Edit edit : ordered.values()) {
            text.append(text(file), at, edit.span().start()).append(edit.text());
            at = edit.span().end();
          }
          changed.put(file, text.append(text(file).substring(at)).toString());
        });
    return view.workspace().with(changed);
  }

  /** The same text as it would be. */
  private static Optional<Analysis> again(Workspace after, Analysis analysis) {
    return after.analysis(analysis.source());
  }

  private String text(String file) {
    return texts.getOrDefault(file, "");
  }

  private boolean isSameKind(Mention other) {
    return other.meaning().getClass().equals(mention.meaning().getClass());
  }

  private static Place place(Analysis analysis, Span span) {
    Span local = new Places(analysis.source()).local(span);
    return new Place(Uris.key(file(analysis, span)), local.start(), local.end());
  }

  private static String file(Analysis analysis, Span span) {
    SourceText source = analysis.source();
    return source.parts().get(source.partAt(span.start())).name();
  }

  /** Names the file of a fault, unless it is the one at hand. */
  private String in(Analysis analysis, Span span) {
    String file = file(analysis, span);
    return file.equals(view.document().uri()) ? "" : "in " + last(file) + ": ";
  }

  private static String last(String file) {
    return file.substring(file.lastIndexOf('/') + 1);
  }

  private static Optional<Diagnostic> firstError(Analysis analysis) {
    return analysis.diagnostics().stream()
        .filter(d -> d.level() == Diagnostic.Level.ERROR)
        .findFirst();
  }

  private static ResponseErrorException refusal(String message) {
    return new ResponseErrorException(
        new ResponseError(ResponseErrorCode.RequestFailed, message, null));
  }
}
