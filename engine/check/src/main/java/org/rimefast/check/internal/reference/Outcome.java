package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.rimefast.check.Evidence;
import org.rimefast.check.MissingValue;

/**
 * What came of working out a value, or why there is none.
 *
 * @param value the value, if there is one
 * @param failure why it could not be worked out, if it could not
 * @param facts what was seen
 * @param missing what the plan does not give
 * @param notes why there is no value though nothing is missing in the plan
 */
record Outcome<T>(
    Optional<T> value,
    Optional<String> failure,
    List<Evidence.Fact> facts,
    List<MissingValue> missing,
    List<String> notes) {

  /** A number known to lie between two ends. */
  record Interval(double least, double most) {}

  static <T> Outcome<T> of(T value) {
    return new Outcome<>(Optional.of(value), Optional.empty(), List.of(), List.of(), List.of());
  }

  static <T> Outcome<T> nothing() {
    return new Outcome<>(Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
  }

  static <T> Outcome<T> failed(String why) {
    return new Outcome<>(Optional.empty(), Optional.of(why), List.of(), List.of(), List.of());
  }

  static <T> Outcome<T> none(String note) {
    return new Outcome<>(Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(note));
  }

  /** No value, for the reasons that {@code other} has. */
  static <T> Outcome<T> without(Outcome<?> other) {
    return new Outcome<>(Optional.empty(), other.failure, other.facts, other.missing, other.notes);
  }

  /** With another value in the place of the value, if there is one. */
  <S> Outcome<S> map(Function<T, S> function) {
    return new Outcome<>(value.map(function), failure, facts, missing, notes);
  }

  /** The same value and failure with the facts and reasons of {@code other} added. */
  Outcome<T> and(Outcome<?> other) {
    return new Outcome<>(
        value,
        failure.or(() -> other.failure),
        joined(facts, other.facts),
        joined(missing, other.missing),
        joined(notes, other.notes));
  }

  /** Only facts. */
  static Outcome<Void> seen(List<Evidence.Fact> facts) {
    return new Outcome<>(Optional.empty(), Optional.empty(), facts, List.of(), List.of());
  }

  Outcome<Void> onlyFacts() {
    return seen(facts);
  }

  Outcome<T> withoutFacts() {
    return new Outcome<>(value, failure, List.of(), missing, notes);
  }

  static <E> List<E> joined(List<E> first, List<E> second) {
    List<E> all = new ArrayList<>(first);
    second.stream().filter(item -> !all.contains(item)).forEach(all::add);
    return all;
  }
}
