package org.rimefast.lang;

import org.rimefast.lang.source.SourceText;

/** Whole texts around single sentences. */
final class SourceTexts {
  static final String HEADER = "standard shop-standard edition 2026-11\n\n";

  private SourceTexts() {}

  static SourceText withSentence(String sentence) {
    return withSentence("", sentence);
  }

  static SourceText withSentence(String definitions, String sentence) {
    return new SourceText("test.rime", HEADER + definitions + rule("r-1", sentence));
  }

  static String rule(String id, String sentence) {
    return "rule "
        + id
        + " \"Title\"\n  "
        + sentence
        + "\n  severity hold\n  stage pre-foam\n"
        + "  because \"reason\"\n  source \"common practice, no source\"\n\n";
  }
}
