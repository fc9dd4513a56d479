package org.rimefast.languageserver.internal;

import java.util.Optional;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Analysis;

/**
 * An open file as part of what it belongs to.
 *
 * @param workspace the files around it
 * @param document the file
 * @param analysis of the text that it is part of
 * @param part which part
 * @param standard of cases and waivers, the analysis of their standard; else the same as {@code
 *     analysis}
 * @param notice why not all can be said of it; empty if all can
 */
record View(
    Workspace workspace,
    Document document,
    Analysis analysis,
    int part,
    Analysis standard,
    Optional<String> notice) {

  /** The offset of a position, in the text of the analysis. */
  int offset(Position position) {
    return analysis.source().spanOf(part).start() + document.lines().offset(position);
  }

  /** The range of a span that lies in the file. */
  Range range(Span span) {
    int start = analysis.source().spanOf(part).start();
    return document.lines().range(new Span(span.start() - start, span.end() - start));
  }

  /** True if a span lies in the file. */
  boolean holds(Span span) {
    return analysis.source().partAt(span.start()) == part;
  }
}
