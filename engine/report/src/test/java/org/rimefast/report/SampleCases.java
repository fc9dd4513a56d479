package org.rimefast.report;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.cases.CaseProblem;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Span;

/** Results of cases, made by hand. */
final class SampleCases {
  private static final Standard STANDARD = SampleResults.standard();
  private static final Rule FIRST = STANDARD.rules().get(0);
  private static final Rule SECOND = STANDARD.rules().get(1);
  private static final Span NOWHERE = new Span(0, 0);

  private SampleCases() {}

  /** One case that comes out, one that does not, one of every rule, and two that cannot be run. */
  static CaseResults everything() {
    return new CaseResults(
        STANDARD,
        List.of(
            new CaseResult(example("a box in a bay", FIRST.id(), 3), List.of(), List.of()),
            new CaseResult(
                example("a box <before> a rib & \"near\" it", FIRST.id(), 9),
                List.of(
                    new Mismatch(
                        Optional.of(FIRST),
                        "broken by box R-1",
                        "met by box R-1: clearance of box R-1 is 3 in, at least 2 in (foam behind a"
                            + " box), which is more than was thought when the case was written"),
                    new Mismatch(
                        Optional.of(FIRST),
                        "no finding on box R-2, which the case does not name",
                        "undecided by box R-2: depth of box R-2 is missing")),
                List.of()),
            new CaseResult(
                example("a sound room \u0007\u202e]]>", Optional.empty(), 20),
                List.of(
                    new Mismatch(
                        Optional.of(SECOND),
                        "met by some box",
                        "met by none: the plan has no boxes"),
                    new Mismatch(
                        Optional.empty(),
                        "some rule met by some element",
                        "no rule is met by any element")),
                List.of()),
            new CaseResult(
                example("a plan that is gone", SECOND.id(), 31),
                List.of(),
                List.of(
                    new CaseProblem(
                        "There is no plan \"gone.json\" beside shop.cases.rime.",
                        "Check its name; it counts from the folder of the cases."))),
            new CaseResult(
                example("a rule of another edition", "gone-rule", 40),
                List.of(),
                List.of(new CaseProblem("The plan \"p\" cannot be read: the disk is gone.", "")))));
  }

  /** One case, which comes out. */
  static CaseResults sound() {
    return new CaseResults(
        STANDARD,
        List.of(new CaseResult(example("a box in a bay", FIRST.id(), 3), List.of(), List.of())));
  }

  private static Case example(String name, String rule, int line) {
    return example(name, Optional.of(rule), line);
  }

  private static Case example(String name, Optional<String> rule, int line) {
    Expectation broken =
        new Expectation(
            rule,
            Expectation.Outcome.BROKEN,
            List.of("R-1"),
            Optional.empty(),
            "expect broken by \"R-1\"",
            NOWHERE);
    return new Case(
        name,
        rule,
        new CasePlan.File("small.json", NOWHERE),
        List.of(),
        List.of(broken),
        "shop.cases.rime",
        line,
        NOWHERE);
  }
}
