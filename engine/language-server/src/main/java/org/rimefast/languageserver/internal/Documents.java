package org.rimefast.languageserver.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.rimefast.lang.tooling.RuleAnalyser;

/** The open files. Changes come one after another; questions may come at any time. */
final class Documents {
  private final RuleAnalyser analyser;
  private final ConcurrentMap<String, Document> open = new ConcurrentHashMap<>();

  Documents(RuleAnalyser analyser) {
    this.analyser = analyser;
  }

  void open(String uri, int version, String text) {
    open.put(uri, new Document(analyser, uri, version, text));
  }

  void change(String uri, int version, List<TextDocumentContentChangeEvent> changes) {
    open.computeIfPresent(uri, (key, document) -> document.changed(version, changes));
  }

  void close(String uri) {
    open.remove(uri);
  }

  Optional<Document> find(String uri) {
    return Optional.ofNullable(open.get(uri));
  }

  Collection<Document> all() {
    return List.copyOf(open.values());
  }
}
