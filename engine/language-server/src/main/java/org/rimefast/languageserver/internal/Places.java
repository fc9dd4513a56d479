package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Where spans of a text stand in its files. */
final class Places {
  private final SourceText source;
  private final List<Optional<LineIndex>> lines = new ArrayList<>();

  Places(SourceText source) {
    this.source = source;
    source.parts().forEach(part -> lines.add(Optional.empty()));
  }

  /** The file and the range; empty in a shipped standard, which no editor can show. */
  Optional<Location> location(Span span) {
    int part = source.partAt(span.start());
    String name = source.parts().get(part).name();
    return Uris.isUri(name) ? Optional.of(new Location(name, range(span))) : Optional.empty();
  }

  /** The range in the file in which the span begins. */
  Range range(Span span) {
    int part = source.partAt(span.start());
    LineIndex index =
        lines.get(part).orElseGet(() -> new LineIndex(source.parts().get(part).text()));
    lines.set(part, Optional.of(index));
    return index.range(local(span));
  }

  /** The same span counted from the beginning of its file. */
  Span local(Span span) {
    Span file = source.spanOf(source.partAt(span.start()));
    return new Span(span.start() - file.start(), Math.min(span.end(), file.end()) - file.start());
  }
}
