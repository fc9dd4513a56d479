package org.rimefast.plan;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a plan.
 *
 * @param plan the plan; empty if there is any fault
 * @param faults every fault found, in the order of the file
 */
public record PlanReading(Optional<Plan> plan, List<PlanFault> faults) {
  /** Copies the list. */
  public PlanReading {
    faults = List.copyOf(faults);
  }
}
