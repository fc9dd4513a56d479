package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.cases.Expectation.Outcome;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.CaseStep;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** Checks what one case expects. */
final class CaseExpectations {
  private final Statement.Case owner;
  private final List<Diagnostic> diagnostics;
  private final Map<String, CaseStep.Expect> byElement = new HashMap<>();
  private final Map<String, CaseStep.Expect> nothing = new HashMap<>();
  private final Map<String, CaseStep.Expect> something = new HashMap<>();

  CaseExpectations(Statement.Case owner, List<Diagnostic> diagnostics) {
    this.owner = owner;
    this.diagnostics = diagnostics;
  }

  List<Expectation> check(List<CaseStep.Expect> expects) {
    if (expects.isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_PART,
              owner.name().span(),
              "The case " + English.quoted(owner.name().text()) + " has no \"expect\".",
              "Add at its end, for example: expect broken by \"R-1\"; or: expect met"));
    }
    List<Expectation> checked = new ArrayList<>();
    for (CaseStep.Expect expect : expects) {
      rule(expect);
      conflicts(expect);
      checked.add(
          new Expectation(
              expect.rule().map(Word::text),
              expect.outcome(),
              expect.elements().stream().map(Word::text).toList(),
              expect.want(),
              expect.written(),
              expect.span()));
    }
    return checked;
  }

  private void rule(CaseStep.Expect expect) {
    if (owner.rule().isEmpty()) {
      boolean all = expect.outcome() == Outcome.NOTHING || expect.outcome() == Outcome.MET;
      if (expect.rule().isEmpty() && (!all || !expect.elements().isEmpty())) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.BAD_EXPECTATION,
                expect.span(),
                "This case is of every rule; it does not say which rule must say this.",
                "Write the rule's name behind \"expect\": expect box-in-outer-bay broken by"
                    + " \"R-1\""));
      }
      return;
    }
    Optional<Word> other =
        expect.rule().filter(named -> !named.text().equals(owner.rule().get().text()));
    other.ifPresent(
        named ->
            diagnostics.add(
                Problems.related(
                    DiagnosticCode.BAD_EXPECTATION,
                    named.span(),
                    "This case is of another rule.",
                    "Take the rule's name out, or make it a case of every rule.",
                    List.of(
                        new Diagnostic.Related(
                            owner.rule().get().span(), "the case's rule is named here")))));
  }

  private void conflicts(CaseStep.Expect expect) {
    String rule = expect.rule().map(Word::text).orElse("");
    if (expect.outcome() == Outcome.NOTHING) {
      nothing.putIfAbsent(rule, expect);
    } else {
      something.putIfAbsent(rule, expect);
    }
    CaseStep.Expect none = nothing.get(rule);
    CaseStep.Expect some = something.get(rule);
    if (none != null && some != null) {
      conflict(
          expect,
          expect.equals(none) ? some : none,
          "A rule that speaks of no element says nothing else.");
    }
    for (Word element : expect.elements()) {
      CaseStep.Expect first = byElement.putIfAbsent(rule + "\n" + element.text(), expect);
      if (first != null) {
        conflict(
            expect,
            first,
            "What is expected of " + English.quoted(element.text()) + " is said twice.");
      }
    }
  }

  private void conflict(CaseStep.Expect expect, CaseStep.Expect first, String headline) {
    diagnostics.add(
        Problems.related(
            DiagnosticCode.BAD_EXPECTATION,
            expect.span(),
            headline,
            "Keep one of them.",
            List.of(new Diagnostic.Related(first.span(), "the first one is here"))));
  }
}
