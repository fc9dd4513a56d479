package org.rimefast.report.internal;

import org.rimefast.lang.rule.Standard;

/** What every report says beside its advice: people can be hurt by electricity, fire and foam. */
public final class Caution {
  private static final String GENERAL =
      "This report supports and does not replace local codes, the authority having jurisdiction,"
          + " product data sheets and licensed trades. Foam needs its thermal barrier. Work on live"
          + " parts is for the licensed. Values marked 'from memory' must be confirmed.";

  private Caution() {}

  /** The standard's own words, or general ones if it has none. */
  public static String of(Standard standard) {
    return standard.caution().isBlank() ? GENERAL : standard.caution();
  }
}
