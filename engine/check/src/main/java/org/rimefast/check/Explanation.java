package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;

/** Receives what a word of the dictionary has to say about how it came to its answer. */
public final class Explanation {
  private final List<Evidence.Fact> facts = new ArrayList<>();
  private final List<MissingValue> missing = new ArrayList<>();

  /** Something that was seen: {@code fact("faces", "inward rib 12")}. */
  public void fact(String name, String value) {
    facts.add(new Evidence.Fact(name, value));
  }

  /** A value that the plan does not give. */
  public void missing(MissingValue value) {
    if (!missing.contains(value)) {
      missing.add(value);
    }
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
