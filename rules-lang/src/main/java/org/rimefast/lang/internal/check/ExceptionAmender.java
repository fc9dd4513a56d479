package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Sentence;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;

/** Leaves some elements out of a rule. */
final class ExceptionAmender {
  private final RuleWriter writer;
  private final OperandReader operands;
  private final List<Diagnostic> diagnostics;

  ExceptionAmender(RuleWriter writer, OperandReader operands, List<Diagnostic> diagnostics) {
    this.writer = writer;
    this.operands = operands;
    this.diagnostics = diagnostics;
  }

  Optional<Amending> amend(
      Statement.Amendment amendment,
      Statement.Change.Except except,
      Rule rule,
      Map<String, Constant> own) {
    Scope scope = Scope.of(rule.subject().noun(), called(rule), amendment.rule().span());
    Result<Condition> condition =
        except.condition().accept(ClauseChecker.ofCondition(operands, scope, false));
    diagnostics.addAll(condition.problems());
    if (!condition.isOk()) {
      return Optional.empty();
    }
    RuleWriter.Written written = writer.alone(rule, own);
    RuleWriter.Attempt attempt =
        writer.attempt(written.rule(), sentence(written, except.text()), own);
    if (attempt.written().isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.TOO_DEEP,
              except.condition().span(),
              "With this exception the rule cannot be read: "
                  + attempt.problems().get(0).headline(),
              "Say the exception with a term, or withdraw the rule and write it anew."));
      return Optional.empty();
    }
    Rule amended = attempt.written().get(0).rule();
    requireSame(written.rule(), amended);
    return Optional.of(
        new Amending(
            amended,
            own,
            Change.Kind.EXCEPTION,
            "except " + Readings.exact(condition.get()),
            "",
            "unless " + except.text(),
            Change.Effect.LOOSER));
  }

  /** What the sentence calls its subject: a term where it names one. */
  private static String called(Rule rule) {
    return rule.where()
        .map(where -> where instanceof Condition.And and ? and.parts().get(0) : where)
        .filter(
            first ->
                first instanceof Condition.IsA isA
                    && isA.subject() instanceof Reference.Bound bound
                    && bound.variable().equals(rule.subject()))
        .flatMap(first -> ((Condition.IsA) first).term())
        .map(Term::singular)
        .orElse(rule.subject().noun().singular());
  }

  private static String sentence(RuleWriter.Written written, String exception) {
    String sentence = written.rule().sentence();
    Optional<Sentence.Guard> guard = written.statement().sentence().guard();
    if (guard.isEmpty()) {
      return sentence + " unless " + exception;
    }
    int start = written.rule().sentenceSpan().start();
    String before = sentence.substring(0, guard.get().key().span().start() - start);
    String condition = written.source().textOf(guard.get().condition().span());
    return guard.get().isUnless()
        ? before + "unless (" + condition + ") or (" + exception + ")"
        : before + "if (" + condition + ") and not (" + exception + ")";
  }

  private static void requireSame(Rule before, Rule after) {
    boolean same =
        before.where().map(Readings::exact).equals(after.where().map(Readings::exact))
            && Readings.exact(before.requirement()).equals(Readings.exact(after.requirement()));
    if (!same) {
      throw new IllegalStateException(
          "an exception changed more than that: " + before.sentence() + "; " + after.sentence());
    }
  }
}
