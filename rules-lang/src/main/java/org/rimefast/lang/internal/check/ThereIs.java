package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Quantity;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

/** Checks {@code there is a bracket (where ...)}. */
final class ThereIs {
  private final OperandReader operands;
  private final Scope scope;

  ThereIs(OperandReader operands, Scope scope) {
    this.operands = operands;
    this.scope = scope;
  }

  static boolean isThere(Operand operand) {
    return operand instanceof Phrase phrase
        && phrase.items().size() == 1
        && phrase.items().get(0) instanceof Phrase.WordItem word
        && word.text().equals("there");
  }

  Result<Condition> check(Clause.Tail tail, List<Clause.With> withs, Span span, boolean base) {
    if (!(tail instanceof Clause.Tail.Be be)
        || !withs.isEmpty()
        || !(be.operand().orElse(null) instanceof Phrase phrase)) {
      return Result.bad(unclear(span));
    }
    PhraseReader reader = operands.reader(phrase);
    List<Reading<Reference>> whole =
        reader.elements(0, scope).stream().filter(r -> r.end() == reader.size()).toList();
    Candidates<Reference> candidates = Candidates.of(whole, reader::failure);
    if (!candidates.isOk()) {
      return Result.bad(candidates.problems());
    }
    List<Opening> openings = candidates.readings().get(0).openings();
    if (openings.size() != 1 || isOfAll(openings.get(0).quantifier())) {
      return Result.bad(unclear(span));
    }
    Opening opening = openings.get(0);
    String right = base ? "be" : opening.plural() ? "are" : "is";
    if (!be.verb().text().equals(right)) {
      return Result.bad(
          Problems.fixable(
              DiagnosticCode.WRONG_FORM,
              be.verb().span(),
              English.quoted(be.verb().text()) + " is the wrong form here.",
              "Write " + English.quoted(right) + ".",
              be.verb().span(),
              right));
    }
    if (be.not() && opening.quantifier() == Quantifier.NO) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNCLEAR_NOT,
              span,
              "\"not\" and \"no\" stand in one clause.",
              "Say it with one of them."));
    }
    Result<Condition> exists = exists(opening, span);
    return be.not() && exists.isOk() ? Result.ok(new Condition.Not(exists.get(), span)) : exists;
  }

  private static boolean isOfAll(Quantifier quantifier) {
    return quantifier == Quantifier.EACH || quantifier == Quantifier.ALL_BUT;
  }

  private static Diagnostic unclear(Span span) {
    return Problems.error(
        DiagnosticCode.MISPLACED_DETERMINER,
        span,
        "After \"there\" comes \"is\", and then \"a\", \"no\" or a number with a noun.",
        "Write for example: there is a bracket (where it holds the box)");
  }

  private static Result<Condition> exists(Opening opening, Span span) {
    if (opening.where().isPresent()) {
      return Result.ok(
          new Condition.Quantified(
              opening.quantifier(),
              opening.number(),
              opening.variable(),
              opening.others(),
              Optional.empty(),
              opening.where().get(),
              span));
    }
    if (opening.others()) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNFINISHED_PHRASE,
              opening.span(),
              "It is not said which other " + opening.variable().noun() + " counts.",
              "Add a condition: another " + opening.variable().noun() + " (where ...)"));
    }
    return Result.ok(counted(opening, span));
  }

  /** With nothing asked of them, they are counted. */
  private static Condition counted(Opening opening, Span span) {
    Comparison comparison =
        switch (opening.quantifier()) {
          case SOME, AT_LEAST -> Comparison.AT_LEAST;
          case AT_MOST -> Comparison.AT_MOST;
          case NO, EXACTLY -> Comparison.EQUAL;
          case EACH, ALL_BUT -> throw new IllegalStateException("all after there");
        };
    int number = opening.quantifier() == Quantifier.SOME ? 1 : opening.number();
    Quantity limit = new Quantity(Rational.of(number), Units.ONE, Integer.toString(number));
    Value count =
        new Value.Aggregate(
            Value.Aggregate.Function.COUNT,
            opening.variable(),
            Optional.empty(),
            Optional.empty(),
            ValueType.Number.count(),
            opening.span());
    return new Condition.Compare(
        count, comparison, new Value.Literal(limit, Typing.typeOf(limit), opening.span()), span);
  }
}
