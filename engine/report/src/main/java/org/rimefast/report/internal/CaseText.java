package org.rimefast.report.internal;

import java.util.Optional;
import org.rimefast.check.cases.CaseProblem;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;

/** Writes what came of cases. */
public final class CaseText {
  private static final int LABEL = 10;

  private CaseText() {}

  /** A case that did not come out as expected or could not be run. */
  public static void write(CaseResult result, Standard standard, Page page) {
    boolean notRun = !result.problems().isEmpty();
    page.ends(
        Ink.FAULT,
        (notRun ? "COULD NOT BE RUN: " : "NOT AS EXPECTED: ") + result.example().name(),
        result.example().file() + ":" + result.example().line());
    Optional<String> id = result.example().rule();
    id.ifPresent(rule -> page.hang(2, "rule", LABEL, Ink.NONE, titled(rule, standard)));
    for (CaseProblem problem : result.problems()) {
      page.paragraph(2, problem.message());
      if (!problem.remedy().isEmpty()) {
        page.hang(4, "help:", 6, Ink.NONE, problem.remedy());
      }
    }
    for (Mismatch mismatch : result.mismatches()) {
      if (id.isEmpty()) {
        mismatch
            .rule()
            .ifPresent(rule -> page.hang(2, "rule", LABEL, Ink.NONE, titled(rule.id(), standard)));
      }
      page.hang(2, "expected", LABEL, Ink.NONE, mismatch.expected());
      page.hang(2, "instead", LABEL, Ink.NONE, mismatch.found());
    }
  }

  private static String titled(String id, Standard standard) {
    return standard.rules().stream()
        .filter(rule -> rule.id().equals(id))
        .map(Rule::title)
        .findFirst()
        .map(title -> title + " [" + id + "]")
        .orElse(id);
  }

  /** {@code 3 cases, 1 as expected, 1 not, 1 could not be run.} */
  public static String counts(CaseResults results) {
    int all = results.results().size();
    int otherwise = results.otherwise();
    int notRun = results.notRun();
    StringBuilder told = new StringBuilder(all == 1 ? "1 case, " : all + " cases, ");
    if (otherwise == 0 && notRun == 0) {
      return told.append(all == 1 ? "as expected." : "all as expected.").toString();
    }
    told.append(all - otherwise - notRun).append(" as expected");
    told.append(otherwise > 0 ? ", " + otherwise + " not" : "");
    return told.append(notRun > 0 ? ", " + notRun + " could not be run." : ".").toString();
  }
}
