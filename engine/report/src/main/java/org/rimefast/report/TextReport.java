package org.rimefast.report;

import java.util.List;
import org.rimefast.check.CheckResult;
import org.rimefast.report.internal.OverviewText;
import org.rimefast.report.internal.Page;
import org.rimefast.report.internal.ResultText;

/**
 * The result of a check as text for people.
 *
 * <p>First the plan and what it comes to; then the findings, element by element, gravest first;
 * then the values that the plan does not give, each with the rules that wait for it; last the
 * counts, what was not asked, where everything came from, and the standard's caution. Layout is
 * plain ASCII; controls and bidirectional characters in a plan's text are made visible. Lines end
 * in a line feed.
 */
public final class TextReport {
  private TextReport() {}

  /** The report of one plan. The same result gives the same text everywhere. */
  public static String write(CheckResult result, TextOptions options) {
    Page page = new Page(options);
    new ResultText(result, page).write();
    return page.toString();
  }

  /**
   * One line for each plan, for a run over several.
   *
   * @param results of the plans that were checked
   * @param unusable plans and standards that could not be used
   */
  public static String overview(
      List<CheckResult> results, List<UnusableInput> unusable, TextOptions options) {
    Page page = new Page(options);
    OverviewText.write(results, unusable, page);
    return page.toString();
  }
}
