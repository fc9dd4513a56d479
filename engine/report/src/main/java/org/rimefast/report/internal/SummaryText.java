package org.rimefast.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.check.CheckResult;
import org.rimefast.check.RuleResult;
import org.rimefast.check.Verdict;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Withdrawal;

/** Counts, what was not asked, where it all came from, and the standard's caution. */
final class SummaryText {
  private static final int LABEL = 10;
  private static final int HASH_DIGITS = 12;

  private final Page page;
  private final CheckResult result;

  SummaryText(Page page, CheckResult result) {
    this.page = page;
    this.result = result;
  }

  void write() {
    page.section("SUMMARY");
    counts();
    page.blank();
    byRule();
    outcome(page, result);
    idle();
    notDue();
    withdrawn();
    new SiteText(page, result).write();
    page.blank();
    provenance();
    page.blank();
    page.hang(2, "CAUTION:", 0, Ink.HEADING, Caution.of(result.standard()));
  }

  /** What the counts come to, in one sentence. */
  static void outcome(Page page, CheckResult result) {
    Outcome outcome = Outcome.of(result);
    page.hang(2, "outcome", LABEL, Ink.HEADING, outcome.sentence());
  }

  static String capitals(Severity severity) {
    return severity.word().toUpperCase(Locale.ROOT);
  }

  private void counts() {
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    for (Verdict verdict : Verdict.values()) {
      head.add(verdict.words());
    }
    if (hasWaivers()) {
      head.add("waived");
    }
    rows.add(head);
    for (Severity severity : Severity.values()) {
      List<String> row = new ArrayList<>(List.of(severity.word()));
      for (Verdict verdict : Verdict.values()) {
        boolean broken = verdict == Verdict.BROKEN;
        int count = broken ? open(result, severity) : count(result, severity, verdict);
        row.add(Integer.toString(count));
      }
      if (hasWaivers()) {
        row.add(Integer.toString(waived(result, severity)));
      }
      rows.add(row);
    }
    List<String> total = new ArrayList<>(List.of("all"));
    for (Verdict verdict : Verdict.values()) {
      int waived = verdict == Verdict.BROKEN ? result.waived() : 0;
      total.add(Integer.toString(result.count(verdict) - waived));
    }
    if (hasWaivers()) {
      total.add(Integer.toString(result.waived()));
    }
    rows.add(total);
    Table.write(page, rows);
  }

  /** Which rules the findings come from, gravest first. */
  private void byRule() {
    List<List<String>> rows = new ArrayList<>();
    List<String> head =
        new ArrayList<>(List.of("rule", "severity", "broken", "undecided", "error"));
    if (hasWaivers()) {
      head.add("waived");
    }
    rows.add(head);
    for (Severity severity : Severity.values()) {
      for (RuleResult rule : result.rules()) {
        if (rule.rule().severity() == severity && !rule.findings().isEmpty()) {
          List<String> row =
              new ArrayList<>(
                  List.of(
                      rule.rule().id(),
                      severity.word(),
                      Integer.toString(rule.count(Verdict.BROKEN) - rule.waived()),
                      Integer.toString(rule.count(Verdict.UNDECIDED)),
                      Integer.toString(rule.count(Verdict.ERROR))));
          if (hasWaivers()) {
            row.add(Integer.toString(rule.waived()));
          }
          rows.add(row);
        }
      }
    }
    if (rows.size() > 1) {
      Table.write(page, rows);
      page.blank();
    }
  }

  static int count(CheckResult result, Severity severity, Verdict verdict) {
    int count = 0;
    for (RuleResult rule : result.rules()) {
      if (rule.rule().severity() == severity) {
        count += rule.count(verdict);
      }
    }
    return count;
  }

  /** How many are broken and not waived. */
  static int open(CheckResult result, Severity severity) {
    return count(result, severity, Verdict.BROKEN) - waived(result, severity);
  }

  /** How many are broken and waived. */
  static int waived(CheckResult result, Severity severity) {
    int count = 0;
    for (RuleResult rule : result.rules()) {
      if (rule.rule().severity() == severity) {
        count += rule.waived();
      }
    }
    return count;
  }

  private boolean hasWaivers() {
    return !result.waivers().isEmpty();
  }

  private void idle() {
    List<RuleResult> idle =
        result.rules().stream().filter(rule -> rule.appliedToNothing().isPresent()).toList();
    if (idle.isEmpty()) {
      return;
    }
    page.blank();
    page.paragraph(2, "Rules that spoke of nothing in this plan:");
    for (RuleResult rule : idle) {
      page.hang(4, rule.rule().id() + ":", 0, Ink.NONE, rule.appliedToNothing().orElse(""));
    }
  }

  private void notDue() {
    if (!result.notDue().isEmpty()) {
      page.blank();
      page.paragraph(
          2,
          "Rules that are not due yet"
              + result.options().stage().map(s -> " at " + s).orElse("")
              + ":");
      page.paragraph(4, String.join(", ", result.notDue()));
    }
  }

  /** A rule that was taken out would be missed, if nobody said so. */
  private void withdrawn() {
    List<Withdrawal> withdrawn = result.standard().withdrawn();
    if (withdrawn.isEmpty()) {
      return;
    }
    page.blank();
    page.paragraph(2, "Rules that were withdrawn:");
    for (Withdrawal withdrawal : withdrawn) {
      page.hang(
          4,
          withdrawal.rule().id() + ":",
          0,
          Ink.NONE,
          "by "
              + ChangeText.by(withdrawal.change())
              + ", because "
              + withdrawal.change().because());
    }
  }

  private void provenance() {
    page.hang(2, "engine", LABEL, Ink.NONE, result.engine());
    page.hang(
        2,
        "standard",
        LABEL,
        Ink.NONE,
        result.standard().name()
            + " edition "
            + result.standard().edition()
            + ", "
            + shortened(result.standardHash()));
    Optional<Standard> base = result.standard().base();
    while (base.isPresent()) {
      page.hang(
          2, "on base", LABEL, Ink.NONE, base.get().name() + " edition " + base.get().edition());
      base = base.get().base();
    }
    page.hang(
        2,
        "plan",
        LABEL,
        Ink.NONE,
        result.plan().id() + ", " + shortened(result.plan().source().hash()));
  }

  private static String shortened(String hash) {
    return hash.substring(0, Math.min(HASH_DIGITS, hash.length()));
  }
}
