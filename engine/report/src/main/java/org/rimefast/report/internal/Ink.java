package org.rimefast.report.internal;

import org.rimefast.lang.rule.Severity;

/** What colour tells apart; each is also told by a word. */
public enum Ink {
  NONE(""),
  HEADING("1"),
  HOLD("1;31"),
  FIX("1;33"),
  ADVISE("1;36"),
  UNDECIDED("1;35"),
  FAULT("1;31");

  private final String code;

  Ink(String code) {
    this.code = code;
  }

  /** The ink of a broken rule. */
  public static Ink of(Severity severity) {
    return switch (severity) {
      case HOLD -> HOLD;
      case FIX -> FIX;
      case ADVISE -> ADVISE;
    };
  }

  /** The text between this ink's escape codes (ECMA-48, select graphic rendition). */
  String on(String text) {
    return code.isEmpty() || text.isEmpty() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
  }
}
