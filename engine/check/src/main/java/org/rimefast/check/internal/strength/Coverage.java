package org.rimefast.check.internal.strength;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.rimefast.check.Evidence;
import org.rimefast.check.Measurement;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;
import org.rimefast.units.Quantity;

/** Collects how the conditions of one rule came out, and how near to its limits. */
public final class Coverage implements BiConsumer<Condition, Evidence> {
  /** How one condition came out. */
  public static final class Seen {
    private final Condition condition;
    private final Set<Truth> truths = EnumSet.noneOf(Truth.class);
    private boolean inside;
    private boolean outside;

    private Seen(Condition condition) {
      this.condition = condition;
    }

    /** The condition. */
    public Condition condition() {
      return condition;
    }

    /** True if it came out so for something. */
    public boolean came(Truth truth) {
      return truths.contains(truth);
    }

    /** The limit it has, if it is a comparison with one. */
    public Optional<Quantity> limit() {
      if (condition instanceof Condition.Answered answered) {
        return answered.question().limit().flatMap(limit -> limit(limit.value()));
      }
      return condition instanceof Condition.Compare compare
          ? limit(compare.right())
          : Optional.empty();
    }

    /** True if a number within one step of the limit, or on it, met the condition. */
    public boolean inside() {
      return inside;
    }

    /** True if a number within one step of the limit, or on it, did not meet the condition. */
    public boolean outside() {
      return outside;
    }

    private static Optional<Quantity> limit(Value value) {
      if (value instanceof Value.Literal literal) {
        return Optional.of(literal.quantity());
      }
      return value instanceof Value.Named named
          ? Optional.of(named.constant().value().quantity())
          : Optional.empty();
    }

    private void add(Evidence evidence) {
      truths.add(evidence.truth());
      Optional<Quantity> limit = limit();
      Optional<Measurement> measurement = measurement(evidence);
      if (limit.isPresent() && measurement.isPresent()) {
        boolean near = isNear(measurement.get(), Steps.si(limit.get()));
        inside |= near && evidence.truth() == Truth.TRUE;
        outside |= near && evidence.truth() == Truth.FALSE;
      }
    }

    /** A right answer and the value read with it stand side by side. */
    private static Optional<Measurement> measurement(Evidence evidence) {
      return evidence
          .measurement()
          .or(
              () ->
                  evidence.parts().stream()
                      .flatMap(part -> part.measurement().stream())
                      .findFirst());
    }

    private static boolean isNear(Measurement measurement, double step) {
      double low = measurement.least();
      double high = measurement.most();
      double limit = measurement.limit();
      double gap = Math.max(0, Math.max(low - limit, limit - high));
      return gap <= step + Intervals.guard(gap, step);
    }
  }

  private final List<Seen> leaves = new ArrayList<>();
  private final Map<Condition, Seen> byCondition = new IdentityHashMap<>();

  /** Nothing seen yet of a rule. */
  public Coverage(Rule rule) {
    for (Condition leaf : Leaves.of(rule)) {
      Seen seen = new Seen(leaf);
      leaves.add(seen);
      byCondition.put(leaf, seen);
    }
  }

  @Override
  public void accept(Condition condition, Evidence evidence) {
    Seen seen = byCondition.get(condition);
    if (seen != null) {
      seen.add(evidence);
    }
  }

  /** What was seen of each condition, in the order of the rule's text. */
  public List<Seen> leaves() {
    return List.copyOf(leaves);
  }
}
