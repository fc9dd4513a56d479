/** A program that embeds the checks. */
@org.jspecify.annotations.NullMarked
package org.rimefast.examples;
