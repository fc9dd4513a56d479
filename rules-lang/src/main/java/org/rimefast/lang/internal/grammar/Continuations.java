package org.rimefast.lang.internal.grammar;

/** What comes after a word of the language, where a sentence stops short behind it. */
final class Continuations {
  static final String CHOICE_EXAMPLE = "clearance >= (if mount is flush then 2 in otherwise 1 in)";

  private Continuations() {}

  static String what(int before) {
    return switch (before) {
      case RimeLexer.MUST, RimeLexer.AND, RimeLexer.OR, RimeLexer.NOT, RimeLexer.COMMA ->
          "the sentence must go on";
      case RimeLexer.WHERE, RimeLexer.IF, RimeLexer.UNLESS -> "comes a condition";
      case RimeLexer.THEN, RimeLexer.OTHERWISE -> "comes a value";
      case RimeLexer.WITH, RimeLexer.HAVE, RimeLexer.HAS -> "comes a comparison";
      case RimeLexer.FOR -> "comes \"each\" and a noun";
      default -> "comes a word or a number";
    };
  }

  static String example(int before) {
    return switch (before) {
      case RimeLexer.MUST, RimeLexer.COMMA -> "Write for example: must sit in outer bay";
      case RimeLexer.WHERE, RimeLexer.IF, RimeLexer.UNLESS ->
          "Write for example: where mount is flush";
      case RimeLexer.THEN, RimeLexer.OTHERWISE -> "Write for example: " + CHOICE_EXAMPLE;
      case RimeLexer.WITH -> "Write for example: with clearance >= 50 mm";
      case RimeLexer.HAVE -> "Write for example: must have clearance >= 50 mm";
      case RimeLexer.HAS -> "Write for example: it has clearance >= 50 mm";
      case RimeLexer.FOR -> "Write for example: for each box, its clearance must be at least 2 in";
      case RimeLexer.NOT -> "Write for example: must not touch a stud";
      case RimeLexer.AND, RimeLexer.OR ->
          "Say what else holds, in full: must sit in outer bay and have clearance >= 50 mm";
      default -> "Write for example: clearance >= 50 mm";
    };
  }
}
