/**
 * Benchmarks. Every number is a ratio of two measurements of one run; {@link
 * org.rimefast.bench.Ratios} prints the table that the contributors' guide shows.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.bench;
