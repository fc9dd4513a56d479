package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Severity;
import org.rimefast.report.UnusableInput;

/** One line for each plan of a run. */
public final class OverviewText {
  private OverviewText() {}

  /** Writes the table, then what could not be used. */
  public static void write(List<CheckResult> results, List<UnusableInput> unusable, Page page) {
    page.section("ALL PLANS");
    if (!results.isEmpty()) {
      List<List<String>> rows = new ArrayList<>();
      boolean waived = results.stream().anyMatch(result -> result.waived() > 0);
      List<String> head =
          new ArrayList<>(List.of("broken:", "hold", "fix", "advise", "error", "undecided", "met"));
      if (waived) {
        head.add("waived");
      }
      rows.add(head);
      for (CheckResult result : results) {
        List<String> row = new ArrayList<>(List.of(result.plan().source().name()));
        for (Severity severity : Severity.values()) {
          row.add(Integer.toString(SummaryText.open(result, severity)));
        }
        row.add(Integer.toString(result.count(Verdict.ERROR)));
        row.add(Integer.toString(result.count(Verdict.UNDECIDED)));
        row.add(Integer.toString(result.count(Verdict.MET)));
        if (waived) {
          row.add(Integer.toString(result.waived()));
        }
        rows.add(row);
      }
      Table.write(page, rows);
    }
    for (UnusableInput input : unusable) {
      page.hang(
          2,
          "not checked:",
          0,
          Ink.FAULT,
          input.name()
              + ", "
              + (input.faults().size() == 1 ? "1 fault" : input.faults().size() + " faults"));
    }
  }
}
