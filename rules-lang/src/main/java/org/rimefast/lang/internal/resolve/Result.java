package org.rimefast.lang.internal.resolve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.Diagnostic;

/**
 * A typed node, or what is wrong in its place.
 *
 * @param node the node; null exactly if there are problems
 * @param problems what is wrong, in the order of the text
 */
public record Result<T>(@Nullable T node, List<Diagnostic> problems) {
  /** A node, or one problem and more. */
  public Result {
    problems = List.copyOf(problems);
    if ((node == null) == problems.isEmpty()) {
      throw new IllegalStateException("a node or a problem: " + node + problems);
    }
  }

  /** A node. */
  public static <T> Result<T> ok(T node) {
    return new Result<>(node, List.of());
  }

  /** A problem. */
  public static <T> Result<T> bad(Diagnostic problem) {
    return new Result<>(null, List.of(problem));
  }

  /** Problems; one or more. */
  public static <T> Result<T> bad(List<Diagnostic> problems) {
    return new Result<>(null, problems);
  }

  /** True if there is a node. */
  public boolean isOk() {
    return node != null;
  }

  /** The node, where {@link #isOk()}. */
  public T get() {
    if (node == null) {
      throw new IllegalStateException("no node: " + problems);
    }
    return node;
  }
}
