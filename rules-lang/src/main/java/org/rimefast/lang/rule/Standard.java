package org.rimefast.lang.rule;

import java.util.List;
import org.rimefast.lang.cases.Case;
import java.util.Optional;
import org.rimefast.lang.source.SourceText;

/**
 * A compiled standard.
 *
 * @param name its name: {@code cold-steel-modules}
 * @param edition which edition: {@code 2026-11}
 * @param title one line for people; may be empty
 * @param caution what every report must say beside advice of this standard; may be empty
 * @param constants named constants, in the order written
 * @param terms kinds of element that it defines, in the order written
 * @param rules rules and inspect items, in the order written
 * @param cases examples that stand in the same text, in the order written
 * @param source the text it was compiled from
 */
public record Standard(
    String name,
    String edition,
    String title,
    String caution,
    List<Constant> constants,
    List<Term> terms,
    List<Rule> rules,
    List<Case> cases,
    SourceText source) {
  /** Copies the lists. */
  public Standard {
    constants = List.copyOf(constants);
    terms = List.copyOf(terms);
    rules = List.copyOf(rules);
    cases = List.copyOf(cases);
  }

  /** A standard without terms and cases. */
  public Standard(
      String name,
      String edition,
      String title,
      String caution,
      List<Constant> constants,
      List<Rule> rules,
      SourceText source) {
    this(name, edition, title, caution, constants, List.of(), rules, List.of(), source);
  }

  /** The rule or inspect item of this id. */
  public Optional<Rule> rule(String id) {
    return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }
}
