package org.rimefast.lang.rule;

import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/**
 * A kind of element that a standard defines: {@code let wet room be a room where its humidity >= 50
 * %}.
 *
 * @param singular how one is called: {@code wet room}
 * @param plural how several are called: {@code wet rooms}
 * @param element stands for the element in the condition; its index is 0, whatever encloses the
 *     place where the term is used
 * @param condition what makes an element of the noun one of these
 * @param because why it is so
 * @param source where it comes from
 * @param span the text it was read from
 */
public record Term(
    String singular,
    String plural,
    Variable element,
    Condition condition,
    Optional<String> because,
    Optional<String> source,
    Span span) {
  /** Refuses another variable than the outermost. */
  public Term {
    Types.require(element.index() == 0, "a term stands by itself");
  }

  /** The kind of element that every one of these is. */
  public Noun noun() {
    return element.noun();
  }
}
