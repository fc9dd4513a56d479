package org.rimefast.check.cases;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.PlanFacts;
import org.rimefast.lang.cases.Case;

/**
 * A case whose plan is read, changed as it says, and made ready for questions. It can be asked
 * again and again, by any standard that has its rules; what geometry works out once is kept. Safe
 * to share between threads.
 */
public final class PreparedCase {
  private final Case example;
  private final Optional<PlanFacts> facts;
  private final List<CaseProblem> problems;

  PreparedCase(Case example, PlanFacts facts) {
    this.example = example;
    this.facts = Optional.of(facts);
    this.problems = List.of();
  }

  PreparedCase(Case example, List<CaseProblem> problems) {
    this.example = example;
    this.facts = Optional.empty();
    this.problems = List.copyOf(problems);
  }

  /** The case. */
  public Case example() {
    return example;
  }

  /** The changed plan; empty if there is any problem. */
  public Optional<PlanFacts> facts() {
    return facts;
  }

  /** Why the case cannot be run. */
  public List<CaseProblem> problems() {
    return problems;
  }
}
