package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Kind;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.ValueType;

/** Checks {@code table foam cover needed of a box by its mount ...}. */
final class TableChecker {
  private static final int MOST_INPUTS = 8;
  private static final int MOST_ROWS = 500;

  private static final String EXAMPLE =
      "Write it as: table foam cover needed of a box by its mount";

  /** Small words that a name may hold all the same: {@code least bend factor}. */
  private static final Set<String> FINE_WORDS = Set.of("least", "most", "more", "less");

  /** A table whose name and kind of element are good. */
  private record Announced(String name, Noun noun, Span span) {}

  private final Dictionary dictionary;
  private final Map<String, Constant> constants;
  private final Terms terms;
  private final Tables tables;
  private final OperandReader operands;
  private final IdentityHashMap<Object, Integer> sizes;
  private final List<Diagnostic> diagnostics;
  private final IdentityHashMap<Statement.Table, Announced> announced = new IdentityHashMap<>();
  private final Map<String, Span> places = new HashMap<>();

  TableChecker(
      Dictionary dictionary,
      Map<String, Constant> constants,
      Terms terms,
      Tables tables,
      OperandReader operands,
      IdentityHashMap<Object, Integer> sizes,
      List<Diagnostic> diagnostics) {
    this.dictionary = dictionary;
    this.constants = constants;
    this.terms = terms;
    this.tables = tables;
    this.operands = operands;
    this.sizes = sizes;
    this.diagnostics = diagnostics;
  }

  /** Makes the names of all tables known. */
  void announce(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.Table table) {
        new Fields(table.fields(), diagnostics).refuse(List.of("severity", "stage"), "A table");
        Result<Announced> head = head(table);
        diagnostics.addAll(head.problems());
        if (head.isOk()) {
          announced.put(table, head.get());
          places.put(head.get().name(), head.get().span());
          tables.announce(head.get().name(), head.get().noun());
        }
      }
    }
  }

  private Result<Announced> head(Statement.Table table) {
    List<Word> words = table.name();
    int of = 0;
    while (of < words.size() && !words.get(of).text().equals("of")) {
      of++;
    }
    if (of == 0 || of + 1 >= words.size()) {
      Span end = span(words);
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNFINISHED_PHRASE,
              new Span(end.end(), end.end()),
              of == 0
                  ? "The table has no name before \"of\"."
                  : "The table does not say of which kind of element it is.",
              EXAMPLE));
    }
    List<Word> named = words.subList(0, of);
    Result<Noun> noun = noun(words.subList(of + 1, words.size()));
    if (!noun.isOk()) {
      return Result.bad(noun.problems());
    }
    String name = text(named);
    Span span = span(named);
    Optional<Diagnostic> problem = nameProblem(name, named, span);
    return problem.isPresent()
        ? Result.bad(problem.get())
        : Result.ok(new Announced(name, noun.get(), span));
  }

  /** The kind of element after {@code of}, with its article. */
  private Result<Noun> noun(List<Word> words) {
    String first = words.get(0).text();
    boolean article = first.equals("a") || first.equals("an");
    List<Word> rest = article ? words.subList(1, words.size()) : words;
    if (rest.isEmpty()) {
      Span end = span(words);
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNFINISHED_PHRASE,
              new Span(end.end(), end.end()),
              "After " + English.quoted(first) + " comes a kind of element.",
              EXAMPLE));
    }
    List<Phrase.Item> items = new ArrayList<>();
    rest.forEach(word -> items.add(new Phrase.WordItem(word.text(), word.span())));
    Phrase phrase = new Phrase(items, span(rest));
    Scope scope = Scope.of(new Noun("", "", "", List.of()), "", phrase.span());
    PhraseReader reader = operands.reader(phrase);
    Optional<Kind> one = whole(reader, scope, false);
    if (one.isEmpty()) {
      Diagnostic unknown = reader.failure();
      return Result.bad(
          whole(reader, scope, true)
              .map(
                  many ->
                      Problems.fixable(
                          DiagnosticCode.WRONG_FORM,
                          phrase.span(),
                          "A table is of one " + many.singular() + " at a time.",
                          "Write " + English.quoted(many.singular()) + ".",
                          phrase.span(),
                          many.singular()))
              .orElse(unknown));
    }
    if (one.get().isTerm()) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_ELEMENT,
              phrase.span(),
              "A table is of a noun of the vocabulary, not of a term.",
              "Name the noun: " + English.withArticle(one.get().noun().singular()) + "."));
    }
    Noun noun = one.get().noun();
    if (!article) {
      String right = English.withArticle(noun.singular());
      return Result.bad(
          Problems.fixable(
              DiagnosticCode.MISSING_DETERMINER,
              phrase.span(),
              "Before the kind of element stands \"a\" or \"an\".",
              "Write " + English.quoted(right) + ".",
              phrase.span(),
              right));
    }
    return Result.ok(noun);
  }

  private static Optional<Kind> whole(PhraseReader reader, Scope scope, boolean plural) {
    return reader.bareNouns(0, scope, plural).stream()
        .filter(reading -> reading.end() == reader.size())
        .map(Reading::get)
        .findFirst();
  }

  private Optional<Diagnostic> nameProblem(String name, List<Word> words, Span span) {
    Span other = places.get(name);
    if (other != null) {
      return Optional.of(StandardChecker.repeated("table", name, span, other));
    }
    Constant constant = constants.get(name);
    if (constant != null) {
      return Optional.of(StandardChecker.repeated("constant", name, span, constant.span()));
    }
    for (Word word : words) {
      if (TermChecker.SMALL_WORDS.contains(word.text()) && !FINE_WORDS.contains(word.text())) {
        return Optional.of(
            Problems.error(
                DiagnosticCode.NAME_TAKEN,
                word.span(),
                "In the name of a table "
                    + English.quoted(word.text())
                    + " would be read as the language's own word.",
                "Choose another name for the table."));
      }
    }
    return dictionary.hasPhrase(name) || terms.has(name)
        ? Optional.of(
            Problems.error(
                DiagnosticCode.NAME_TAKEN,
                span,
                "The words " + English.quoted(name) + " already have a meaning.",
                "Choose another name, such as " + English.quoted(name + " needed") + "."))
        : Optional.empty();
  }

  /**
   * The table, if nothing is wrong with it. One with a gap or an overlap is known to what stands
   * below all the same, so that only the table is told of.
   */
  Optional<Table> define(Statement.Table statement) {
    Announced head = announced.get(statement);
    if (head == null) {
      return Optional.empty();
    }
    tables.begin(head.name(), head.noun());
    Optional<Table> table = define(statement, head);
    tables.end(head.name(), head.noun());
    return table;
  }

  private Optional<Table> define(Statement.Table statement, Announced head) {
    Optional<Diagnostic> size = size(statement, head);
    if (size.isPresent()) {
      diagnostics.add(size.get());
      return Optional.empty();
    }
    Scope scope = Scope.of(head.noun(), head.noun().singular(), head.span());
    List<Value> inputs = inputs(statement.inputs(), scope);
    Optional<RowChecker.Checked> rows =
        inputs.size() == statement.inputs().size()
            ? new RowChecker(dictionary, inputs, diagnostics).check(statement)
            : Optional.empty();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = statement.inputs().stream().map(this::nameOf).toList();
    Coverage coverage = new Coverage(inputs, names, rows.get().rows());
    List<Diagnostic> faults = coverage.faults(statement, head.span());
    Optional<Table.Otherwise> otherwise = Optional.empty();
    if (rows.get().otherwise().isPresent()) {
      Value result = rows.get().otherwise().get();
      List<List<Table.Cell>> cases = new ArrayList<>();
      if (faults.isEmpty() && !coverage.rest(cases)) {
        faults = List.of(tooManyCases(statement, head));
      }
      otherwise = Optional.of(new Table.Otherwise(result, cases, result.span()));
    }
    diagnostics.addAll(faults);
    Fields fields = new Fields(statement.fields(), new ArrayList<>());
    Table table =
        new Table(
            head.name(),
            scope.spoken().get(0).variable(),
            inputs,
            rows.get().rows(),
            otherwise,
            rows.get().type(),
            fields.text("because"),
            fields.text("source"),
            statement.span());
    tables.define(table);
    return expanded(table, head) && faults.isEmpty() ? Optional.of(table) : Optional.empty();
  }

  private static Diagnostic tooManyCases(Statement.Table statement, Announced head) {
    return Problems.error(
        DiagnosticCode.TOO_DEEP,
        statement.otherwise().map(Statement.Cell::span).orElse(head.span()),
        "What the rows leave for \"otherwise\" falls into more than "
            + Coverage.MOST_CASES
            + " parts.",
        "Say more of it in rows, or make two tables.");
  }

  private static Optional<Diagnostic> size(Statement.Table statement, Announced head) {
    boolean wide = statement.inputs().size() > MOST_INPUTS;
    if (!wide && statement.rows().size() <= MOST_ROWS) {
      return Optional.empty();
    }
    return Optional.of(
        Problems.error(
            DiagnosticCode.TOO_DEEP,
            head.span(),
            wide
                ? "This table depends on more than " + MOST_INPUTS + " values."
                : "This table has more than " + MOST_ROWS + " rows.",
            "Make several tables of it."));
  }

  private List<Value> inputs(List<Operand> written, Scope scope) {
    List<Value> inputs = new ArrayList<>();
    for (Operand operand : written) {
      Result<Reading<Value>> only =
          operands.values(operand, scope, null).only(Readings::exact, Readings::of, operand.span());
      diagnostics.addAll(only.problems());
      if (only.isOk()) {
        Diagnostic problem = inputProblem(only.get(), operand.span());
        if (problem == null) {
          inputs.add(only.get().get());
        } else {
          diagnostics.add(problem);
        }
      }
    }
    return inputs;
  }

  private static @Nullable Diagnostic inputProblem(Reading<Value> reading, Span span) {
    if (!reading.openings().isEmpty()) {
      return Problems.error(
          DiagnosticCode.MISPLACED_DETERMINER,
          span,
          "A table depends on values of one certain element.",
          "Write \"its\", or make one number of many, such as: largest depth of boxes");
    }
    return reading.get().type() instanceof ValueType.Text
        ? Problems.error(
            DiagnosticCode.WRONG_TYPE,
            span,
            "A text cannot be looked up in a table.",
            "Use a number, or a value that is one of a list of words.")
        : null;
  }

  private String nameOf(Operand input) {
    String name = operands.textOf(input.span());
    return name.startsWith("its ") ? name.substring(4) : name;
  }

  private boolean expanded(Table table, Announced head) {
    int size = new TermUses(sizes).count(table.inputs()) + 1;
    boolean fits = size <= TermChecker.MOST_EXPANDED;
    sizes.put(table, fits ? size : 1);
    if (!fits) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.TOO_DEEP,
              head.span(),
              "This table stands on more than "
                  + TermChecker.MOST_EXPANDED
                  + " terms and tables, counted each time.",
              "Say it with fewer of them, or name each of them once."));
    }
    return fits;
  }

  private static String text(List<Word> words) {
    return String.join(" ", words.stream().map(Word::text).toList());
  }

  private static Span span(List<Word> words) {
    return words.get(0).span().to(words.get(words.size() - 1).span());
  }
}
