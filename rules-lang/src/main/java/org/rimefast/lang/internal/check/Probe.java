package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Kind;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Tries one statement by itself: what would the compiler say if it stood here? */
public final class Probe {
  private static final int NESTING = 100;

  /**
   * What came of it.
   *
   * @param readable true if it follows the grammar
   * @param diagnostics what is wrong with its shape, or else with its sentence or condition; the
   *     parts around that are not looked at
   */
  public record Outcome(boolean readable, List<Diagnostic> diagnostics) {
    /** Copies the list. */
    public Outcome {
      diagnostics = List.copyOf(diagnostics);
    }
  }

  private final Known known;
  private final Span later;

  /**
   * A probe.
   *
   * @param later what stands from here on in the same file: terms there cannot be used in a term
   */
  public Probe(Known known, Span later) {
    this.known = known;
    this.later = later;
  }

  /** Reads a statement; the spans of what is wrong are offsets in it. */
  public Outcome read(String text, ReadingObserver observer) {
    SourceText source = new SourceText("", text);
    StatementReader.Statements read = StatementReader.read(source, NESTING, 1);
    if (read.statements().size() != 1 || !read.diagnostics().isEmpty()) {
      return new Outcome(false, read.diagnostics());
    }
    Statement statement = read.statements().get(0);
    if (statement instanceof Statement.Rule rule) {
      OperandReader operands = operands(source, known.terms(), observer);
      return new Outcome(true, new SentenceChecker(operands).check(rule.sentence()).problems());
    }
    if (statement instanceof Statement.Term term) {
      List<Term> earlier = known.terms().stream().filter(other -> !isLater(other)).toList();
      return new Outcome(true, term(term, operands(source, earlier, observer)));
    }
    return new Outcome(true, List.of());
  }

  private boolean isLater(Term term) {
    return later.start() < term.span().end() && term.span().start() < later.end();
  }

  private OperandReader operands(SourceText source, List<Term> usable, ReadingObserver observer) {
    Terms terms = new Terms();
    for (Term term : usable) {
      terms.announce(term.singular(), term.plural(), term.noun());
      terms.define(term);
    }
    Constants constants = new Constants(known.constants());
    return new OperandReader(
        known.dictionary(), constants, terms, new Tables(known.tables()), source, observer);
  }

  /** What is wrong with a term's kind of element and condition. */
  private static List<Diagnostic> term(Statement.Term term, OperandReader operands) {
    List<Phrase.Item> items = new ArrayList<>();
    Word first = term.kind().get(0);
    boolean article = first.text().equals("a") || first.text().equals("an");
    for (Word word : term.kind().subList(article ? 1 : 0, term.kind().size())) {
      items.add(new Phrase.WordItem(word.text(), word.span()));
    }
    Span last = term.kind().get(term.kind().size() - 1).span();
    if (items.isEmpty()) {
      return List.of(unfinished(DiagnosticCode.UNFINISHED_PHRASE, last));
    }
    if (!article) {
      return List.of(
          Problems.error(
              DiagnosticCode.MISSING_DETERMINER,
              first.span().to(last),
              "An article is missing.",
              ""));
    }
    Span span = items.get(0).span().to(items.get(items.size() - 1).span());
    PhraseReader reader = operands.reader(new Phrase(items, span));
    Scope none = Scope.of(new Noun("", "", "", List.of()), "", span);
    Optional<Kind> kind =
        reader.bareNouns(0, none, false).stream()
            .filter(reading -> reading.end() == reader.size())
            .map(Reading::get)
            .findFirst();
    if (kind.isEmpty()) {
      return List.of(reader.failure());
    }
    if (kind.get().isTerm()) {
      return List.of(
          Problems.error(DiagnosticCode.WRONG_ELEMENT, span, "A term is made of a noun.", ""));
    }
    Scope scope = Scope.of(kind.get().noun(), kind.get().singular(), span);
    return term.where()
        .map(where -> where.accept(ClauseChecker.ofCondition(operands, scope, false)).problems())
        .orElseGet(() -> List.of(unfinished(DiagnosticCode.MISSING_COMPARISON, last)));
  }

  private static Diagnostic unfinished(DiagnosticCode code, Span last) {
    return Problems.error(code, new Span(last.end(), last.end()), "More must follow here.", "");
  }
}
