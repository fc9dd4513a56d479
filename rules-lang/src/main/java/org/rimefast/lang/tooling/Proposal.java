package org.rimefast.lang.tooling;

/**
 * Something that can be written at a place.
 *
 * @param text what to write
 * @param kind what it is
 */
public record Proposal(String text, Kind kind) {
  /** What is proposed. */
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
