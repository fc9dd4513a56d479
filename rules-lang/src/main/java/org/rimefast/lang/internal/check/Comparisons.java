package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Opening;
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
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Reads comparisons. */
final class Comparisons {
  private final OperandReader operands;

  Comparisons(OperandReader operands) {
    this.operands = operands;
  }

  /** {@code clearance >= 50 mm} or {@code clearance of at least 50 mm}. */
  Candidates<Condition> of(Operand operand, Optional<Clause.Sign> sign, Scope scope) {
    if (sign.isPresent()) {
      Span span = operand.span().to(sign.get().right().span());
      return of(operand, sign.get().comparison(), sign.get().right(), scope, span);
    }
    Optional<BoundSplit> split = BoundSplit.of(operand);
    if (split.isEmpty()) {
      return Candidates.bad(unfinished(operand, scope));
    }
    if (split.get().left().isEmpty()) {
      return Candidates.bad(nothingBefore(split.get().bound()));
    }
    if (split.get().right().isEmpty()) {
      return Candidates.bad(nothingAfter(split.get().bound()));
    }
    return of(
        split.get().left().get(),
        split.get().comparison(),
        split.get().right().get(),
        scope,
        operand.span());
  }

  static Diagnostic nothingBefore(Span bound) {
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        bound,
        "It is not said what is compared.",
        "Name it, and name it again in each part: clearance of at least 50 mm; or: clearance is"
            + " at least 50 mm and clearance is at most 80 mm");
  }

  static Diagnostic nothingAfter(Span bound) {
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        bound,
        "The limit is missing here.",
        "Write for example: at least 50 mm");
  }

  private Diagnostic unfinished(Operand operand, Scope scope) {
    Candidates<Value> values = operands.values(operand, scope, null);
    if (!values.isOk()) {
      return values.problems().get(0);
    }
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        operand.span(),
        "It is not said what " + Readings.of(values.readings().get(0).get()) + " is compared with.",
        "Write for example: clearance >= 50 mm");
  }

  private Candidates<Condition> of(
      Operand left, Comparison comparison, Operand right, Scope scope, Span span) {
    Candidates<Value> lefts = operands.values(left, scope, null);
    if (!lefts.isOk()) {
      return Candidates.bad(lefts.problems());
    }
    List<Reading<Condition>> all = new ArrayList<>();
    for (Reading<Value> reading : lefts.readings()) {
      all.addAll(with(reading, comparison, right, span));
    }
    return Candidates.of(all, () -> Comparisons.impossible(span));
  }

  /** A left side that is known, compared with what is still to be read. */
  List<Reading<Condition>> with(
      Reading<Value> left, Comparison comparison, Operand right, Span span) {
    Candidates<Value> rights = operands.values(right, left.scope(), left.get().type());
    if (!rights.isOk()) {
      return List.of(
          new Reading<>(
              0, Result.bad(choiceProblem(left.get(), right, rights)), List.of(), left.scope()));
    }
    List<Reading<Condition>> all = new ArrayList<>();
    for (Reading<Value> reading : rights.readings()) {
      Result<Condition> compared = Typing.compare(left.get(), comparison, reading.get(), span);
      List<Opening> openings = OperandReader.join(left.openings(), reading.openings());
      all.add(new Reading<>(0, compared, openings, reading.scope()));
    }
    return all;
  }

  private static Diagnostic impossible(Span span) {
    throw new IllegalStateException("no reading to compare at " + span);
  }

  /** Where one of a list of words belongs, the message names the list. */
  private static List<Diagnostic> choiceProblem(
      Value left, Operand right, Candidates<Value> rights) {
    boolean unknown =
        rights.problems().stream()
            .allMatch(
                p ->
                    p.code() == DiagnosticCode.UNKNOWN_WORD
                        || p.code() == DiagnosticCode.UNFINISHED_PHRASE);
    if (!unknown
        || !(left.type() instanceof ValueType.Choice choice)
        || !(right instanceof Phrase phrase)
        || !phrase.items().stream().allMatch(Phrase.WordItem.class::isInstance)) {
      return rights.problems();
    }
    List<String> written =
        phrase.items().stream().map(item -> ((Phrase.WordItem) item).text()).toList();
    String word = String.join(" ", written);
    List<String> near = Nearest.to(word, choice.words());
    String headline =
        English.sentence(Readings.of(left))
            + " cannot be "
            + English.quoted(English.shortened(word))
            + ".";
    if (near.isEmpty()) {
      return List.of(
          Problems.error(
              DiagnosticCode.WRONG_CHOICE,
              right.span(),
              headline,
              "It can be " + English.either(choice.words(), 8) + "."));
    }
    return List.of(
        Problems.fixable(
            DiagnosticCode.WRONG_CHOICE,
            right.span(),
            headline,
            "Did you mean "
                + English.quoted(near.get(0))
                + "? It can be "
                + English.either(choice.words(), 8)
                + ".",
            right.span(),
            near.get(0)));
  }
}
