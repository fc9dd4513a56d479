package org.rimefast.lang.vocabulary;

import java.util.List;

/**
 * Something that holds of an element or does not: {@code sit in _}, {@code mounted on _}, {@code
 * wet}.
 *
 * @param id stable id, unique in a vocabulary
 * @param form whether it is a verb of its own or follows {@code be}
 * @param pattern words and {@code _} for each slot; a verb in its base form: {@code sit in _}
 * @param third a verb's form after {@code it}, same slots: {@code sits in _}; the pattern itself
 *     after {@code be}
 * @param subject the kind of element it is said of
 * @param slots what may stand at each {@code _}, in order
 */
public record Relation(
    String id, Form form, String pattern, String third, Noun subject, List<Slot> slots) {

  /** How a relation is used in a sentence. */
  public enum Form {
    /** A verb of its own: {@code must sit in outer bay}, {@code it sits in outer bay}. */
    VERB,
    /** Follows {@code be}: {@code must be mounted on lining}, {@code it is mounted on lining}. */
    BE
  }

  /** Copies the list. */
  public Relation {
    slots = List.copyOf(slots);
  }

  @Override
  public String toString() {
    return form == Form.BE ? "be " + pattern : pattern;
  }
}
