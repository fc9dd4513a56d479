package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/**
 * Every reading of something that makes sense, or what is wrong if none does.
 *
 * @param readings those that make sense
 * @param problems what is wrong; empty exactly if a reading makes sense
 */
record Candidates<T>(List<Reading<T>> readings, List<Diagnostic> problems) {
  Candidates {
    readings = List.copyOf(readings);
    problems = List.copyOf(problems);
    if (readings.isEmpty() == problems.isEmpty()) {
      throw new IllegalStateException("readings or problems: " + readings + problems);
    }
  }

  static <T> Candidates<T> bad(Diagnostic problem) {
    return new Candidates<>(List.of(), List.of(problem));
  }

  static <T> Candidates<T> bad(List<Diagnostic> problems) {
    return new Candidates<>(List.of(), problems);
  }

  /** Those readings that make sense; otherwise the problems of the first, or {@code otherwise}. */
  static <T> Candidates<T> of(List<Reading<T>> all, Supplier<Diagnostic> otherwise) {
    List<Reading<T>> sensible = all.stream().filter(Reading::isOk).toList();
    if (!sensible.isEmpty()) {
      return new Candidates<>(sensible, List.of());
    }
    return all.isEmpty() ? bad(otherwise.get()) : bad(all.get(0).result().problems());
  }

  boolean isOk() {
    return problems.isEmpty();
  }

  /**
   * The only reading, where readings that mean the same count as one.
   *
   * @param exact tells readings apart
   * @param words says a reading
   */
  Result<Reading<T>> only(Function<T, String> exact, Function<T, String> words, Span span) {
    if (!isOk()) {
      return Result.bad(problems);
    }
    if (readings.size() == 1) {
      return Result.ok(readings.get(0));
    }
    Map<String, Reading<T>> distinct = new LinkedHashMap<>();
    for (Reading<T> reading : readings) {
      distinct.putIfAbsent(exact.apply(reading.get()), reading);
    }
    if (distinct.size() == 1) {
      return Result.ok(readings.get(0));
    }
    Set<String> said = new TreeSet<>();
    distinct.values().forEach(reading -> said.add(words.apply(reading.get())));
    if (said.size() == 1) {
      said.clear();
      said.addAll(distinct.keySet());
    }
    List<String> shown = new ArrayList<>(said);
    String more = shown.size() > 2 ? " (and " + (shown.size() - 2) + " more)" : "";
    return Result.bad(
        Problems.error(
            DiagnosticCode.AMBIGUOUS_PHRASE,
            span,
            "This can be read in two ways" + more + ".",
            "Either: "
                + shown.get(0)
                + "; or: "
                + shown.get(1)
                + ". Say whose it is with \"of\", or put the value in parentheses."));
  }
}
