/** Rule text in any editor that speaks the Language Server Protocol. */
module org.rimefast.languageserver {
  requires transitive org.rimefast.lang;
  requires com.google.gson;
  requires org.eclipse.lsp4j;
  requires org.eclipse.lsp4j.jsonrpc;
  requires static org.jspecify;

  exports org.rimefast.languageserver;

  // Requests are handed over by reflection.
  opens org.rimefast.languageserver.internal to
      org.eclipse.lsp4j.jsonrpc;
}
