/** The plan of a module: format, JSON Schema, reader, builder, writer and geometry. */
module org.rimefast.plan {
  requires transitive org.rimefast.units;
  requires com.fasterxml.jackson.core;
  requires static org.jspecify;

  exports org.rimefast.plan;
  exports org.rimefast.plan.geometry;
}
