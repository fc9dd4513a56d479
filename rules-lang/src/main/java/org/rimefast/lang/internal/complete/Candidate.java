package org.rimefast.lang.internal.complete;

/** Something that can be written at a place. */
public record Candidate(String text, Kind kind) {
  /** What it is to the language. */
  public enum Kind {
    /** A word or phrase of the vocabulary, or the rest of one that has begun. */
    WORD,
    /** A constant or term of the standard. */
    NAME,
    /** The id of a rule or inspect item. */
    RULE,
    /** A word of the language within a sentence. */
    KEYWORD,
    /** A sign of comparison or arithmetic. */
    SIGN,
    /** A unit behind a number. */
    UNIT,
    /** The word that begins a statement or a part. */
    PART,
    /** A severity, a stage or a text behind such a word. */
    PART_VALUE
  }
}
