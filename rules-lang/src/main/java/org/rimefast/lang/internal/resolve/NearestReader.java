package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;

/** Reads {@code distance to the nearest stud (where ...)}. */
final class NearestReader {
  private final PhraseReader phrase;

  NearestReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  /** What stands at a property's slot: which elements, which of them, and where that ends. */
  private record Nearest(
      Property property, Kind kind, Variable variable, Optional<Condition> where, int end) {}

  void read(int place, Scope scope, List<Reading<Value>> readings) {
    boolean its = phrase.word(place).equals("its");
    int first = its || phrase.word(place).equals("the") ? place + 1 : place;
    for (Dictionary.Entry<Property> entry :
        phrase.dictionary().properties().startingWith(phrase.word(first))) {
      Property property = entry.word();
      if (property.slots().size() == 1
          && property.slots().get(0) instanceof Slot.Element slot
          && property.type() instanceof ValueType.Number) {
        int at = entry.parts().indexOf("_");
        int words = phrase.matchEnd(entry.parts().subList(0, at), first);
        if (words >= 0
            && phrase.word(words).equals("the")
            && phrase.word(words + 1).equals("nearest")) {
          List<String> rest = entry.parts().subList(at + 1, entry.parts().size());
          Reference owner = its ? scope.it() : scope.bare();
          nearest(place, words + 2, property, slot, rest, owner, its, scope, readings);
        }
      }
    }
  }

  private void nearest(
      int place,
      int nounAt,
      Property property,
      Slot.Element slot,
      List<String> rest,
      Reference owner,
      boolean its,
      Scope scope,
      List<Reading<Value>> readings) {
    phrase
        .misses()
        .at(
            nounAt,
            () ->
                phrase.kinds().stream()
                    .filter(kind -> kind.noun().isA(slot.noun()))
                    .map(Kind::singular)
                    .toList());
    for (PhraseReader.Found<Kind> found : phrase.findKinds(nounAt, false)) {
      Kind kind = found.word();
      Variable variable = scope.next(kind.noun());
      Span named = phrase.span(nounAt, found.end());
      Optional<Result<Condition>> where =
          phrase.where(found.end(), scope.inside(variable, kind.singular(), named));
      int after = where.isPresent() ? found.end() + 1 : found.end();
      phrase.misses().endedAt(after);
      int end = phrase.matchEnd(rest, after);
      if (end < 0) {
        continue;
      }
      Diagnostic problem = problem(found, nounAt, slot);
      if (problem != null) {
        readings.add(Reading.bad(end, problem, scope));
      } else if (where.isPresent() && !where.get().isOk()) {
        readings.add(new Reading<>(end, Result.bad(where.get().problems()), List.of(), scope));
      } else {
        Optional<Condition> asked =
            kind.and(where.map(Result::get), variable, named, phrase.span(nounAt, after));
        Nearest nearest = new Nearest(property, kind, variable, asked, end);
        readings.add(
            new Reading<>(end, owned(place, end, nearest, owner, named), List.of(), scope));
        if (!its && phrase.word(end).equals("of")) {
          ofNamedOwner(place, nearest, named, scope, readings);
        }
      }
    }
    for (PhraseReader.Found<Kind> found : phrase.findKinds(nounAt, true)) {
      if (!found.word().singular().equals(found.word().plural())) {
        Span span = phrase.span(nounAt, found.end());
        readings.add(
            Reading.bad(
                found.end(),
                Problems.fixable(
                    DiagnosticCode.WRONG_FORM,
                    span,
                    English.quoted(found.word().plural()) + " is the wrong form here.",
                    "Write " + English.quoted(found.word().singular()) + ": one is the nearest.",
                    span,
                    found.word().singular()),
                scope));
      }
    }
  }

  private @Nullable Diagnostic problem(
      PhraseReader.Found<Kind> found, int nounAt, Slot.Element slot) {
    Diagnostic early = phrase.early(found, nounAt);
    if (early != null) {
      return early;
    }
    if (found.word().noun().isA(slot.noun())) {
      return null;
    }
    return Problems.error(
        DiagnosticCode.WRONG_ELEMENT,
        phrase.span(nounAt, found.end()),
        English.sentence(English.withArticle(found.word().singular()))
            + " cannot stand here, because it is no "
            + slot.noun()
            + ".",
        "Name " + English.withArticle(slot.noun().singular()) + ", without the article.");
  }

  private void ofNamedOwner(
      int place, Nearest nearest, Span named, Scope scope, List<Reading<Value>> readings) {
    phrase.misses().endedAt(nearest.end() + 1);
    for (Reading<Reference> owner : phrase.elements(nearest.end() + 1, scope)) {
      if (!owner.isOk()) {
        readings.add(
            new Reading<>(
                owner.end(), Result.bad(owner.result().problems()), List.of(), owner.scope()));
      } else if (!owner.openings().isEmpty()) {
        readings.add(
            Reading.bad(
                owner.end(),
                Problems.error(
                    DiagnosticCode.MISPLACED_DETERMINER,
                    phrase.span(nearest.end() + 1, owner.end()),
                    "The nearest one is asked of one certain element.",
                    "Write \"it\" or \"the ...\" here, or begin the sentence with \"for each\"."),
                scope));
      } else {
        readings.add(
            new Reading<>(
                owner.end(),
                owned(place, owner.end(), nearest, owner.get(), named),
                List.of(),
                scope));
      }
    }
  }

  /** The smallest over all of them but the owner itself. */
  private Result<Value> owned(int place, int end, Nearest nearest, Reference owner, Span named) {
    Property property = nearest.property();
    Span span = phrase.span(place, end);
    if (!owner.noun().isA(property.owner())) {
      return Result.bad(ValueReader.wrongOwner(phrase, property, owner, span));
    }
    Reference it = new Reference.Bound(nearest.variable());
    List<Condition> asked = new ArrayList<>();
    if (phrase.dictionary().overlap(owner.noun(), nearest.kind().noun())) {
      asked.add(new Condition.Not(new Condition.Same(it, owner, named), named));
    }
    nearest.where().ifPresent(asked::add);
    Optional<Condition> where =
        asked.size() > 1
            ? Optional.of(new Condition.And(asked, named))
            : asked.stream().findFirst();
    Value of = new Value.Of(property, owner, List.of(it), span);
    return Result.ok(
        new Value.Aggregate(
            Value.Aggregate.Function.NEAREST,
            nearest.variable(),
            where,
            Optional.of(of),
            (ValueType.Number) property.type(),
            span));
  }
}
