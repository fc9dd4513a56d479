package org.rimefast.report;

import java.util.List;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.rule.Rule;
import org.rimefast.report.internal.CaseText;
import org.rimefast.report.internal.Ink;
import org.rimefast.report.internal.Page;

/** What came of the cases of a standard, as text for people. */
public final class CaseReport {
  private CaseReport() {}

  /**
   * Each case that did not come out as expected or could not be run: what was expected, and what
   * came out instead and why. Then the counts, and the rules that no case expects to be broken.
   */
  public static String write(CaseResults results, TextOptions options) {
    Page page = new Page(options);
    for (CaseResult result : results.results()) {
      if (!result.isAsExpected()) {
        CaseText.write(result, results.standard(), page);
        page.blank();
      }
    }
    page.entry(
        results.areAsExpected() ? Ink.NONE : Ink.FAULT,
        results.standard().name()
            + " edition "
            + results.standard().edition()
            + ": "
            + CaseText.counts(results));
    List<Rule> neverBroken = results.neverBroken();
    if (!neverBroken.isEmpty()) {
      page.entry(
          Ink.NONE,
          "No case expects "
              + (neverBroken.size() == 1 ? "this rule" : "these rules")
              + " to be broken, so nothing shows that "
              + (neverBroken.size() == 1 ? "it finds" : "they find")
              + " anything:");
      neverBroken.forEach(
          rule -> page.hang(2, "-", 2, Ink.NONE, rule.title() + " [" + rule.id() + "]"));
    }
    return page.toString();
  }

  /** One case that did not come out as expected or could not be run, as {@link #write} tells it. */
  public static String one(CaseResult result, CaseResults of, TextOptions options) {
    Page page = new Page(options);
    CaseText.write(result, of.standard(), page);
    return page.toString();
  }
}
