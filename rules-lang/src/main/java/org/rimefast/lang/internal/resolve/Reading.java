package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.source.Diagnostic;

/**
 * One way to read the items of a phrase from some place on.
 *
 * @param end index after the last item read
 * @param result what it means, or why it cannot
 * @param openings quantified nouns met on the way, in order
 * @param scope the scope after it
 */
public record Reading<T>(int end, Result<T> result, List<Opening> openings, Scope scope) {
  /** Copies the list. */
  public Reading {
    openings = List.copyOf(openings);
  }

  static <T> Reading<T> ok(int end, T node, Scope scope) {
    return new Reading<>(end, Result.ok(node), List.of(), scope);
  }

  static <T> Reading<T> bad(int end, Diagnostic problem, Scope scope) {
    return new Reading<>(end, Result.bad(problem), List.of(), scope);
  }

  /** True if it means something. */
  public boolean isOk() {
    return result.isOk();
  }

  /** The node, where {@link #isOk()}. */
  public T get() {
    return result.get();
  }

  <S> Reading<S> map(Function<T, Result<S>> function) {
    @Nullable T node = result.node();
    Result<S> mapped = node == null ? Result.bad(result.problems()) : function.apply(node);
    return new Reading<>(end, mapped, openings, scope);
  }

  Reading<T> endingAt(int newEnd) {
    return new Reading<>(newEnd, result, openings, scope);
  }

  Reading<T> after(List<Opening> before) {
    List<Opening> all = new ArrayList<>(before);
    all.addAll(openings);
    return new Reading<>(end, result, all, scope);
  }
}
