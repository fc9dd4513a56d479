package org.rimefast.lang;

/**
 * How much the compiler takes on before it stops with a named error.
 *
 * @param characters length of a text
 * @param nesting depth of parentheses
 * @param errors how many errors are reported before the rest are counted only
 */
public record Limits(int characters, int nesting, int errors) {
  /** 4 million characters, 100 levels, 100 errors. */
  public static final Limits DEFAULT = new Limits(4_000_000, 100, 100);
}
