/** The command {@code rimefast}. */
module org.rimefast.cli {
  requires org.rimefast.languageserver;
  requires org.rimefast.report;
  requires info.picocli;
  requires static org.jspecify;

  exports org.rimefast.cli;
}
