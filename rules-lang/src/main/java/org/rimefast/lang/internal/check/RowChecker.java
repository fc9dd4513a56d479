package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;

/** Checks the rows of a table, each for itself. */
final class RowChecker {
  /** The rows, what holds otherwise, and the type of the results. */
  record Checked(List<Table.Row> rows, Optional<Value> otherwise, ValueType type) {}

  private final Dictionary dictionary;
  private final List<Value> inputs;
  private final List<Diagnostic> diagnostics;

  RowChecker(Dictionary dictionary, List<Value> inputs, List<Diagnostic> diagnostics) {
    this.dictionary = dictionary;
    this.inputs = inputs;
    this.diagnostics = diagnostics;
  }

  /** Nothing, and diagnostics, if anything is wrong. */
  Optional<Checked> check(Statement.Table statement) {
    int known = diagnostics.size();
    List<Statement.Cell> written = new ArrayList<>();
    List<List<Table.Cell>> cells = new ArrayList<>();
    for (Statement.Row row : statement.rows()) {
      if (row.cells().size() == inputs.size() + 1) {
        cells.add(cells(row));
        written.add(row.cells().get(inputs.size()));
      } else {
        diagnostics.add(wrongCount(row));
      }
    }
    statement.otherwise().ifPresent(written::add);
    List<Value> results = results(written);
    if (diagnostics.size() > known) {
      return Optional.empty();
    }
    List<Table.Row> rows = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      rows.add(new Table.Row(cells.get(i), results.get(i), statement.rows().get(i).span()));
    }
    Optional<Value> otherwise = statement.otherwise().map(cell -> results.get(results.size() - 1));
    return Optional.of(new Checked(rows, otherwise, results.get(0).type()));
  }

  private Diagnostic wrongCount(Statement.Row row) {
    int inputCount = inputs.size();
    return Problems.error(
        DiagnosticCode.WRONG_ROW,
        row.span(),
        "This row has "
            + row.cells().size()
            + (row.cells().size() == 1 ? " cell" : " cells")
            + ", and "
            + (inputCount + 1)
            + " belong here.",
        "Write one cell for each of the "
            + (inputCount == 1 ? "table's one value" : inputCount + " values")
            + " after \"by\", and one for the result; each row begins and ends with |.");
  }

  private List<Table.Cell> cells(Statement.Row row) {
    List<Table.Cell> cells = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Result<Table.Cell> cell = new CellChecker(inputs.get(i)).check(row.cells().get(i));
      diagnostics.addAll(cell.problems());
      if (cell.isOk()) {
        cells.add(cell.get());
      }
    }
    return cells;
  }

  private List<Value> results(List<Statement.Cell> written) {
    List<Value> results = new ArrayList<>();
    Optional<ValueType.Choice> list = Optional.empty();
    if (!written.isEmpty() && written.get(0).parts().get(0) instanceof Statement.CellPart.Words) {
      list = list(written);
      if (list.isEmpty()) {
        return results;
      }
    }
    ValueType first = list.isPresent() ? list.get() : null;
    for (Statement.Cell cell : written) {
      Result<Value> result = result(cell, first);
      diagnostics.addAll(result.problems());
      if (result.isOk()) {
        results.add(result.get());
        first = first == null ? result.get().type() : first;
      }
    }
    return results;
  }

  private static Result<Value> result(Statement.Cell cell, @Nullable ValueType wanted) {
    if (cell.parts().size() > 1
        || (cell.parts().get(0) instanceof Statement.CellPart.Number number
            && number.comparison().isPresent())) {
      return Result.bad(notOneValue(cell));
    }
    Value value;
    if (cell.parts().get(0) instanceof Statement.CellPart.Number number) {
      value = new Value.Literal(number.quantity(), Typing.typeOf(number.quantity()), number.span());
    } else {
      String words = ((Statement.CellPart.Words) cell.parts().get(0)).text();
      if (!(wanted instanceof ValueType.Choice list)) {
        return Result.bad(notOneValue(cell));
      }
      value = new Value.Word(words, list, cell.span());
    }
    Value adapted = wanted == null ? value : Typing.adapt(value, wanted);
    Optional<Diagnostic> mismatch =
        wanted == null
            ? Optional.empty()
            : Typing.mismatch("the result of the first row", wanted, adapted);
    return mismatch.<Result<Value>>map(Result::bad).orElseGet(() -> Result.ok(adapted));
  }

  private static Diagnostic notOneValue(Statement.Cell cell) {
    return Problems.error(
        DiagnosticCode.WRONG_ROW,
        cell.span(),
        "A result is one value.",
        "Write a number with its unit, such as 2 in, or one word of a list; the same kind in each"
            + " row.");
  }

  /** The one list of words that all results belong to. */
  private Optional<ValueType.Choice> list(List<Statement.Cell> written) {
    Set<ValueType.Choice> lists = new LinkedHashSet<>();
    dictionary.vocabulary().properties().forEach(property -> add(property.type(), lists));
    dictionary.vocabulary().relations().stream()
        .flatMap(relation -> relation.slots().stream())
        .forEach(
            slot -> {
              if (slot instanceof Slot.Of of) {
                add(of.type(), lists);
              }
            });
    List<String> words = new ArrayList<>();
    for (Statement.Cell cell : written) {
      if (cell.parts().size() == 1 && cell.parts().get(0) instanceof Statement.CellPart.Words one) {
        words.add(one.text());
        if (!dictionary.choiceWords().contains(one.text())) {
          diagnostics.add(unknown(one));
          return Optional.empty();
        }
      } else {
        diagnostics.add(notOneValue(cell));
        return Optional.empty();
      }
    }
    List<ValueType.Choice> all =
        lists.stream().filter(list -> list.words().containsAll(words)).toList();
    if (all.size() == 1) {
      return Optional.of(all.get(0));
    }
    Span span = written.get(0).span().to(written.get(written.size() - 1).span());
    String said = English.either(words.stream().distinct().map(English::quoted).toList(), 6);
    diagnostics.add(
        all.isEmpty()
            ? Problems.error(
                DiagnosticCode.WRONG_CHOICE,
                span,
                "The results " + said + " are words of no one list.",
                "Use words that one property can be, such as flush and surface.")
            : Problems.error(
                DiagnosticCode.AMBIGUOUS_PHRASE,
                span,
                "The results "
                    + said
                    + " are words of several lists: "
                    + English.either(all.stream().map(ValueType.Choice::name).toList(), 4)
                    + ".",
                "Use numbers, or ask for the words in a choice of values."));
    return Optional.empty();
  }

  private static void add(ValueType type, Set<ValueType.Choice> lists) {
    if (type instanceof ValueType.Choice choice) {
      lists.add(choice);
    }
  }

  private Diagnostic unknown(Statement.CellPart.Words word) {
    List<String> near = Nearest.to(word.text(), dictionary.choiceWords());
    String headline =
        "The result " + English.quoted(English.shortened(word.text())) + " is no word of any list.";
    return near.isEmpty()
        ? Problems.error(
            DiagnosticCode.WRONG_CHOICE,
            word.span(),
            headline,
            "A result is a number with its unit, such as 2 in, or a word that a property can be.")
        : Problems.fixable(
            DiagnosticCode.WRONG_CHOICE,
            word.span(),
            headline,
            "Did you mean " + English.quoted(near.get(0)) + "?",
            word.span(),
            near.get(0));
  }
}
