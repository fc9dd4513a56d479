package org.rimefast.languageserver.internal;

import java.util.List;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.rimefast.lang.source.SourceText;

/** One version of an open file. */
final class Document {
  private final String uri;
  private final int version;
  private final String text;
  private final LineIndex lines;

  Document(String uri, int version, String text) {
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
      document = new Document(uri, newVersion, next);
    }
    return document;
  }

  SourceText source() {
    return new SourceText(uri, text);
  }
}
