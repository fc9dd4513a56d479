package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Severity;

/**
 * What a result comes to.
 *
 * @param sentence for people; never calls a plan sound while something of it is undecided
 */
record Outcome(String sentence) {

  static Outcome of(CheckResult result) {
    List<String> parts = new ArrayList<>();
    add(parts, "broken", result, Verdict.BROKEN);
    add(parts, "could not be worked out", result, Verdict.ERROR);
    add(parts, "undecided", result, Verdict.UNDECIDED);
    return new Outcome(
        parts.isEmpty() ? sound(result) : String.join("; ", parts) + "." + advice(result));
  }

  private static String sound(CheckResult result) {
    int met = result.count(Verdict.MET);
    if (met == 0) {
      return "no rule spoke of anything in this plan, so nothing was checked.";
    }
    return "nothing broken, nothing undecided; met " + times(met) + ".";
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }

  private static void add(List<String> parts, String name, CheckResult result, Verdict verdict) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = SummaryText.count(result, severity, verdict);
      if (count > 0) {
        counts.add(count + " " + severity.word());
      }
    }
    if (!counts.isEmpty()) {
      parts.add(name + ": " + String.join(", ", counts));
    }
  }

  private static String advice(CheckResult result) {
    int broken =
        SummaryText.count(result, Severity.HOLD, Verdict.BROKEN)
            + SummaryText.count(result, Severity.HOLD, Verdict.ERROR);
    if (broken > 0) {
      return " Do not pass the hold point.";
    }
    return SummaryText.count(result, Severity.HOLD, Verdict.UNDECIDED) > 0
        ? " Do not pass the hold point before what is undecided is settled."
        : "";
  }
}
