package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Reads what names an element. */
final class NounReader {
  private final PhraseReader phrase;

  NounReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  /** The words that say how many; {@code next} is the item after them. */
  private record Determiner(
      Quantifier quantifier,
      int number,
      boolean others,
      boolean eitherForm,
      boolean plural,
      int next) {}

  List<Reading<Reference>> elements(int place, Scope scope) {
    List<Reading<Reference>> readings = new ArrayList<>(phrase.references(place, scope));
    Determiner determiner = determiner(place);
    if (determiner != null) {
      quantified(place, determiner, scope, readings);
    } else {
      undetermined(place, scope, readings);
    }
    return readings;
  }

  List<Reading<Kind>> bare(int place, Scope scope, boolean plural) {
    phrase.misses().at(place, () -> phrase.kindWords(plural));
    return phrase.findKinds(place, plural).stream()
        .map(found -> Reading.ok(found.end(), found.word(), scope))
        .toList();
  }

  /** A kind of element with {@code a} or {@code any} before it, meaning all that there are. */
  List<Reading<Argument.Those>> those(int place, Scope scope) {
    String article = phrase.word(place);
    if (!article.equals("a") && !article.equals("an") && !article.equals("any")) {
      phrase.misses().at(place, () -> List.of("a", "any"));
      return List.of();
    }
    Determiner any = new Determiner(Quantifier.SOME, 0, false, false, false, place + 1);
    List<Reading<Reference>> named = new ArrayList<>();
    quantified(place, any, scope, named);
    return named.stream()
        .map(
            reading ->
                reading.isOk()
                    ? Reading.ok(reading.end(), those(reading.openings().get(0)), scope)
                    : new Reading<Argument.Those>(
                        reading.end(), Result.bad(reading.result().problems()), List.of(), scope))
        .toList();
  }

  private static Argument.Those those(Opening opening) {
    return new Argument.Those(opening.variable(), opening.where(), opening.span());
  }

  private @Nullable Determiner determiner(int place) {
    Phrase.Item item = phrase.item(place);
    if (item instanceof Phrase.BoundItem bound && wholeNumber(place + 1) >= 0) {
      return counted(bound.bound(), wholeNumber(place + 1), place + 2);
    }
    return switch (phrase.word(place)) {
      case "a", "an" -> new Determiner(Quantifier.SOME, 0, false, false, false, place + 1);
      case "some" -> withOther(Quantifier.SOME, 0, false, false, place + 1);
      case "each", "every" -> withOther(Quantifier.EACH, 0, false, false, place + 1);
      case "no" -> withOther(Quantifier.NO, 0, true, false, place + 1);
      case "all" -> allBut(place + 1);
      case "another" -> new Determiner(Quantifier.SOME, 0, true, false, false, place + 1);
      default -> null;
    };
  }

  /** The whole number at an item; -1 if there is none, or a negative one. */
  private int wholeNumber(int place) {
    return phrase.item(place) instanceof Phrase.QuantityItem item
            && item.quantity().unit().symbol().isEmpty()
            && item.quantity().number().isWhole()
            && item.quantity().number().numerator().bitLength() < 31
        ? item.quantity().number().numerator().intValue()
        : -1;
  }

  private @Nullable Determiner allBut(int place) {
    if (!phrase.word(place).equals("but")) {
      return null;
    }
    int number = wholeNumber(place + 1);
    if (number < 1) {
      phrase.misses().at(place + 1, () -> List.of("a whole number from 1 on"));
      return null;
    }
    return withOther(Quantifier.ALL_BUT, number, false, number != 1, place + 2);
  }

  private @Nullable Determiner counted(Phrase.Bound bound, int number, int next) {
    boolean plural = number != 1;
    return switch (bound) {
      case AT_LEAST -> withOther(Quantifier.AT_LEAST, number, false, plural, next);
      case AT_MOST -> withOther(Quantifier.AT_MOST, number, false, plural, next);
      case EXACTLY -> withOther(Quantifier.EXACTLY, number, false, plural, next);
      case MORE_THAN -> withOther(Quantifier.AT_LEAST, number + 1, false, plural, next);
      case LESS_THAN ->
          number < 1 ? null : withOther(Quantifier.AT_MOST, number - 1, false, plural, next);
    };
  }

  private Determiner withOther(
      Quantifier quantifier, int number, boolean either, boolean plural, int next) {
    boolean others = phrase.word(next).equals("other");
    return new Determiner(quantifier, number, others, either, plural, others ? next + 1 : next);
  }

  private void quantified(
      int place, Determiner determiner, Scope scope, List<Reading<Reference>> readings) {
    phrase.misses().at(determiner.next(), () -> phrase.kindWords(determiner.plural()));
    for (PhraseReader.Found<Kind> found : phrase.findKinds(determiner.next(), false)) {
      readings.add(one(place, determiner, found, false, scope));
    }
    for (PhraseReader.Found<Kind> found : phrase.findKinds(determiner.next(), true)) {
      if (!found.word().plural().equals(found.word().singular())) {
        readings.add(one(place, determiner, found, true, scope));
      }
    }
  }

  private Reading<Reference> one(
      int place,
      Determiner determiner,
      PhraseReader.Found<Kind> found,
      boolean plural,
      Scope scope) {
    Kind kind = found.word();
    Variable variable = scope.next(kind.noun());
    Span span = phrase.span(place, found.end());
    Optional<Result<Condition>> where =
        phrase.where(found.end(), scope.inside(variable, kind.singular(), span));
    int end = where.isPresent() ? found.end() + 1 : found.end();
    phrase.misses().endedAt(end);
    Diagnostic problem = formProblem(determiner, found, plural, scope);
    if (problem != null) {
      return Reading.bad(end, problem, scope);
    }
    if (where.isPresent() && !where.get().isOk()) {
      return new Reading<>(end, Result.bad(where.get().problems()), List.of(), scope);
    }
    Opening opening =
        new Opening(
            determiner.quantifier(),
            determiner.number(),
            variable,
            determiner.others(),
            kind.and(
                where.map(Result::get),
                variable,
                phrase.span(determiner.next(), found.end()),
                phrase.span(determiner.next(), end)),
            plural,
            phrase.span(place, end));
    return new Reading<>(
        end,
        Result.ok(new Reference.Bound(variable)),
        List.of(opening),
        scope.with(variable, kind.singular(), span));
  }

  private @Nullable Diagnostic formProblem(
      Determiner determiner, PhraseReader.Found<Kind> found, boolean plural, Scope scope) {
    Kind kind = found.word();
    Noun noun = kind.noun();
    Span span = phrase.span(determiner.next(), found.end());
    boolean same = kind.singular().equals(kind.plural());
    if (!determiner.eitherForm() && !same && plural != determiner.plural()) {
      String right = plural ? kind.singular() : kind.plural();
      String wrong = plural ? kind.plural() : kind.singular();
      return Problems.fixable(
          DiagnosticCode.WRONG_FORM,
          span,
          quoted(wrong) + " is the wrong form here.",
          "Write " + quoted(right) + ".",
          span,
          right);
    }
    Diagnostic early = phrase.early(found, determiner.next());
    if (early != null) {
      return early;
    }
    if (determiner.others() && !noun.isA(scope.subject()) && !scope.subject().isA(noun)) {
      return Problems.error(
          DiagnosticCode.MISPLACED_DETERMINER,
          span,
          "The rule is about "
              + English.withArticle(scope.subject().singular())
              + ", which is no "
              + noun
              + ", so there is no other "
              + noun
              + ".",
          "Write " + English.withArticle(noun.singular()) + ".");
    }
    return null;
  }

  /** A noun that stands alone is read with a problem, so that the message can be to the point. */
  private void undetermined(int place, Scope scope, List<Reading<Reference>> readings) {
    phrase
        .misses()
        .at(
            place,
            () -> {
              List<String> words = new ArrayList<>(List.of("it"));
              phrase.kindWords(false).forEach(noun -> words.add(English.withArticle(noun)));
              return words;
            });
    List<PhraseReader.Found<Kind>> found = new ArrayList<>(phrase.findKinds(place, false));
    found.addAll(phrase.findKinds(place, true));
    for (PhraseReader.Found<Kind> bare : found) {
      Kind noun = bare.word();
      Span span = phrase.span(place, bare.end());
      boolean spoken = !scope.named(noun).isEmpty();
      String right = spoken ? "the " + noun : English.withArticle(noun.singular());
      int end = phrase.item(bare.end()) instanceof Phrase.WhereItem ? bare.end() + 1 : bare.end();
      readings.add(
          Reading.bad(
              end,
              Problems.fixable(
                  DiagnosticCode.MISSING_DETERMINER,
                  span,
                  "It is not said which " + noun + " is meant.",
                  "Write "
                      + quoted(right)
                      + ", "
                      + quoted("each " + noun)
                      + " or "
                      + quoted("no " + noun)
                      + ".",
                  span,
                  right),
              scope));
    }
  }
}
