package org.rimefast.lang;

/**
 * How much the compiler takes on before it stops with a named error.
 *
 * @param characters length of a text, with all that it includes and builds on
 * @param nesting depth of parentheses
 * @param errors how many errors are reported before the rest are counted only
 * @param files how many files a standard is made of, with those that it builds on
 * @param layers how many standards build on each other
 */
public record Limits(int characters, int nesting, int errors, int files, int layers) {
  /** 4 million characters, 100 levels, 100 errors, 100 files, 8 standards. */
  public static final Limits DEFAULT = new Limits(4_000_000, 100, 100);

  /** With the default limits of files and layers. */
  public Limits(int characters, int nesting, int errors) {
    this(characters, nesting, errors, 100, 8);
  }
}
