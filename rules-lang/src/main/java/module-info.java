/** Rule text to checked, typed rules. Knows words, units and types; knows no steel. */
module org.rimefast.lang {
  requires transitive org.rimefast.units;
  requires org.antlr.antlr4.runtime;
  requires static org.jspecify;

  exports org.rimefast.lang;
  exports org.rimefast.lang.cases;
  exports org.rimefast.lang.rule;
  exports org.rimefast.lang.source;
  exports org.rimefast.lang.tooling;
  exports org.rimefast.lang.vocabulary;
}
