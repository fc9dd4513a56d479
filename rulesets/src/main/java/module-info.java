/**
 * The shipped standards, as rule text under {@code META-INF/rimefast}. The library of standards in
 * {@code org.rimefast.check} finds them on the class or module path.
 */
module org.rimefast.rulesets {}
