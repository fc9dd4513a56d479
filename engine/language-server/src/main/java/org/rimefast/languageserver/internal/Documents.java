package org.rimefast.languageserver.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.rimefast.languageserver.EditorHost;

/** The open files. Changes come one after another; questions may come at any time. */
final class Documents {
  private final EditorHost host;
  private Map<String, Document> open = Map.of();

  Documents(EditorHost host) {
    this.host = host;
  }

  synchronized void open(String uri, int version, String text) {
    Map<String, Document> next = new LinkedHashMap<>(open);
    next.put(Uris.key(uri), new Document(uri, version, text));
    open = next;
  }

  synchronized void change(String uri, int version, List<TextDocumentContentChangeEvent> changes) {
    Document document = open.get(Uris.key(uri));
    if (document != null) {
      Map<String, Document> next = new LinkedHashMap<>(open);
      next.put(Uris.key(uri), document.changed(version, changes));
      open = next;
    }
  }

  synchronized void close(String uri) {
    Map<String, Document> next = new LinkedHashMap<>(open);
    next.remove(Uris.key(uri));
    open = next;
  }

  /** All files as they stand now, whatever is typed meanwhile. */
  synchronized Files files() {
    return new Files(host, open);
  }
}
