/** The demo scenario (invented) and a program that embeds the checks. */
module org.rimefast.examples {
  requires org.rimefast.check;
  requires org.rimefast.rulesets;
  requires static org.jspecify;

  exports org.rimefast.examples;
}
