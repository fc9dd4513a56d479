package org.rimefast.report.internal;

import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.check.UnaskedReading;
import org.rimefast.check.WaiverUse;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.SourceText;

/** What came of the waivers, and which readings nobody asked for. */
final class SiteText {
  private final Page page;
  private final CheckResult result;

  SiteText(Page page, CheckResult result) {
    this.page = page;
    this.result = result;
  }

  void write() {
    waivers();
    unasked();
  }

  private void waivers() {
    if (result.waivers().isEmpty()) {
      return;
    }
    page.blank();
    page.paragraph(2, "Waivers:");
    for (WaiverUse use : result.waivers()) {
      Waiver waiver = use.waiver();
      page.hang(4, waiver.rule() + ":", 0, Ink.NONE, state(use) + ", for " + waiver.target());
      page.paragraph(6, allowed(waiver));
      named("farther off the limit than allowed, so not waived", use.beyond());
      named("it cannot be told whether it means", use.unsure());
      named("none of the rule's elements in this plan", use.unknown());
      SourceText.Position at = waiver.source().positionOf(waiver.span().start());
      page.paragraph(6, "at " + waiver.source().name() + ":" + at.line() + ":" + at.column());
    }
  }

  private static String state(WaiverUse use) {
    return switch (use.state()) {
      case USED -> use.findings() == 1 ? "used once" : "used " + use.findings() + " times";
      case NO_LONGER_NEEDED -> "no longer needed, nothing that it means is broken";
      case UNUSED ->
          use.beyond().isEmpty()
              ? "unused, it means nothing in this plan"
              : "unused, what it means lies beyond its bound";
      case NOT_YET -> "does not hold yet";
      case EXPIRED -> "expired";
      case NOT_DUE -> "not needed yet, its rule is not due";
      case OTHER_PLAN -> "for another plan";
    };
  }

  /** Who allowed what, and for how long. */
  static String allowed(Waiver waiver) {
    return "approved by "
        + waiver.approvedBy()
        + ", from "
        + waiver.from()
        + " until "
        + waiver.until()
        + waiver.plan().map(plan -> ", in plan " + plan).orElse("")
        + waiver.bound().map(bound -> ", " + bound.words()).orElse("")
        + ": "
        + waiver.because();
  }

  private void named(String lead, List<String> names) {
    if (!names.isEmpty()) {
      page.hang(6, lead + ":", 0, Ink.NONE, String.join(", ", names));
    }
  }

  private void unasked() {
    if (result.unaskedReadings().isEmpty()) {
      return;
    }
    page.blank();
    page.paragraph(2, "Readings that decide nothing:");
    for (UnaskedReading unasked : result.unaskedReadings()) {
      page.hang(
          4,
          unasked.reading().inspect() + " of " + unasked.of() + ":",
          0,
          Ink.NONE,
          unasked.why() + " (" + unasked.reading().pointer() + ")");
    }
  }
}
