package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;

/** Checks {@code (if ... then ... otherwise ...)}. */
final class ChoiceChecker {
  private static final int MOST_READINGS = 16;

  private final OperandReader operands;

  ChoiceChecker(OperandReader operands) {
    this.operands = operands;
  }

  Candidates<Value> check(Phrase.ConditionalItem choice, Scope scope, @Nullable ValueType wanted) {
    Result<Condition> condition = operands.condition(choice.condition(), scope);
    Candidates<Value> thens = operands.values(choice.then(), scope, wanted);
    Candidates<Value> others = operands.values(choice.otherwise(), scope, wanted);
    List<Diagnostic> problems = new ArrayList<>(condition.problems());
    problems.addAll(thens.problems());
    problems.addAll(others.problems());
    if (!problems.isEmpty()) {
      return Candidates.bad(problems);
    }
    List<Reading<Value>> all = new ArrayList<>();
    for (Reading<Value> then : thens.readings()) {
      for (Reading<Value> otherwise : others.readings()) {
        if (!then.openings().isEmpty() || !otherwise.openings().isEmpty()) {
          return Candidates.bad(noOpenings(choice.span()));
        }
        if (all.size() < MOST_READINGS) {
          Result<Value> value =
              value(condition.get(), then.get(), otherwise.get(), wanted, choice.span());
          all.add(new Reading<>(0, value, List.of(), scope));
        }
      }
    }
    return Candidates.of(
        all,
        () -> {
          throw new IllegalStateException("no readings to choose from");
        });
  }

  private static Result<Value> value(
      Condition condition, Value then, Value otherwise, @Nullable ValueType wanted, Span span) {
    Value a = Typing.adapt(then, wanted == null ? otherwise.type() : wanted);
    Value b = Typing.adapt(otherwise, wanted == null ? then.type() : wanted);
    Optional<Diagnostic> mismatch =
        isPlainNumber(a)
            ? Typing.mismatch("the value after \"otherwise\"", b.type(), a)
            : Typing.mismatch("the value after \"then\"", a.type(), b);
    return mismatch.isPresent()
        ? Result.bad(mismatch.get())
        : Result.ok(
            new Value.Conditional(condition, a, b, Typing.either(a.type(), b.type()), span));
  }

  private static boolean isPlainNumber(Value value) {
    return value instanceof Value.Literal literal
        && literal.quantity().dimension().equals(Dimension.NUMBER);
  }

  private static Diagnostic noOpenings(Span span) {
    return Problems.error(
        DiagnosticCode.MISPLACED_DETERMINER,
        span,
        "In a choice of values, only one certain element can be named.",
        "Write \"it\" or \"the ...\" here, or begin the sentence with \"for each\".");
  }
}
