package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;

/** Receives what a word of the dictionary has to say about how it came to its answer. */
public final class Explanation {
  /** The name under which evidence tells why something could not be worked out. */
  public static final String FAILURE = "failure";

  private final List<Evidence.Fact> facts = new ArrayList<>();
  private final List<MissingValue> missing = new ArrayList<>();
  private final List<String> reasons = new ArrayList<>();

  /** Nothing said yet. */
  public Explanation() {}

  /** Something that was seen: {@code fact("faces", "inward rib 12")}. */
  public void fact(String name, String value) {
    if (name.equals(FAILURE)) {
      throw new IllegalArgumentException(
          "a fact cannot be named \"" + FAILURE + "\": that tells why something failed");
    }
    facts.add(new Evidence.Fact(name, value));
  }

  /** A value that the plan does not give. */
  public void missing(MissingValue value) {
    if (!missing.contains(value)) {
      missing.add(value);
    }
  }

  /**
   * Why there is no answer though the plan lacks nothing: {@code stud S-9 is the last on its face}.
   */
  public void reason(String why) {
    reasons.add(why);
  }

  /** Every reason so far. */
  public List<String> reasons() {
    return List.copyOf(reasons);
  }

  /** Everything seen so far. */
  public List<Evidence.Fact> facts() {
    return List.copyOf(facts);
  }

  /** Everything missing so far. */
  public List<MissingValue> missing() {
    return List.copyOf(missing);
  }
}
