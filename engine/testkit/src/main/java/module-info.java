/** The cases of a standard as tests of JUnit, and random modules. */
module org.rimefast.testkit {
  requires transitive org.junit.jupiter.api;
  requires transitive org.rimefast.check;
  requires transitive org.rimefast.plan;
  requires com.fasterxml.jackson.core;
  requires org.rimefast.report;
  requires static org.jspecify;

  exports org.rimefast.testkit;
}
