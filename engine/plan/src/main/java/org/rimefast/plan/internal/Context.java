package org.rimefast.plan.internal;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.PlanLimits;
import org.rimefast.units.Unit;

/** What the parts of one reading share. */
final class Context {
  private static final int REMEMBERED = 10_000;

  final Faults faults;
  final PlanLimits limits;
  private final Map<String, Amount> lengths = new HashMap<>();
  private @Nullable Unit unit;
  private int elements;

  Context(Faults faults, PlanLimits limits) {
    this.faults = faults;
    this.limits = limits;
  }

  /** The unit of plain numbers; null if the plan does not state a usable one. */
  @Nullable Unit unit() {
    return unit;
  }

  void setUnit(Unit plain) {
    unit = plain;
  }

  /** A length seen before, by its spelling. Plans repeat few lengths many times. */
  @Nullable Amount remembered(String spelling) {
    return lengths.get(spelling);
  }

  void remember(String spelling, Amount length) {
    if (lengths.size() < REMEMBERED) {
      lengths.put(spelling, length);
    }
  }

  /** Counts elements; false if that makes more than the limit. */
  boolean count(long more) {
    if (elements + more > limits.elements()) {
      return false;
    }
    elements += (int) more;
    return true;
  }
}
