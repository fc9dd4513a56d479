package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimefast.check.Evidence;
import org.rimefast.check.Explanation;
import org.rimefast.check.MissingValue;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;

/** Puts together why a condition came out as it did, keeping only what decided. */
final class Reasons {
  /** The evidence of a condition that is not there. */
  static final Evidence ALWAYS =
      new Evidence("always", Truth.TRUE, Optional.empty(), List.of(), List.of(), List.of());

  private Reasons() {}

  /** Evidence that stands for itself. */
  static Evidence plain(String statement, Truth truth, Outcome<?> outcome) {
    List<Evidence.Fact> facts = new ArrayList<>(outcome.facts());
    outcome.failure().ifPresent(why -> facts.add(new Evidence.Fact(Explanation.FAILURE, why)));
    return new Evidence(
        statement,
        truth,
        Optional.empty(),
        facts,
        truth == Truth.UNKNOWN ? outcome.missing() : List.of(),
        List.of());
  }

  /** Why there is no answer to {@code question}. */
  static Evidence unknown(String question, Outcome<?> outcome) {
    String why =
        outcome
            .failure()
            .or(() -> anyMissing(outcome.missing()))
            .or(() -> outcome.notes().stream().findFirst())
            .orElse("the plan does not say");
    return plain(question + " cannot be told: " + why, Truth.UNKNOWN, outcome);
  }

  /** No number: the plan does not say how many elements one stands for. */
  static <T> Outcome<T> howMany(PlanFacts facts, int handle) {
    return new Outcome<>(
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(facts.missing(facts.name(handle).pointer())),
        List.of());
  }

  /** {@code depth of box R-3 is missing}. */
  static String missingWords(List<MissingValue> missing) {
    return missing.stream().map(MissingValue::description).collect(Collectors.joining(", "))
        + (missing.size() == 1 ? " is missing" : " are missing");
  }

  private static Optional<String> anyMissing(List<MissingValue> missing) {
    return missing.isEmpty() ? Optional.empty() : Optional.of(missingWords(missing));
  }

  /** Why none of several unknown conditions can be told, in a few words. */
  static String why(List<Evidence> unknown) {
    return unknown.stream()
        .flatMap(evidence -> failure(evidence).stream())
        .findFirst()
        .or(() -> anyMissing(missing(unknown)))
        .orElse("it lies within the plan's tolerance");
  }

  /** The evidence of several parts of which those with the truth {@code result} decided. */
  static Evidence of(Truth result, List<Evidence> parts, boolean allNeeded) {
    boolean everyPart = allNeeded ? result == Truth.TRUE : result == Truth.FALSE;
    List<Evidence> deciding =
        parts.stream().filter(part -> everyPart || part.truth() == result).toList();
    if (deciding.size() == 1) {
      return deciding.get(0);
    }
    return new Evidence(
        deciding.stream().map(Evidence::statement).collect(Collectors.joining("; ")),
        result,
        Optional.empty(),
        List.of(),
        List.of(),
        deciding);
  }

  /** The same evidence, with another truth for the condition it now stands for. */
  static Evidence turned(Evidence evidence) {
    return new Evidence(
        evidence.statement(),
        evidence.truth().not(),
        evidence.measurement(),
        evidence.facts(),
        evidence.missing(),
        evidence.parts());
  }

  /** Every missing value in a tree of evidence, once. */
  static List<MissingValue> missing(List<Evidence> evidence) {
    List<MissingValue> all = new ArrayList<>();
    for (Evidence one : evidence) {
      one.missing().stream().filter(value -> !all.contains(value)).forEach(all::add);
      missing(one.parts()).stream().filter(value -> !all.contains(value)).forEach(all::add);
    }
    return all;
  }

  /** Why something in a tree of unknown evidence could not be worked out, if so. */
  static Optional<String> failure(Evidence evidence) {
    return evidence.facts().stream()
        .filter(fact -> fact.name().equals(Explanation.FAILURE))
        .map(Evidence.Fact::value)
        .findFirst()
        .or(
            () ->
                evidence.parts().stream()
                    .filter(part -> part.truth() == Truth.UNKNOWN)
                    .flatMap(part -> failure(part).stream())
                    .findFirst());
  }

  /** What is missing and what failed in evidence, as an outcome. */
  static Outcome<Void> outcome(Evidence evidence) {
    return evidence.truth() == Truth.UNKNOWN
        ? new Outcome<>(
            Optional.empty(), failure(evidence), List.of(), missing(List.of(evidence)), List.of())
        : Outcome.nothing();
  }
}
