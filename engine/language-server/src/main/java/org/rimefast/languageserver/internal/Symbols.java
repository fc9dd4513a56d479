package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.SymbolKind;
import org.rimefast.lang.tooling.OutlineEntry;

/** The statements of a file, as the protocol has them. */
final class Symbols {
  private static final Map<String, SymbolKind> KINDS =
      Map.of(
          "standard", SymbolKind.Module,
          "let", SymbolKind.Constant,
          "rule", SymbolKind.Method,
          "inspect", SymbolKind.Method,
          "include", SymbolKind.File,
          "case", SymbolKind.Event);

  private Symbols() {}

  static List<DocumentSymbol> of(View view) {
    List<DocumentSymbol> symbols = new ArrayList<>();
    for (OutlineEntry entry : view.analysis().outline(view.part())) {
      boolean term = view.analysis().terms().stream().anyMatch(t -> t.span().equals(entry.span()));
      symbols.add(
          new DocumentSymbol(
              entry.name().isBlank() ? entry.keyword() : entry.name(),
              term ? SymbolKind.Class : KINDS.getOrDefault(entry.keyword(), SymbolKind.Object),
              view.range(entry.span()),
              view.range(entry.nameSpan()),
              entry.title()));
    }
    return symbols;
  }
}
