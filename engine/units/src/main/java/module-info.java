/** Exact quantities: units with dimensions, exact numbers and exact conversion. */
module org.rimefast.units {
  requires static org.jspecify;

  exports org.rimefast.units;
}
