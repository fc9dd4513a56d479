package org.rimefast.lang.vocabulary;

import java.util.List;

/**
 * A kind of element: {@code box}, {@code steel part}.
 *
 * @param id stable id, unique in a vocabulary
 * @param singular how one is called; may be several words
 * @param plural how several are called
 * @param broader the kinds that every one of these also is, such as {@code metal part} for a stud
 */
public record Noun(String id, String singular, String plural, List<Noun> broader) {
  /** Copies the list. */
  public Noun {
    broader = List.copyOf(broader);
  }

  /** True if every one of these is also a {@code other}. */
  public boolean isA(Noun other) {
    return id.equals(other.id) || broader.stream().anyMatch(noun -> noun.isA(other));
  }

  @Override
  public String toString() {
    return singular;
  }
}
