package org.rimefast.report.internal.page;

import java.util.List;
import java.util.Optional;

/**
 * A standard as its page shows it.
 *
 * @param style the style sheet
 * @param policy what a browser may do with the page
 * @param title for people; the name if the standard has none
 * @param caution what is said beside all advice
 * @param bases the standards that it builds on, the nearest first: {@code NAME edition EDITION}
 * @param stages in the order of the work
 * @param cases those of all rules at once, and what came of all; empty if none were run
 * @param engine name and version
 * @param hash of the text, in hex
 */
public record StandardView(
    String style,
    String policy,
    String title,
    String name,
    String edition,
    String caution,
    List<String> bases,
    List<String> stages,
    List<ConstantView> constants,
    List<TermView> terms,
    List<TableView> tables,
    List<RuleView> rules,
    Optional<Cases> cases,
    List<WithdrawnView> withdrawn,
    String engine,
    String hash) {

  /** A named constant. */
  public record ConstantView(
      String anchor,
      String name,
      String value,
      Optional<String> because,
      Optional<String> source) {}

  /**
   * A kind of element that the standard defines.
   *
   * @param definition in a sentence
   */
  public record TermView(
      String anchor,
      String name,
      String definition,
      Optional<String> because,
      Optional<String> source) {}

  /**
   * A table.
   *
   * @param noun of what element it is a property
   * @param inputs heads of the columns but the last, which holds the results
   * @param rows each with a cell for each column; empty if no words say it
   * @param otherwise the result where no row speaks
   * @param unsaid why no words say it
   */
  public record TableView(
      String anchor,
      String name,
      String noun,
      List<String> inputs,
      List<List<String>> rows,
      Optional<String> otherwise,
      Optional<String> unsaid,
      Optional<String> because,
      Optional<String> source) {}

  /**
   * What came of the cases.
   *
   * @param counts in words
   * @param ofEveryRule the cases that look at all rules
   * @param neverBroken rules that no case expects to be broken
   */
  public record Cases(
      int number, String counts, List<CaseView> ofEveryRule, List<RuleLink> neverBroken) {}

  /** Leads to a rule. */
  public record RuleLink(String anchor, String id, String title) {}

  /** A rule that a standard took out. */
  public record WithdrawnView(
      String anchor, String id, String title, String sentence, ChangeView change) {}
}
