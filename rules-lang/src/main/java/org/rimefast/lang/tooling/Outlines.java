package org.rimefast.lang.tooling;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Says what statements are called, from their pieces alone. */
final class Outlines {
  private Outlines() {}

  /** The entry of a statement; empty for text that belongs to none. */
  static Optional<OutlineEntry> entry(SourceText source, List<Piece> pieces) {
    Piece first = pieces.get(0);
    if (first.kind() != Piece.Kind.STATEMENT) {
      return Optional.empty();
    }
    Span whole = first.span().to(pieces.get(pieces.size() - 1).span());
    Optional<OutlineEntry> special = keyed(source, pieces, whole);
    if (special.isPresent()) {
      return special;
    }
    int end = 1;
    boolean let = source.textOf(first.span()).equals("let");
    // A constant's name may be several words; what else has a name has one word.
    while (end < pieces.size()
        && (let || end < 2)
        && (pieces.get(end).kind() == Piece.Kind.VALUE
            || pieces.get(end).kind() == Piece.Kind.STATEMENT)) {
      end++;
    }
    boolean named = end > 1;
    Span name = named ? pieces.get(1).span().to(pieces.get(end - 1).span()) : first.span();
    String title =
        end < pieces.size() && pieces.get(end).kind() == Piece.Kind.TEXT
            ? unquoted(source.textOf(pieces.get(end).span()))
            : "";
    return Optional.of(
        new OutlineEntry(
            source.textOf(first.span()),
            source.textOf(name).replaceAll("--[^\r\n]*", "").replaceAll("\\s+", " "),
            title,
            name,
            whole));
  }

  /** Statements whose name does not stand behind their first word, or stands in quotes. */
  private static Optional<OutlineEntry> keyed(SourceText source, List<Piece> pieces, Span whole) {
    String keyword = source.textOf(pieces.get(0).span());
    int at =
        switch (keyword) {
          case "case", "include" -> 1;
          case "in", "cases", "waivers" -> 2;
          default -> pieces.size();
        };
    if (at >= pieces.size()) {
      return Optional.empty();
    }
    Span name = pieces.get(at).span();
    String text = source.textOf(name);
    return Optional.of(
        new OutlineEntry(
            keyword.equals("in") ? "in rule" : keyword,
            pieces.get(at).kind() == Piece.Kind.TEXT ? unquoted(text) : text,
            "",
            name,
            whole));
  }

  private static String unquoted(String text) {
    boolean closed = text.length() > 1 && text.endsWith("\"");
    return text.substring(1, closed ? text.length() - 1 : text.length());
  }
}
