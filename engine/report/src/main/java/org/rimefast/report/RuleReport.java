package org.rimefast.report;

import java.util.Optional;
import java.util.function.Function;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.report.internal.Page;
import org.rimefast.report.internal.RuleText;

/**
 * One rule of a standard as text for people: what it asks, from when, why, with which limits, and
 * what each standard that builds on another made of it.
 */
public final class RuleReport {
  private RuleReport() {}

  /**
   * What a rule says.
   *
   * @param id the rule's name; that of a rule that was withdrawn will do
   * @return empty if the standard has no such rule
   */
  public static Optional<String> write(Standard standard, String id, TextOptions options) {
    return write(standard, id, rule -> Optional.empty(), options);
  }

  /**
   * The same, with the rule said in other words.
   *
   * @param readAs says a rule in one canonical sentence, where it can be said so
   */
  public static Optional<String> write(
      Standard standard, String id, Function<Rule, Optional<String>> readAs, TextOptions options) {
    Optional<Rule> rule = standard.rule(id);
    Optional<Rule> gone =
        standard.withdrawn().stream()
            .map(withdrawal -> withdrawal.rule())
            .filter(withdrawn -> withdrawn.id().equals(id))
            .findFirst();
    return rule.or(() -> gone)
        .map(
            found -> {
              Page page = new Page(options);
              new RuleText(page, standard, found, rule.isEmpty()).write(readAs.apply(found));
              return page.toString();
            });
  }
}
