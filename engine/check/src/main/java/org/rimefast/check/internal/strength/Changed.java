package org.rimefast.check.internal.strength;

import java.util.function.Function;
import org.rimefast.lang.source.Span;

/**
 * A node with one small change in it.
 *
 * @param node the node after the change
 * @param told what a case would have to tell apart: {@code "at least" from "more than"}
 * @param place the text that was changed
 */
public record Changed<T>(T node, String told, Span place) {
  /** The same change, seen from a node that encloses this one. */
  <S> Changed<S> in(Function<T, S> enclosing) {
    return new Changed<>(enclosing.apply(node), told, place);
  }
}
