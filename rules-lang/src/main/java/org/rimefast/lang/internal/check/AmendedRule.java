package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** Finds the rule that an amendment speaks of. */
final class AmendedRule {
  private final Optional<Standard> base;
  private final Set<String> own;
  private final List<Diagnostic> diagnostics;

  /**
   * For one layer.
   *
   * @param own the ids of all rules, those of the layer itself among them
   */
  AmendedRule(Optional<Standard> base, Set<String> own, List<Diagnostic> diagnostics) {
    this.base = base;
    this.own = own;
    this.diagnostics = diagnostics;
  }

  /** The rule as the base has it. */
  Optional<Rule> of(Statement.Amendment amendment) {
    Word id = amendment.rule();
    if (base.isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.UNKNOWN_RULE,
              id.span(),
              "This standard builds on no other, so there is no rule to amend.",
              "Write in its first statement, for example: builds on cold-steel-modules edition"
                  + " 2026-11"));
      return Optional.empty();
    }
    Standard under = base.get();
    Optional<Rule> found = under.rule(id.text());
    if (found.isEmpty()) {
      diagnostics.add(gone(amendment, under));
    }
    return found;
  }

  private Diagnostic gone(Statement.Amendment amendment, Standard under) {
    Word id = amendment.rule();
    String was = SeenChecker.textOf(amendment).map(text -> " It was: " + text + ".").orElse("");
    Optional<Withdrawal> taken =
        under.withdrawn().stream().filter(w -> w.rule().id().equals(id.text())).findFirst();
    if (taken.isPresent()) {
      Change change = taken.get().change();
      return Problems.error(
          DiagnosticCode.UNKNOWN_RULE,
          id.span(),
          "The rule "
              + id.text()
              + " was withdrawn by "
              + change.standard()
              + " edition "
              + change.edition()
              + ".",
          "Take the amendment out, or write the rule anew under another name." + was);
    }
    String headline =
        own.contains(id.text())
            ? "The rule " + id.text() + " is this standard's own."
            : "The standard "
                + under.name()
                + " edition "
                + under.edition()
                + " has no rule called "
                + English.quoted(English.shortened(id.text()))
                + ".";
    if (own.contains(id.text())) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_RULE,
          id.span(),
          headline,
          "Change the rule itself; only rules of the standard below are amended.");
    }
    List<String> names = under.rules().stream().map(Rule::id).toList();
    List<String> near = Nearest.to(id.text(), names);
    return near.isEmpty()
        ? Problems.error(
            DiagnosticCode.UNKNOWN_RULE,
            id.span(),
            headline,
            "Its rules are " + English.either(names, 10).replace(" or ", " and ") + "." + was)
        : Problems.fixable(
            DiagnosticCode.UNKNOWN_RULE,
            id.span(),
            headline,
            "Did you mean " + English.either(near, 3) + "?" + was,
            id.span(),
            near.get(0));
  }
}
