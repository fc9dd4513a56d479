package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Aggregate.Function;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;

/** Reads {@code number of boxes}, {@code smallest clearance of boxes (where ...)} and the like. */
final class AggregateReader {
  private final PhraseReader phrase;

  AggregateReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  private static @Nullable Function function(String word) {
    return switch (word) {
      case "number" -> Function.COUNT;
      case "total" -> Function.TOTAL;
      case "smallest" -> Function.SMALLEST;
      case "largest" -> Function.LARGEST;
      case "average" -> Function.AVERAGE;
      default -> null;
    };
  }

  void read(int place, Scope scope, List<Reading<Value>> readings) {
    int first = phrase.word(place).equals("the") ? place + 1 : place;
    Function function = function(phrase.word(first));
    if (function == null) {
      return;
    }
    int next = first + 1;
    if (function == Function.COUNT) {
      phrase.misses().at(next, () -> List.of("of"));
      if (phrase.word(next).equals("of")) {
        over(place, next + 1, function, null, scope, readings);
      }
      return;
    }
    phrase.misses().at(next, this::numberWords);
    List<Dictionary.Entry<Property>> entries =
        new ArrayList<>(phrase.dictionary().properties().startingWith(phrase.word(next)));
    for (Dictionary.Entry<Property> entry : entries) {
      for (Reading<List<Argument>> filled :
          PatternReader.read(phrase, entry.parts(), entry.word().slots(), next, scope)) {
        phrase.misses().at(filled.end(), () -> List.of("of"));
        phrase
            .observer()
            .found(phrase.span(next, filled.end()), new Meaning.OfProperty(entry.word()));
        if (!filled.isOk() || !filled.openings().isEmpty()) {
          readings.add(filled.map(arguments -> noOpenings(place, filled.end())));
        } else if (phrase.word(filled.end()).equals("of")) {
          Made made = Made.of(entry.word(), filled.get());
          over(place, filled.end() + 1, function, made, scope, readings);
        }
      }
    }
    for (Tables.Named named : phrase.tables().all()) {
      int end = phrase.matchEnd(named.parts(), next);
      if (end < 0) {
        continue;
      }
      phrase.misses().at(end, () -> List.of("of"));
      if (phrase.word(end).equals("of")) {
        over(place, end + 1, function, made(named), scope, readings);
      }
    }
  }

  /**
   * What each element gives.
   *
   * @param owner which elements have one
   * @param name how it is called: {@code distance to _}
   * @param of what a certain element gives
   */
  private record Made(Noun owner, String name, BiFunction<Reference, Span, Result<Value>> of) {
    static Made of(Property property, List<Argument> arguments) {
      return new Made(
          property.owner(),
          property.pattern(),
          (owner, span) -> Result.ok(new Value.Of(property, owner, arguments, span)));
    }

    String words() {
      return RelationWords.beforeSlot(name);
    }
  }

  private Made made(Tables.Named named) {
    TableReader tables = new TableReader(phrase);
    return new Made(named.noun(), named.name(), (owner, span) -> tables.of(named, owner, span));
  }

  private List<String> numberWords() {
    return phrase.dictionary().vocabulary().properties().stream()
        .filter(property -> property.type() instanceof ValueType.Number)
        .map(property -> RelationWords.beforeSlot(property.pattern()))
        .distinct()
        .toList();
  }

  private Result<Value> noOpenings(int place, int end) {
    return Result.bad(
        Problems.error(
            DiagnosticCode.MISPLACED_DETERMINER,
            phrase.span(place, end),
            "Inside a total or the like, only one certain element can be named.",
            "Write \"it\" or \"the ...\" here."));
  }

  private void over(
      int place,
      int nounAt,
      Function function,
      @Nullable Made made,
      Scope scope,
      List<Reading<Value>> readings) {
    List<PhraseReader.Found<Kind>> plurals = phrase.findKinds(nounAt, true);
    phrase
        .misses()
        .at(
            nounAt,
            () ->
                phrase.kinds().stream()
                    .filter(kind -> made == null || kind.noun().isA(made.owner()))
                    .map(Kind::plural)
                    .toList());
    for (PhraseReader.Found<Kind> found : plurals) {
      Diagnostic early = phrase.early(found, nounAt);
      if (early != null) {
        readings.add(Reading.bad(found.end(), early, scope));
        continue;
      }
      readings.add(aggregate(place, nounAt, found, function, made, scope));
    }
    for (PhraseReader.Found<Kind> found : phrase.findKinds(nounAt, false)) {
      if (!found.word().singular().equals(found.word().plural())) {
        Span span = phrase.span(nounAt, found.end());
        readings.add(
            Reading.bad(
                found.end(),
                Problems.fixable(
                    DiagnosticCode.WRONG_FORM,
                    span,
                    quoted(found.word()) + " is the wrong form here.",
                    "Write " + quoted(found.word().plural()) + ".",
                    span,
                    found.word().plural()),
                scope));
      }
    }
  }

  private Reading<Value> aggregate(
      int place,
      int nounAt,
      PhraseReader.Found<Kind> found,
      Function function,
      @Nullable Made made,
      Scope scope) {
    Kind kind = found.word();
    Variable variable = scope.next(kind.noun());
    Span named = phrase.span(place, found.end());
    Optional<Reading<Condition>> per = new PerReader(phrase).read(found.end(), variable, scope);
    int whereAt = per.map(Reading::end).orElse(found.end());
    Optional<Result<Condition>> where =
        phrase.where(whereAt, scope.inside(variable, kind.singular(), named));
    int end = where.isPresent() ? whereAt + 1 : whereAt;
    phrase.misses().endedAt(end);
    if (per.isPresent() && !per.get().isOk()) {
      return new Reading<>(end, Result.bad(per.get().result().problems()), List.of(), scope);
    }
    if (where.isPresent() && !where.get().isOk()) {
      return new Reading<>(end, Result.bad(where.get().problems()), List.of(), scope);
    }
    Optional<Condition> condition =
        kind.and(
            both(per.map(Reading::get), where.map(Result::get), phrase.span(nounAt, end)),
            variable,
            phrase.span(nounAt, found.end()),
            phrase.span(nounAt, end));
    Span span = phrase.span(place, end);
    if (made == null) {
      ValueType.Number count = ValueType.Number.count();
      return Reading.ok(
          end,
          new Value.Aggregate(function, variable, condition, Optional.empty(), count, span),
          scope);
    }
    return new Reading<>(end, of(function, made, variable, condition, span), List.of(), scope);
  }

  private static Optional<Condition> both(
      Optional<Condition> per, Optional<Condition> where, Span span) {
    return per.isPresent() && where.isPresent()
        ? Optional.of(new Condition.And(List.of(per.get(), where.get()), span))
        : per.or(() -> where);
  }

  private static Result<Value> of(
      Function function, Made made, Variable variable, Optional<Condition> where, Span span) {
    Noun noun = variable.noun();
    if (!noun.isA(made.owner())) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_OWNER,
              span,
              English.sentence(English.withArticle(noun.singular()))
                  + " has no "
                  + made.words()
                  + ".",
              English.sentence(English.withArticle(made.owner().singular())) + " has one."));
    }
    Result<Value> of = made.of().apply(new Reference.Bound(variable), span);
    if (!of.isOk()) {
      return of;
    }
    if (!(of.get().type() instanceof ValueType.Number number)) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_TYPE,
              span,
              "The " + made.name() + " is no number, so it has no " + name(function) + ".",
              "Count instead: number of " + noun.plural() + " (where ...)."));
    }
    if (function == Function.TOTAL && number.dimension().isPoint()) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.BAD_ARITHMETIC,
              span,
              "Temperatures have no total.",
              "Write \"average\", \"smallest\" or \"largest\"."));
    }
    return Result.ok(
        new Value.Aggregate(function, variable, where, Optional.of(of.get()), number, span));
  }

  private static String name(Function function) {
    return switch (function) {
      case TOTAL -> "total";
      case SMALLEST -> "smallest";
      case LARGEST -> "largest";
      case AVERAGE -> "average";
      case NEAREST -> "nearest one";
      case COUNT -> "number";
    };
  }
}
