package org.rimefast.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.cases.RuleStrength;
import org.rimefast.check.cases.StandardStrength;
import org.rimefast.check.cases.StrengthMeter;
import org.rimefast.report.internal.Ink;
import org.rimefast.report.internal.Page;

/** How well cases pin a standard down, as text for people. */
public final class StrengthReport {
  private StrengthReport() {}

  /**
   * The share of small changes of its rules that the cases notice; then, for each rule with a gap,
   * every change that none notices, and what of the rule no case has seen.
   */
  public static String write(StandardStrength strength, TextOptions options) {
    Page page = new Page(options);
    page.entry(
        Ink.NONE,
        strength.standard().name()
            + " edition "
            + strength.standard().edition()
            + ": the cases notice "
            + strength.noticed()
            + " of "
            + strength.changes()
            + " small changes of its rules ("
            + percent(strength)
            + " %)");
    for (RuleStrength rule : strength.rules()) {
      rule(rule, page);
    }
    return page.toString();
  }

  /** Rounded down, so that 100 % means all. */
  private static int percent(StandardStrength strength) {
    return strength.changes() == 0 ? 100 : strength.noticed() * 100 / strength.changes();
  }

  private static void rule(RuleStrength strength, Page page) {
    List<String> lines = new ArrayList<>();
    if (strength.cases() == 0) {
      lines.add("no case of it comes out as expected, so nothing is known of it");
    } else {
      strength
          .unnoticed()
          .forEach(change -> lines.add("nothing tells " + change.told() + ": " + change.place()));
      strength.conditions().forEach(seen -> gap(seen).ifPresent(lines::add));
    }
    if (strength.isBounded()) {
      lines.add("only the first " + StrengthMeter.MOST_CHANGES + " changes of it were tried");
    }
    if (lines.isEmpty()) {
      return;
    }
    page.blank();
    page.entry(
        Ink.NONE,
        strength.rule().title()
            + " ["
            + strength.rule().id()
            + "]: "
            + strength.noticed()
            + " of "
            + strength.changes()
            + " noticed");
    lines.forEach(line -> page.hang(2, "-", 2, Ink.NONE, line));
  }

  /** What the cases have not seen of a condition. */
  private static Optional<String> gap(RuleStrength.Seen seen) {
    List<String> never = new ArrayList<>();
    if (!seen.isTrue()) {
      never.add("true");
    }
    if (!seen.isFalse()) {
      never.add("false");
    }
    if (!seen.isUndecided()) {
      never.add("undecided");
    }
    seen.limit()
        .ifPresent(
            limit -> {
              if (!limit.isJustMet()) {
                never.add("just within " + limit.text());
              }
              if (!limit.isJustMissed()) {
                never.add("just beyond " + limit.text());
              }
            });
    return never.isEmpty()
        ? Optional.empty()
        : Optional.of("never " + String.join(", ", never) + ": " + seen.text());
  }
}
