package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Kind;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Checks {@code let wet room be a room where ...}. */
final class TermChecker {
  /** How many definitions one use of a term may stand for, those within it counted in. */
  static final int MOST_EXPANDED = 200;

  /** Words that would make a phrase with a term in it read in two ways. */
  static final Set<String> SMALL_WORDS =
      Set.of(
          "a",
          "an",
          "the",
          "each",
          "every",
          "some",
          "no",
          "another",
          "other",
          "it",
          "its",
          "of",
          "there",
          "at",
          "least",
          "most",
          "more",
          "less",
          "than",
          "by",
          "number",
          "total",
          "smallest",
          "nearest",
          "per",
          "all",
          "but",
          "largest",
          "average");

  /** A term whose name and kind are good. */
  private record Announced(Statement.Term statement, Kind kind) {}

  private final Dictionary dictionary;
  private final Map<String, Constant> constants;
  private final Terms terms;
  private final OperandReader operands;
  private final List<Diagnostic> diagnostics;
  private final Map<String, Span> places = new HashMap<>();
  private final IdentityHashMap<Statement.Term, Announced> announced = new IdentityHashMap<>();
  private final IdentityHashMap<Object, Integer> sizes;

  TermChecker(
      Dictionary dictionary,
      Map<String, Constant> constants,
      Terms terms,
      OperandReader operands,
      IdentityHashMap<Object, Integer> sizes,
      List<Diagnostic> diagnostics) {
    this.dictionary = dictionary;
    this.constants = constants;
    this.terms = terms;
    this.operands = operands;
    this.sizes = sizes;
    this.diagnostics = diagnostics;
  }

  /** Makes the names of all terms known. */
  void announce(List<Statement> statements) {
    List<Announced> all = new ArrayList<>();
    for (Statement statement : statements) {
      if (statement instanceof Statement.Term term) {
        Optional<Announced> found = announce(term);
        found.ifPresent(all::add);
        found.ifPresent(good -> announced.put(term, good));
      }
    }
    for (Announced term : all) {
      terms.announce(term.kind().singular(), term.kind().plural(), term.kind().noun());
    }
  }

  /** Defines a term; one that is wrong is defined too, to let rules go on. */
  void define(Statement.Term term) {
    Announced found = announced.get(term);
    if (found != null) {
      define(found);
    }
  }

  private Optional<Announced> announce(Statement.Term term) {
    new Fields(term.fields(), diagnostics).refuse(List.of("severity", "stage"), "A term");
    Optional<Noun> noun = noun(term);
    Optional<Diagnostic> problem = noun.flatMap(known -> nameProblem(term, known));
    problem.ifPresent(diagnostics::add);
    if (noun.isEmpty() || problem.isPresent()) {
      return Optional.empty();
    }
    String name = text(term.name());
    places.put(name, term.span());
    String before = name.substring(0, name.length() - noun.get().singular().length());
    return Optional.of(
        new Announced(term, new Kind(noun.get(), name, before + noun.get().plural(), null, true)));
  }

  /** The kind of element after {@code be}. */
  private Optional<Noun> noun(Statement.Term term) {
    List<Word> words = term.kind();
    String first = words.get(0).text();
    boolean article = first.equals("a") || first.equals("an");
    List<Word> rest = article ? words.subList(1, words.size()) : words;
    if (rest.isEmpty()) {
      diagnostics.add(unfinished(words.get(0)));
      return Optional.empty();
    }
    List<Phrase.Item> items = new ArrayList<>();
    rest.forEach(word -> items.add(new Phrase.WordItem(word.text(), word.span())));
    Phrase phrase = new Phrase(items, span(rest));
    PhraseReader reader = operands.reader(phrase);
    Scope scope = Scope.of(new Noun("", "", "", List.of()), "", phrase.span());
    List<Reading<Kind>> kinds = whole(reader, scope, false);
    if (kinds.isEmpty() && !article && term.where().isEmpty()) {
      diagnostics.add(notANumber(words));
      return Optional.empty();
    }
    if (kinds.isEmpty()) {
      diagnostics.add(
          whole(reader, scope, true).stream()
              .findFirst()
              .map(plural -> wrongForm(plural.get(), phrase.span()))
              .orElseGet(() -> unknown(term, phrase, scope)));
      return Optional.empty();
    }
    Noun noun = kinds.get(0).get().noun();
    Optional<Diagnostic> problem = article ? Optional.empty() : Optional.of(noArticle(noun, rest));
    if (problem.isEmpty() && term.where().isEmpty()) {
      problem = Optional.of(noCondition(noun, rest));
    }
    problem.ifPresent(diagnostics::add);
    return problem.isPresent() ? Optional.empty() : Optional.of(noun);
  }

  private static List<Reading<Kind>> whole(PhraseReader reader, Scope scope, boolean plural) {
    return reader.bareNouns(0, scope, plural).stream()
        .filter(reading -> reading.end() == reader.size())
        .toList();
  }

  private static Diagnostic unfinished(Word article) {
    return Problems.error(
        DiagnosticCode.UNFINISHED_PHRASE,
        new Span(article.span().end(), article.span().end()),
        "After " + English.quoted(article.text()) + " comes a kind of element.",
        "Write for example: let wet room be a room where its humidity >= 50 %");
  }

  private static Diagnostic notANumber(List<Word> words) {
    return Problems.error(
        DiagnosticCode.UNREADABLE,
        span(words),
        "After \"be\" comes a number with its unit, or a kind of element, not "
            + English.quoted(English.shortened(text(words)))
            + ".",
        "Write it as: let foam cover be 2 in; or: let wet room be a room where its humidity >= 50"
            + " %");
  }

  private static Diagnostic wrongForm(Kind plural, Span span) {
    return Problems.fixable(
        DiagnosticCode.WRONG_FORM,
        span,
        "A term is said of one " + plural.singular() + " at a time.",
        "Write " + English.quoted(plural.singular()) + ".",
        span,
        plural.singular());
  }

  /** A new reader, so that only nouns are offered. */
  private Diagnostic unknown(Statement.Term term, Phrase phrase, Scope scope) {
    boolean isTerm =
        places.keySet().stream().anyMatch(name -> name.equals(operands.textOf(phrase.span())));
    if (isTerm || operands.textOf(phrase.span()).equals(text(term.name()))) {
      return Problems.error(
          DiagnosticCode.WRONG_ELEMENT,
          phrase.span(),
          "A term is made of a noun of the vocabulary, not of a term.",
          "Name the noun, and the other term in the condition: let cold wet room be a room where it"
              + " is a wet room and ...");
    }
    PhraseReader reader = operands.reader(phrase);
    reader.bareNouns(0, scope, false);
    return reader.failure();
  }

  private static Diagnostic noArticle(Noun noun, List<Word> words) {
    String right = English.withArticle(noun.singular());
    return Problems.fixable(
        DiagnosticCode.MISSING_DETERMINER,
        span(words),
        "Before the kind of element stands \"a\" or \"an\".",
        "Write " + English.quoted(right) + ".",
        span(words),
        right);
  }

  private static Diagnostic noCondition(Noun noun, List<Word> words) {
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        new Span(span(words).end(), span(words).end()),
        "The term does not say which " + noun.plural() + " it means.",
        "Add \"where\" and a condition, such as: let wet room be a room where its humidity >= 50"
            + " %");
  }

  private Optional<Diagnostic> nameProblem(Statement.Term term, Noun noun) {
    String name = text(term.name());
    Span span = span(term.name());
    Constant constant = constants.get(name);
    Span other = constant != null ? constant.span() : places.get(name);
    if (other != null) {
      String kind = constant != null ? "constant" : "term";
      return Optional.of(StandardChecker.repeated(kind, name, span, other));
    }
    for (Word word : term.name()) {
      if (SMALL_WORDS.contains(word.text())) {
        return Optional.of(
            Problems.error(
                DiagnosticCode.NAME_TAKEN,
                word.span(),
                "In the name of a term "
                    + English.quoted(word.text())
                    + " would be read as the language's own word.",
                "Choose another name for the term."));
      }
    }
    if (dictionary.hasPhrase(name)) {
      return Optional.of(taken(name, span, noun));
    }
    if (!name.endsWith(" " + noun.singular())) {
      String right = name + " " + noun.singular();
      return Optional.of(
          Problems.fixable(
              DiagnosticCode.WRONG_FORM,
              span,
              "The name of this term must end in " + English.quoted(noun.singular()) + ".",
              "Write " + English.quoted(right) + ".",
              span,
              right));
    }
    String plural = name.substring(0, name.length() - noun.singular().length()) + noun.plural();
    return dictionary.hasPhrase(plural) || constants.containsKey(plural)
        ? Optional.of(taken(plural, span, noun))
        : Optional.empty();
  }

  private static Diagnostic taken(String name, Span span, Noun noun) {
    return Problems.error(
        DiagnosticCode.NAME_TAKEN,
        span,
        "The words " + English.quoted(name) + " already have a meaning.",
        "Choose another name, such as " + English.quoted("special " + noun) + ".");
  }

  private void define(Announced announced) {
    Statement.Term statement = announced.statement();
    Kind kind = announced.kind();
    terms.begin(kind.singular());
    Span named = span(statement.name());
    Scope scope = Scope.of(kind.noun(), kind.singular(), named);
    Variable element = scope.spoken().get(0).variable();
    Result<Condition> condition =
        statement.where().orElseThrow().accept(ClauseChecker.ofCondition(operands, scope, false));
    diagnostics.addAll(condition.problems());
    Condition usable =
        condition.isOk()
            ? condition.get()
            : new Condition.IsA(
                new Reference.Bound(element), kind.noun(), Optional.empty(), statement.span());
    Fields fields = new Fields(statement.fields(), new ArrayList<>());
    Term term =
        new Term(
            kind.singular(),
            kind.plural(),
            element,
            usable,
            fields.text("because"),
            fields.text("source"),
            statement.span());
    terms.define(term);
    int size = new TermUses(sizes).count(usable) + 1;
    // One that is told of counts as one, so that those that use it are not told of too.
    sizes.put(term, size > MOST_EXPANDED ? 1 : size);
    if (size > MOST_EXPANDED) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.TOO_DEEP,
              named,
              "This term stands on more than " + MOST_EXPANDED + " others, counted each time.",
              "Say it with fewer terms, or name each of them once."));
    }
  }

  private static String text(List<Word> words) {
    return String.join(" ", words.stream().map(Word::text).toList());
  }

  private static Span span(List<Word> words) {
    return words.get(0).span().to(words.get(words.size() - 1).span());
  }
}
