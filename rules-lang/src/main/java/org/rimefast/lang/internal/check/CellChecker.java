package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.TypeNames;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Checks the cells of one column of a table, which say what an input must be. */
final class CellChecker {
  private final Value input;

  CellChecker(Value input) {
    this.input = input;
  }

  Result<Table.Cell> check(Statement.Cell cell) {
    if (cell.parts().size() == 1
        && cell.parts().get(0) instanceof Statement.CellPart.Words words
        && words.text().equals("any")) {
      return Result.ok(new Table.Cell.Any());
    }
    for (Clause.Conjunction conjunction : cell.conjunctions()) {
      if (conjunction.isAnd() != cell.conjunctions().get(0).isAnd()) {
        return Result.bad(mixed(cell, conjunction.span()));
      }
    }
    return input.type() instanceof ValueType.Choice choice
        ? words(cell, choice)
        : numbers(cell, (ValueType.Number) input.type());
  }

  private static Diagnostic mixed(Statement.Cell cell, Span span) {
    return Problems.related(
        DiagnosticCode.MIXED_AND_OR,
        span,
        "\"and\" and \"or\" stand in one cell, which can be understood in two ways.",
        "Make two rows of it.",
        List.of(
            new Diagnostic.Related(cell.conjunctions().get(0).span(), "the other one is here")));
  }

  private Result<Table.Cell> words(Statement.Cell cell, ValueType.Choice choice) {
    if (!cell.conjunctions().isEmpty() && cell.conjunctions().get(0).isAnd()) {
      return Result.bad(
          Problems.fixable(
              DiagnosticCode.WRONG_ROW,
              cell.conjunctions().get(0).span(),
              "It cannot be two words at once.",
              "Join words with \"or\".",
              cell.conjunctions().get(0).span(),
              "or"));
    }
    Set<String> words = new LinkedHashSet<>();
    for (Statement.CellPart limit : cell.parts()) {
      if (!(limit instanceof Statement.CellPart.Words word)) {
        return Result.bad(
            Problems.error(
                DiagnosticCode.WRONG_CHOICE,
                limit.span(),
                "A number stands here, and " + Readings.of(input) + " is one of a list of words.",
                "It can be " + English.either(choice.words(), 8) + "."));
      }
      if (!choice.words().contains(word.text())) {
        return Result.bad(unknown(word, choice));
      }
      words.add(word.text());
    }
    // In the order of the list, so that the same words make the same cell.
    return Result.ok(
        new Table.Cell.Words(choice.words().stream().filter(words::contains).toList()));
  }

  private Diagnostic unknown(Statement.CellPart.Words word, ValueType.Choice choice) {
    List<String> near = Nearest.to(word.text(), choice.words());
    String headline =
        English.sentence(Readings.of(input))
            + " cannot be "
            + English.quoted(English.shortened(word.text()))
            + ".";
    String all = "It can be " + English.either(choice.words(), 8) + ".";
    return near.isEmpty()
        ? Problems.error(DiagnosticCode.WRONG_CHOICE, word.span(), headline, all)
        : Problems.fixable(
            DiagnosticCode.WRONG_CHOICE,
            word.span(),
            headline,
            "Did you mean " + English.quoted(near.get(0)) + "? " + all,
            word.span(),
            near.get(0));
  }

  private Result<Table.Cell> numbers(Statement.Cell cell, ValueType.Number type) {
    List<Table.Range> ranges = new ArrayList<>();
    for (Statement.CellPart limit : cell.parts()) {
      Result<Table.Range> range = range(limit, type);
      if (!range.isOk()) {
        return Result.bad(range.problems());
      }
      ranges.add(range.get());
    }
    boolean all = !cell.conjunctions().isEmpty() && cell.conjunctions().get(0).isAnd();
    if (!all) {
      return Result.ok(new Table.Cell.Numbers(Ranges.union(ranges)));
    }
    Optional<Table.Range> common = Ranges.intersection(ranges);
    return common.isPresent()
        ? Result.ok(new Table.Cell.Numbers(List.of(common.get())))
        : Result.bad(
            Problems.error(
                DiagnosticCode.UNREACHABLE_ROW,
                cell.span(),
                "No number is all of this at once, so the row is never reached.",
                "Turn a sign round, or join the parts with \"or\"."));
  }

  private Result<Table.Range> range(Statement.CellPart limit, ValueType.Number type) {
    if (!(limit instanceof Statement.CellPart.Number number)) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_TYPE,
              limit.span(),
              "A word stands here, and " + Readings.of(input) + " is " + TypeNames.of(type) + ".",
              "Write a number, with a sign before it or none, or \"any\"."));
    }
    Value literal =
        Typing.adapt(
            new Value.Literal(number.quantity(), Typing.typeOf(number.quantity()), limit.span()),
            type);
    Optional<Diagnostic> mismatch = Typing.mismatch(Readings.of(input), type, literal);
    if (mismatch.isPresent()) {
      return Result.bad(mismatch.get());
    }
    Comparison comparison = number.comparison().orElse(Comparison.EQUAL);
    if (comparison == Comparison.NOT_EQUAL) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_ROW,
              limit.span(),
              "The sign != cannot stand in a cell.",
              "Write < or > and the number, joined by \"or\": < 2 in or > 2 in."));
    }
    return Result.ok(Ranges.of(comparison, (Value.Literal) literal));
  }
}
