/** The vocabulary of steel modules, evaluation, verdicts and findings. */
module org.rimefast.check {
  requires transitive org.rimefast.lang;
  requires transitive org.rimefast.plan;
  requires org.slf4j;
  requires static org.jspecify;

  exports org.rimefast.check;
  exports org.rimefast.check.cases;
}
