package org.rimefast.languageserver;

import java.util.List;
import org.rimefast.lang.cases.Case;

/**
 * What came of running a case.
 *
 * @param example the case
 * @param faults what came out otherwise than expected, or why it could not be run, a sentence each;
 *     empty if all came out as expected
 */
public record CaseOutcome(Case example, List<String> faults) {
  /** Copies the list. */
  public CaseOutcome {
    faults = List.copyOf(faults);
  }
}
