/** The cases of a standard as tests of JUnit. */
module org.rimefast.testkit {
  requires transitive org.junit.jupiter.api;
  requires transitive org.rimefast.check;
  requires org.rimefast.report;
  requires static org.jspecify;

  exports org.rimefast.testkit;
}
