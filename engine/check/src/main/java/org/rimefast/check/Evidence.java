package org.rimefast.check;

import java.util.List;
import java.util.Optional;

/**
 * Why a condition is true, false or unknown. Only what decided it is kept.
 *
 * @param statement one sentence: {@code clearance of box R-3 is 0.252 in, at least 2 in is asked}
 * @param truth what came out
 * @param measurement the number and its limit, for a comparison of numbers
 * @param facts what was seen, as name and value: {@code stands before} - {@code inward rib 12}
 * @param missing values that the plan does not give
 * @param parts evidence of the parts that decided it
 */
public record Evidence(
    String statement,
    Truth truth,
    Optional<Measurement> measurement,
    List<Fact> facts,
    List<MissingValue> missing,
    List<Evidence> parts) {

  /** Something seen. */
  public record Fact(String name, String value) {}

  /** Copies the lists. */
  public Evidence {
    facts = List.copyOf(facts);
    missing = List.copyOf(missing);
    parts = List.copyOf(parts);
  }
}
