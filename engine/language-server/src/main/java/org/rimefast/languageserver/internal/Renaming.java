package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Mention;

/**
 * Gives a constant, term or rule another name wherever it stands. The compiler judges: what would
 * not compile, or would mean something else, is refused with its own words.
 */
final class Renaming {
  private record Edit(Span span, String text) {}

  private final Document document;
  private final Mention mention;

  Renaming(Document document, Mention mention) {
    this.document = document;
    this.mention = mention;
  }

  /**
   * The edits.
   *
   * @throws ResponseErrorException if the name cannot be changed so
   */
  WorkspaceEdit to(String newName) {
    String name = newName.strip().replaceAll("\\s+", " ");
    firstError(document)
        .ifPresent(
            error -> {
              throw refusal(
                  "The text has a fault that hides where names stand: " + error.headline());
            });
    List<Edit> edits = new ArrayList<>();
    for (Mention same : Names.same(document, mention.meaning())) {
      String written = document.text().substring(same.span().start(), same.span().end());
      if (written.contains("--")) {
        throw refusal("A comment stands within the name; move it first.");
      }
      edits.add(new Edit(same.span(), form(written.replaceAll("\\s+", " "), name)));
    }
    edits.sort(Comparator.comparingInt(edit -> edit.span().start()));
    check(edits);
    List<TextEdit> changes = new ArrayList<>();
    edits.forEach(edit -> changes.add(new TextEdit(document.range(edit.span()), edit.text())));
    return new WorkspaceEdit(Map.of(document.uri(), changes));
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

  /** Compiles the text as it would be. */
  private void check(List<Edit> edits) {
    StringBuilder text = new StringBuilder();
    List<Span> places = new ArrayList<>();
    int at = 0;
    for (Edit edit : edits) {
      text.append(document.text(), at, edit.span().start());
      places.add(new Span(text.length(), text.length() + edit.text().length()));
      text.append(edit.text());
      at = edit.span().end();
    }
    text.append(document.text().substring(at));
    Document renamed = document.with(text.toString());
    Optional<Diagnostic> error = firstError(renamed);
    if (error.isPresent()) {
      throw refusal((error.get().headline() + " " + error.get().help()).strip());
    }
    boolean moved =
        places.stream()
            .anyMatch(
                place ->
                    renamed.analysis().mentions().stream()
                        .noneMatch(m -> m.span().equals(place) && isSameKind(m)));
    int before = Names.same(document, mention.meaning()).size();
    boolean merged =
        renamed.analysis().mentions().stream()
            .filter(m -> places.contains(m.span()) && isSameKind(m))
            .findFirst()
            .filter(m -> Names.same(renamed, m.meaning()).size() == before)
            .isEmpty();
    if (moved || merged) {
      throw refusal("With this name the text would mean something else.");
    }
  }

  private boolean isSameKind(Mention other) {
    return other.meaning().getClass().equals(mention.meaning().getClass());
  }

  private static Optional<Diagnostic> firstError(Document document) {
    return document.analysis().compilation().diagnostics().stream()
        .filter(d -> d.level() == Diagnostic.Level.ERROR)
        .findFirst();
  }

  private static ResponseErrorException refusal(String message) {
    return new ResponseErrorException(
        new ResponseError(ResponseErrorCode.RequestFailed, message, null));
  }
}
