package org.rimefast.report;

import java.util.List;
import org.rimefast.plan.PlanFault;
import org.rimefast.report.internal.FaultText;
import org.rimefast.report.internal.Page;

/** The faults of a plan as text for people: place, what is wrong, what to write instead. */
public final class PlanFaultReport {
  private PlanFaultReport() {}

  /**
   * Every fault of one plan.
   *
   * @param name how messages name the plan: its file
   * @param faults in the order to be told
   */
  public static String write(String name, List<PlanFault> faults, TextOptions options) {
    return write(UnusableInput.plan(name, faults), options);
  }

  /** Every fault of a plan, or of a standard that could not be read. */
  public static String write(UnusableInput input, TextOptions options) {
    Page page = new Page(options);
    FaultText.write(input, page);
    return page.toString();
  }
}
