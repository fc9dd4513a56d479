package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.syntax.CaseStep;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Checks the cases of one text. */
public final class CaseChecker {
  private final SourceText source;
  private final Optional<? extends Collection<String>> ruleIds;
  private final List<Diagnostic> diagnostics;

  /**
   * A checker for one text.
   *
   * @param ruleIds the rules of the standard; empty if not all are known
   * @param diagnostics what is wrong is added here
   */
  public CaseChecker(
      SourceText source,
      Optional<? extends Collection<String>> ruleIds,
      List<Diagnostic> diagnostics) {
    this.source = source;
    this.ruleIds = ruleIds;
    this.diagnostics = diagnostics;
  }

  /** The cases among the statements, as far as they make sense. */
  public List<Case> check(List<Statement> statements) {
    List<Case> cases = new ArrayList<>();
    Map<String, Span> names = new HashMap<>();
    for (Statement statement : statements) {
      if (statement instanceof Statement.Case found) {
        Span first = names.putIfAbsent(found.name().text(), found.name().span());
        if (first != null) {
          diagnostics.add(
              StandardChecker.repeated("case", found.name().text(), found.name().span(), first));
        }
        check(found).ifPresent(cases::add);
      }
    }
    return cases;
  }

  /** Reports statements that only a file of cases has. */
  void refuseHeader(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.CaseFile file) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.WRONG_FILE,
                file.span(),
                "\"cases for\" begins a file of cases, and here a standard is read.",
                "Name the standard's own file; its cases are read from NAME.cases.rime beside it."));
      }
    }
  }

  /**
   * Reports what makes the statements no file of cases for a standard.
   *
   * @param standard the standard's name
   * @param isWhole false if some statement could not be read, so that a missing one is no news
   */
  public void checkFile(List<Statement> statements, String standard, boolean isWhole) {
    boolean named = false;
    for (Statement statement : statements) {
      if (statement instanceof Statement.CaseFile file) {
        if (named) {
          diagnostics.add(
              Problems.error(
                  DiagnosticCode.WRONG_FILE,
                  file.span(),
                  "A file of cases says once for which standard they are.",
                  "Take this line out, or put what follows in a file of its own."));
        } else if (!file.standard().text().equals(standard)) {
          diagnostics.add(
              Problems.fixable(
                  DiagnosticCode.WRONG_FILE,
                  file.standard().span(),
                  "These cases are for "
                      + file.standard().text()
                      + ", and the standard beside them is "
                      + standard
                      + ".",
                  "Write cases for " + standard + ", or give the file the name of its standard.",
                  file.standard().span(),
                  standard));
        }
        named = true;
      } else if (!(statement instanceof Statement.Case)) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.WRONG_FILE,
                statement.span(),
                "A file of cases holds nothing but cases.",
                "Move this statement into the standard's own file."));
      }
    }
    if (!named && isWhole) {
      diagnostics.add(
          Problems.fixable(
              DiagnosticCode.MISSING_STANDARD,
              new Span(0, 0),
              "The text does not say for which standard its cases are.",
              "Begin with: cases for " + standard,
              new Span(0, 0),
              "cases for " + standard + "\n\n"));
    }
  }

  private Optional<Case> check(Statement.Case found) {
    found.rule().ifPresent(this::known);
    List<CaseStep.Plan> plans = new ArrayList<>();
    List<CaseEdit> edits = new ArrayList<>();
    List<CaseStep.Expect> expects = new ArrayList<>();
    for (CaseStep step : found.steps()) {
      if (step instanceof CaseStep.Plan plan) {
        plans.add(plan);
      } else if (step instanceof CaseStep.Edit edit) {
        check(edit.edit());
        edits.add(edit.edit());
      } else {
        expects.add((CaseStep.Expect) step);
      }
    }
    List<Expectation> expectations = new CaseExpectations(found, diagnostics).check(expects);
    expects.forEach(expect -> expect.rule().ifPresent(this::known));
    Optional<CasePlan> plan = plan(found, plans);
    SourceText.Place place = source.place(found.span().start());
    return plan.map(
        from ->
            new Case(
                found.name().text(),
                found.rule().map(Word::text),
                from,
                edits,
                expectations,
                place.name(),
                place.line(),
                found.span()));
  }

  private void known(Word rule) {
    if (ruleIds.isEmpty() || ruleIds.get().contains(rule.text())) {
      return;
    }
    List<String> near = Nearest.to(rule.text(), List.copyOf(ruleIds.get()));
    String headline =
        "The standard has no rule " + English.quoted(English.shortened(rule.text())) + ".";
    diagnostics.add(
        near.isEmpty()
            ? Problems.error(
                DiagnosticCode.UNKNOWN_RULE,
                rule.span(),
                headline,
                "Write the name of one of its rules.")
            : Problems.fixable(
                DiagnosticCode.UNKNOWN_RULE,
                rule.span(),
                headline,
                "Did you mean " + English.quoted(near.get(0)) + "?",
                rule.span(),
                near.get(0)));
  }

  private void check(CaseEdit edit) {
    CaseEdit.@Nullable Target set = edit instanceof CaseEdit.Set found ? found.target() : null;
    if (set != null && set.field().isEmpty() && !set.isPointer()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.BAD_EDIT,
              edit.span(),
              "What is set is a field of an element, or a place in the plan that begins with /.",
              "Write for example: set along of "
                  + English.quoted(set.element())
                  + " to 1720 mm; or: set \"/room/humidity\" to 60 %"));
    }
  }

  private Optional<CasePlan> plan(Statement.Case found, List<CaseStep.Plan> plans) {
    if (plans.isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_PART,
              found.name().span(),
              "The case " + English.quoted(found.name().text()) + " has no plan.",
              "Add after its first line, for example: plan \"cases/small.json\""));
      return Optional.empty();
    }
    CaseStep.Plan first = plans.get(0);
    for (CaseStep.Plan other : plans.subList(1, plans.size())) {
      diagnostics.add(
          Problems.related(
              DiagnosticCode.REPEATED_PART,
              other.span(),
              "A case has one plan, and this is another.",
              "Keep one of them; write a case of its own for the other.",
              List.of(new Diagnostic.Related(first.span(), "the first one is here"))));
    }
    if (first.inline()) {
      return Optional.of(new CasePlan.Inline(first.text().text(), first.text().span()));
    }
    String name = first.text().text();
    Optional<String> wrong = wrongWith(name);
    wrong.ifPresent(
        why ->
            diagnostics.add(
                Problems.error(
                    DiagnosticCode.BAD_FILE_NAME,
                    first.text().span(),
                    why,
                    "Write a name from the folder of this text on, with forward slashes, such as"
                        + " cases/small.json.")));
    return wrong.isPresent()
        ? Optional.empty()
        : Optional.of(new CasePlan.File(name, first.text().span()));
  }

  /** Plans lie in the folder of their cases or below: a text must not reach for other files. */
  private static Optional<String> wrongWith(String name) {
    if (name.isBlank()) {
      return Optional.of("The name of the plan's file is empty.");
    }
    if (name.indexOf('\\') >= 0) {
      return Optional.of("The name of the plan's file has a backslash.");
    }
    if (name.startsWith("/") || name.indexOf(':') >= 0) {
      return Optional.of("The name of the plan's file does not begin at the folder of this text.");
    }
    if (List.of(name.split("/", -1)).contains("..")) {
      return Optional.of("The name of the plan's file leads out of the folder of this text.");
    }
    return Optional.empty();
  }
}
