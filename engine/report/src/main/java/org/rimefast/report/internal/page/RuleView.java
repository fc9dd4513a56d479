package org.rimefast.report.internal.page;

import java.util.List;
import java.util.Optional;

/**
 * A rule or inspect item as a page shows it.
 *
 * @param sentence as it is written
 * @param reading how it is read, in one canonical sentence; why there is none if {@code readable}
 *     is false
 * @param origin the standard that wrote it, and the sentence there; empty if it stands in the
 *     standard at the bottom, or there is only one
 */
public record RuleView(
    String anchor,
    String id,
    String title,
    String severity,
    String stage,
    String sentence,
    String reading,
    boolean readable,
    String because,
    String source,
    Optional<QuestionView> question,
    List<LimitView> limits,
    List<TermLink> terms,
    List<TermLink> tables,
    Optional<Origin> origin,
    List<ChangeView> changes,
    List<CaseView> cases) {

  /**
   * What is asked on site.
   *
   * @param limit of the value that is read: {@code at least 5 degC}
   */
  public record QuestionView(String ask, String answer, Optional<String> limit) {}

  /**
   * A number that a rule stands on.
   *
   * @param anchor of the constant; empty for a number that has no name
   * @param name the constant's name, or where the number stands
   * @param elsewhere the constant's value in other rules, where it is another one
   */
  public record LimitView(
      String value,
      Optional<String> anchor,
      String name,
      String because,
      String source,
      Optional<String> elsewhere) {}

  /**
   * Leads to a term or a table.
   *
   * @param anchor empty if the standard at hand does not list it
   */
  public record TermLink(Optional<String> anchor, String name) {}

  /** Who wrote a rule first, and how. */
  public record Origin(String standard, String sentence) {}

  /** True for an inspect item. */
  public boolean isInspectItem() {
    return question.isPresent();
  }
}
