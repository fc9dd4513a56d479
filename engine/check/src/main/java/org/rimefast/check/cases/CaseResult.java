package org.rimefast.check.cases;

import java.util.List;
import org.rimefast.lang.cases.Case;

/**
 * What came of a case.
 *
 * @param example the case
 * @param mismatches what did not come out as expected, in the order of the standard
 * @param problems why it could not be run; if there is any, nothing was asked
 */
public record CaseResult(Case example, List<Mismatch> mismatches, List<CaseProblem> problems) {
  /** Copies the lists. */
  public CaseResult {
    mismatches = List.copyOf(mismatches);
    problems = List.copyOf(problems);
  }

  /** True if the case was run and all came out as expected. */
  public boolean isAsExpected() {
    return mismatches.isEmpty() && problems.isEmpty();
  }
}
