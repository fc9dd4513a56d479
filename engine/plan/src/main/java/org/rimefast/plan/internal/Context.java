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

  /**
   * Counts the elements that an item stands for; false, with a fault, if the limit forbids them.
   */
  boolean count(int more, Fields item) {
    if ((long) elements + more > limits.elements()) {
      faults.add(
          "too-large",
          item.node(),
          "With " + item.owner() + " the plan holds more than " + limits.elements() + " elements.",
          "Split the plan, or raise the reader's limit.");
      return false;
    }
    elements += more;
    return true;
  }
}
