package org.rimefast.lang.internal.paraphrase;

/**
 * What in a typed node no sentence can say.
 *
 * @param kind what kind of thing it is
 * @param why one sentence
 */
public record Obstacle(Kind kind, String why) {
  /** What stands in the way. */
  public enum Kind {
    /** A total or the like of something other than a property of the counted elements. */
    MADE_OF_NO_PROPERTY,
    /** A word of a list where nothing before it says which list. */
    WORD_WITHOUT_LIST,
    /** An element that nothing around the place names. */
    UNNAMED_ELEMENT,
    /** More elements of one noun around the place than there are words to count them. */
    TOO_MANY_OF_ONE_NOUN,
    /** A text that cannot stand in quotes. */
    UNQUOTABLE_TEXT
  }
}
