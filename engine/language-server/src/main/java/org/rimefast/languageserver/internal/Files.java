package org.rimefast.languageserver.internal;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.source.SourceText;
import org.rimefast.languageserver.EditorHost;

/** The files at one time: those open in the editor, and behind them those that the host has. */
final class Files {
  /** Of a folder with more files of rules, the rest is not looked at. */
  private static final int MOST = 200;

  private final EditorHost host;
  private final Map<String, Document> open;

  Files(EditorHost host, Map<String, Document> open) {
    this.host = host;
    this.open = open;
  }

  Collection<Document> open() {
    return open.values();
  }

  Optional<Document> open(String uri) {
    return Optional.ofNullable(open.get(Uris.key(uri)));
  }

  /** A file, named by its URI as the client writes it. */
  Optional<SourceText> read(String uri) {
    Optional<Document> document = open(uri);
    return document.isPresent()
        ? document.map(Document::source)
        : host.read(uri).map(text -> new SourceText(uri, text));
  }

  Optional<SourceText> shipped(String name) {
    return host.shipped(name);
  }

  /** The files of rules, cases and waivers in a folder. */
  Collection<String> in(String folder) {
    Map<String, String> found = new LinkedHashMap<>();
    for (Document document : open()) {
      if (Uris.key(Uris.folder(document.uri())).equals(Uris.key(folder))) {
        found.put(Uris.key(document.uri()), document.uri());
      }
    }
    List<String> others = host.files(folder);
    for (String uri : others.subList(0, Math.min(MOST, others.size()))) {
      found.putIfAbsent(Uris.key(uri), uri);
    }
    return found.values();
  }

  /** The same files with other texts, as they would be. */
  Files with(Map<String, String> texts) {
    Map<String, Document> changed = new LinkedHashMap<>(open);
    texts.forEach((uri, text) -> changed.put(Uris.key(uri), new Document(uri, 0, text)));
    return new Files(host, changed);
  }
}
