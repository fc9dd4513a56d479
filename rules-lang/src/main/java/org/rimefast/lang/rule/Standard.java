package org.rimefast.lang.rule;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.source.SourceText;

/**
 * A compiled standard.
 *
 * @param name its name: {@code cold-steel-modules}
 * @param edition which edition: {@code 2026-11}
 * @param title one line for people; may be empty
 * @param caution what every report must say beside advice of this standard; may be empty
 * @param constants named constants, in the order written; those of the standard that it builds on
 *     come first
 * @param terms kinds of element that it defines, in the order written; those of the standard that
 *     it builds on come first
 * @param tables tables, in the order written; those of the standard that it builds on come first
 * @param rules rules and inspect items, in the order written; those of the standard that it builds
 *     on come first, as amended
 * @param cases examples that stand in the same text, in the order written; not those of the
 *     standard that it builds on
 * @param source the text it was compiled from, with those that it includes and builds on
 * @param base the standard that it builds on, as that one stands
 * @param withdrawn rules that it or a standard under it took out
 */
public record Standard(
    String name,
    String edition,
    String title,
    String caution,
    List<Constant> constants,
    List<Term> terms,
    List<Table> tables,
    List<Rule> rules,
    List<Case> cases,
    SourceText source,
    Optional<Standard> base,
    List<Withdrawal> withdrawn) {
  /** Copies the lists. */
  public Standard {
    constants = List.copyOf(constants);
    terms = List.copyOf(terms);
    tables = List.copyOf(tables);
    rules = List.copyOf(rules);
    cases = List.copyOf(cases);
    withdrawn = List.copyOf(withdrawn);
  }

  /** A standard without terms, tables and cases that builds on no other. */
  public Standard(
      String name,
      String edition,
      String title,
      String caution,
      List<Constant> constants,
      List<Rule> rules,
      SourceText source) {
    this(
        name,
        edition,
        title,
        caution,
        constants,
        List.of(),
        List.of(),
        rules,
        List.of(),
        source,
        Optional.empty(),
        List.of());
  }

  /** The same standard with other rules. */
  public Standard withRules(List<Rule> others) {
    return new Standard(
        name, edition, title, caution, constants, terms, tables, others, cases, source, base,
        withdrawn);
  }

  /** The rule or inspect item of this id. */
  public Optional<Rule> rule(String id) {
    return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }
}
