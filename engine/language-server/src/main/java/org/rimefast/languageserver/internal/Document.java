package org.rimefast.languageserver.internal;

import java.util.List;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.RuleAnalyser;

/** One version of an open file. Immutable but for the analysis, which is made when first asked. */
final class Document {
  private final RuleAnalyser analyser;
  private final String uri;
  private final int version;
  private final String text;
  private final LineIndex lines;
  private @Nullable Analysis analysis;

  Document(RuleAnalyser analyser, String uri, int version, String text) {
    this.analyser = analyser;
    this.uri = uri;
    this.version = version;
    this.text = text;
    this.lines = new LineIndex(text);
  }

  String uri() {
    return uri;
  }

  int version() {
    return version;
  }

  String text() {
    return text;
  }

  LineIndex lines() {
    return lines;
  }

  /** The next version, after changes each of which counts from the text that the last one left. */
  Document changed(int newVersion, List<TextDocumentContentChangeEvent> changes) {
    Document document = this;
    for (TextDocumentContentChangeEvent change : changes) {
      Range range = change.getRange();
      String next = change.getText();
      if (range != null) {
        int start = document.lines.offset(range.getStart());
        int end = Math.max(start, document.lines.offset(range.getEnd()));
        next = document.text.substring(0, start) + next + document.text.substring(end);
      }
      document = new Document(analyser, uri, newVersion, next);
    }
    return document;
  }

  /** The same file with another text, as it would be. */
  Document with(String other) {
    return new Document(analyser, uri, version, other);
  }

  SourceText source() {
    return new SourceText(name(), text);
  }

  synchronized Analysis analysis() {
    Analysis ready = analysis;
    if (ready == null) {
      ready = analyser.analyse(source());
      analysis = ready;
    }
    return ready;
  }

  Range range(Span span) {
    return lines.range(span);
  }

  private String name() {
    return uri.substring(uri.lastIndexOf('/') + 1);
  }
}
