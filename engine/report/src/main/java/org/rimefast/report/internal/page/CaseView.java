package org.rimefast.report.internal.page;

import java.util.List;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.Mismatch;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.lang.cases.Expectation;

/**
 * A case and what came of it.
 *
 * @param plan where its plan comes from
 * @param edits what it changes in the plan
 * @param outcome whether all came out as expected
 * @param instead what came out instead, or why it could not be run
 */
public record CaseView(
    String name,
    String plan,
    List<String> edits,
    List<String> expected,
    Outcome outcome,
    List<String> instead) {

  private static final String EXPECT = "expect ";

  /** What came of a case. */
  public enum Outcome {
    AS_EXPECTED("as expected", "sound"),
    OTHERWISE("not as expected", "otherwise"),
    NOT_RUN("could not be run", "otherwise");

    private final String words;
    private final String look;

    Outcome(String words, String look) {
      this.words = words;
      this.look = look;
    }

    /** For people. */
    public String words() {
      return words;
    }

    /** For the style sheet. */
    public String look() {
      return look;
    }
  }

  static CaseView of(CaseResult result) {
    Case example = result.example();
    return new CaseView(
        example.name(),
        plan(example.plan()),
        example.edits().stream().map(CaseEdit::written).toList(),
        example.expectations().stream().map(CaseView::expected).toList(),
        outcome(result),
        result.problems().isEmpty()
            ? result.mismatches().stream().map(found -> told(found, example)).toList()
            : result.problems().stream()
                .map(problem -> (problem.message() + " " + problem.remedy()).strip())
                .toList());
  }

  private static Outcome outcome(CaseResult result) {
    if (!result.problems().isEmpty()) {
      return Outcome.NOT_RUN;
    }
    return result.isAsExpected() ? Outcome.AS_EXPECTED : Outcome.OTHERWISE;
  }

  /** The column says already that it is expected. */
  private static String expected(Expectation expectation) {
    String written = expectation.written();
    return written.startsWith(EXPECT) ? written.substring(EXPECT.length()) : written;
  }

  private static String told(Mismatch mismatch, Case example) {
    String rule =
        mismatch
            .rule()
            .filter(found -> example.rule().isEmpty())
            .map(found -> found.id() + ": ")
            .orElse("");
    return rule + "expected " + mismatch.expected() + "; instead " + mismatch.found();
  }

  private static String plan(CasePlan plan) {
    return plan.accept(
        new CasePlan.Visitor<String>() {
          @Override
          public String file(CasePlan.File file) {
            return file.name();
          }

          @Override
          public String inline(CasePlan.Inline inline) {
            return "a plan in the case itself";
          }
        });
  }
}
