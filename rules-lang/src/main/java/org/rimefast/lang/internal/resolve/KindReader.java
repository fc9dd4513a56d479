package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Reads {@code a wall} after {@code is}, where it asks of what kind an element is. */
final class KindReader {
  private static final Set<String> OTHER_DETERMINERS =
      Set.of("the", "each", "every", "some", "no", "another", "any", "all");

  private final PhraseReader phrase;

  KindReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  List<Reading<Condition>> tests(int place, Scope scope, Reference subject, boolean plural) {
    if (phrase.word(place).equals("it") || phrase.word(place).equals("its")) {
      // That names one certain element, not a kind.
      return List.of();
    }
    boolean article = phrase.word(place).equals("a") || phrase.word(place).equals("an");
    if (plural == article || OTHER_DETERMINERS.contains(phrase.word(place))) {
      return withoutArticle(place, scope, plural);
    }
    int first = article ? place + 1 : place;
    phrase.misses().at(first, () -> phrase.kindWords(plural));
    List<Reading<Condition>> readings = new ArrayList<>();
    for (PhraseReader.Found<Kind> found : phrase.findKinds(first, plural)) {
      Phrase.Item next = phrase.item(found.end());
      int end = next instanceof Phrase.WhereItem ? found.end() + 1 : found.end();
      Span span = phrase.span(place, found.end());
      Diagnostic problem = problem(found, first, end, subject, span);
      readings.add(
          problem != null
              ? Reading.bad(end, problem, scope)
              : Reading.ok(
                  end,
                  new Condition.IsA(
                      subject, found.word().noun(), Optional.ofNullable(found.word().term()), span),
                  scope));
    }
    for (PhraseReader.Found<Kind> found : phrase.findKinds(first, !plural)) {
      Kind kind = found.word();
      if (!kind.singular().equals(kind.plural())) {
        readings.add(wrongForm(found, first, plural, scope));
      }
    }
    return readings;
  }

  /** One thing is a stud, and several are studs; nothing else can stand before the kind. */
  private List<Reading<Condition>> withoutArticle(int place, Scope scope, boolean plural) {
    boolean bare = phrase.findKinds(place, false).size() + phrase.findKinds(place, true).size() > 0;
    int first = bare ? place : place + 1;
    List<PhraseReader.Found<Kind>> all = new ArrayList<>(phrase.findKinds(first, false));
    all.addAll(phrase.findKinds(first, true));
    List<Reading<Condition>> readings = new ArrayList<>();
    for (PhraseReader.Found<Kind> found : all) {
      Kind kind = found.word();
      String right = plural ? kind.plural() : English.withArticle(kind.singular());
      Span span = phrase.span(place, found.end());
      readings.add(
          Reading.bad(
              found.end(),
              phrase.word(place).equals("no")
                  ? Problems.error(
                      DiagnosticCode.MISPLACED_DETERMINER,
                      span,
                      "\"no\" does not ask of what kind something is.",
                      "Write \"not\" and the kind: not " + right)
                  : Problems.fixable(
                      bare && !plural
                          ? DiagnosticCode.MISSING_DETERMINER
                          : DiagnosticCode.MISPLACED_DETERMINER,
                      span,
                      "This does not ask of what kind something is.",
                      "Write " + quoted(right) + ".",
                      span,
                      right),
              scope));
    }
    return readings;
  }

  private Reading<Condition> wrongForm(
      PhraseReader.Found<Kind> found, int first, boolean plural, Scope scope) {
    Kind kind = found.word();
    Span span = phrase.span(first, found.end());
    String wrong = plural ? kind.singular() : kind.plural();
    String right = plural ? kind.plural() : kind.singular();
    return Reading.bad(
        found.end(),
        Problems.fixable(
            DiagnosticCode.WRONG_FORM,
            span,
            quoted(wrong) + " is the wrong form here.",
            "Write " + quoted(right) + ".",
            span,
            right),
        scope);
  }

  private @Nullable Diagnostic problem(
      PhraseReader.Found<Kind> found, int first, int end, Reference subject, Span span) {
    Kind kind = found.word();
    Diagnostic early = phrase.early(found, first);
    if (early != null) {
      return early;
    }
    if (end > found.end()) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_WORD,
          phrase.span(found.end(), end),
          "A kind that is asked for has no \"where\" of its own.",
          "Join the two with \"and\": it is "
              + English.withArticle(kind.singular())
              + " and ...; or define a term with \"let\".");
    }
    Noun of = subject.noun();
    if (!kind.isTerm() && of.isA(kind.noun())) {
      return Problems.error(
          DiagnosticCode.EMPTY_TEST,
          span,
          "Every " + of + " is " + English.withArticle(kind.singular()) + ", so this asks nothing.",
          "Name a narrower kind, or leave it out.");
    }
    if (!phrase.dictionary().overlap(of, kind.noun())) {
      return Problems.error(
          DiagnosticCode.EMPTY_TEST,
          span,
          "No " + of + " is " + English.withArticle(kind.singular()) + ", so this never holds.",
          "It is said of the " + of + ": ask for a kind of " + of + ", or of another element.");
    }
    return null;
  }
}
