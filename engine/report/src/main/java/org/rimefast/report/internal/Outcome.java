package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
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
    add(parts, "broken", severity -> SummaryText.open(result, severity));
    add(parts, "could not be worked out", counting(result, Verdict.ERROR));
    add(parts, "undecided", counting(result, Verdict.UNDECIDED));
    boolean sound = parts.isEmpty();
    add(parts, "broken and waived", severity -> SummaryText.waived(result, severity));
    String waived = sound && !parts.isEmpty() ? " " + "B" + parts.get(0).substring(1) + "." : "";
    return new Outcome(
        sound ? sound(result) + waived : String.join("; ", parts) + "." + advice(result));
  }

  private static String sound(CheckResult result) {
    int met = result.count(Verdict.MET);
    if (met == 0 && result.waived() > 0) {
      return "nothing broken but what is waived, nothing undecided.";
    }
    if (met == 0) {
      return "no rule spoke of anything in this plan, so nothing was checked.";
    }
    return "nothing broken, nothing undecided; met " + times(met) + ".";
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }

  private static ToIntFunction<Severity> counting(CheckResult result, Verdict verdict) {
    return severity -> SummaryText.count(result, severity, verdict);
  }

  private static void add(List<String> parts, String name, ToIntFunction<Severity> counted) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = counted.applyAsInt(severity);
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
        SummaryText.open(result, Severity.HOLD)
            + SummaryText.count(result, Severity.HOLD, Verdict.ERROR);
    if (broken > 0) {
      return " Do not pass the hold point.";
    }
    return SummaryText.count(result, Severity.HOLD, Verdict.UNDECIDED) > 0
        ? " Do not pass the hold point before what is undecided is settled."
        : "";
  }
}
