/** What people and other programs read of a check. */
module org.rimefast.report {
  requires transitive org.rimefast.check;
  requires com.fasterxml.jackson.core;
  requires gg.jte.runtime;
  requires java.xml;
  requires static org.jspecify;

  exports org.rimefast.report;
}
