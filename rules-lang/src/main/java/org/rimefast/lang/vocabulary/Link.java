package org.rimefast.lang.vocabulary;

/**
 * The one element that belongs to another: {@code its room}, {@code face of the box}.
 *
 * @param id stable id, unique in a vocabulary
 * @param phrase how it is called: {@code room}
 * @param owner the kind of element it belongs to
 * @param target the kind of element it is
 */
public record Link(String id, String phrase, Noun owner, Noun target) {
  @Override
  public String toString() {
    return phrase;
  }
}
