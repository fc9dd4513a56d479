package org.rimefast.report;

import java.util.Optional;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.report.internal.page.StandardView;
import org.rimefast.report.internal.page.StandardViews;
import org.rimefast.report.internal.page.VisibleHtmlOutput;
import org.rimefast.report.internal.template.JtestandardGenerated;

/**
 * The documentation of a standard as one HTML page for people: what each rule asks, how it is read,
 * its limits with their reasons and sources, what each standard that builds on another made of it,
 * and the cases that show what it finds.
 *
 * <p>The page stands alone: it holds its own style, asks for nothing from anywhere and runs no
 * script, and its Content Security Policy has browsers see to that. Every text of a standard stays
 * text, whatever it holds; controls and bidirectional characters in it are made visible. The page
 * is well-formed XML too. {@code page.html#box-in-outer-bay} leads to the rule of that id. The same
 * standard gives the same text everywhere; lines end in a line feed.
 *
 * <p>Use:
 *
 * <pre>{@code
 * String html = StandardPage.write(runner.run(standard, cases), dictionary.vocabulary());
 * }</pre>
 */
public final class StandardPage {
  private StandardPage() {}

  /**
   * The page of a standard whose cases were not run; it says so.
   *
   * @param vocabulary the one that the standard was compiled with, for saying its rules again
   * @throws IllegalArgumentException if the vocabulary has no stages
   */
  public static String write(Standard standard, Vocabulary vocabulary) {
    return write(StandardViews.of(standard, vocabulary, Optional.empty()));
  }

  /**
   * The page of a standard with its cases and what came of them.
   *
   * @param cases of all cases of the standard
   * @param vocabulary as above
   * @throws IllegalArgumentException if the vocabulary has no stages
   */
  public static String write(CaseResults cases, Vocabulary vocabulary) {
    return write(StandardViews.of(cases.standard(), vocabulary, Optional.of(cases)));
  }

  private static String write(StandardView view) {
    VisibleHtmlOutput out = new VisibleHtmlOutput();
    // No tag of the templates is intercepted.
    JtestandardGenerated.render(out, null, view);
    return out.text();
  }
}
