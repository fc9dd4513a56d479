package org.rimefast.lang.rule;

import java.util.Optional;
import org.rimefast.lang.vocabulary.ValueType;

/**
 * What only eyes on site can answer.
 *
 * @param inspect the id of the inspect item, by which readings name it
 * @param ask the question, for people
 * @param answer the answer that is asked for: true for {@code yes}
 * @param limit what the value that is read must keep to; empty if no value is read
 */
public record Question(String inspect, String ask, boolean answer, Optional<Limit> limit) {

  /**
   * A limit of a value that is read on site.
   *
   * @param comparison at least, more than, at most or less than
   * @param value a literal or a named constant, with a unit
   */
  public record Limit(Comparison comparison, Value value) {
    /** Refuses what is no limit. */
    public Limit {
      Types.require(
          comparison != Comparison.EQUAL && comparison != Comparison.NOT_EQUAL,
          "a reading is compared by size");
      Types.require(
          value instanceof Value.Literal || value instanceof Value.Named, "a fixed limit");
    }

    /** What is read. */
    public ValueType.Number type() {
      return (ValueType.Number) value.type();
    }
  }

  /** The same question with another limit. */
  public Question withLimit(Limit other) {
    return new Question(inspect, ask, answer, Optional.of(other));
  }

  /** {@code yes} or {@code no}: the answer that is asked for. */
  public String answerWord() {
    return answer ? "yes" : "no";
  }
}
