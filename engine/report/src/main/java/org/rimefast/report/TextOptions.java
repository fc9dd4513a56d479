package org.rimefast.report;

/**
 * How text for people is laid out.
 *
 * @param width characters in a line, from 80 to 160
 * @param colour whether colour marks severities and headings; every word stands there without it
 */
public record TextOptions(int width, boolean colour) {
  /** The narrowest line. */
  public static final int LEAST_WIDTH = 80;

  /** The widest line. */
  public static final int GREATEST_WIDTH = 160;

  /** 100 characters, no colour. */
  public static final TextOptions PLAIN = new TextOptions(100, false);

  /** Refuses a width outside the limits. */
  public TextOptions {
    if (width < LEAST_WIDTH || width > GREATEST_WIDTH) {
      throw new IllegalArgumentException(
          "a width from " + LEAST_WIDTH + " to " + GREATEST_WIDTH + ", not " + width);
    }
  }
}
