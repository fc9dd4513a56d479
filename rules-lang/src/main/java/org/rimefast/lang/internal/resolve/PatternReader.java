package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;

/** Reads a pattern of words and slots. */
final class PatternReader {
  private PatternReader() {}

  /** Every way in which the pattern stands at an item. */
  static List<Reading<List<Argument>>> read(
      PhraseReader phrase, List<String> parts, List<Slot> slots, int place, Scope scope) {
    List<Reading<List<Argument>>> readings = new ArrayList<>();
    readings.add(Reading.ok(place, List.of(), scope));
    int slot = 0;
    for (int i = 0; i < parts.size(); i++) {
      String part = parts.get(i);
      List<String> rest = parts.subList(i, parts.size());
      List<Reading<List<Argument>>> next = new ArrayList<>();
      boolean isSlot = part.equals("_");
      for (Reading<List<Argument>> reading : readings) {
        phrase.step();
        if (isSlot) {
          filled(phrase, reading, slots.get(slot), next);
        } else if (phrase.word(reading.end()).equals(part)) {
          phrase.misses().endedAt(reading.end() + 1);
          next.add(reading.endingAt(reading.end() + 1));
        } else if (reading.end() > place) {
          phrase.misses().at(reading.end(), () -> List.of(part), () -> List.of(upToSlot(rest)));
        }
      }
      slot += isSlot ? 1 : 0;
      readings = next;
      if (readings.isEmpty()) {
        break;
      }
    }
    return readings;
  }

  private static String upToSlot(List<String> parts) {
    int slot = parts.indexOf("_");
    return String.join(" ", slot < 0 ? parts : parts.subList(0, slot));
  }

  private static void filled(
      PhraseReader phrase,
      Reading<List<Argument>> before,
      Slot slot,
      List<Reading<List<Argument>>> readings) {
    for (Reading<? extends Argument> argument : arguments(phrase, before, slot)) {
      List<Diagnostic> problems = new ArrayList<>(before.result().problems());
      problems.addAll(argument.result().problems());
      List<Opening> openings = new ArrayList<>(before.openings());
      openings.addAll(argument.openings());
      Result<List<Argument>> result;
      if (problems.isEmpty()) {
        List<Argument> all = new ArrayList<>(before.get());
        all.add(argument.get());
        result = Result.ok(List.copyOf(all));
      } else {
        result = Result.bad(problems);
      }
      readings.add(new Reading<>(argument.end(), result, openings, argument.scope()));
    }
  }

  private static List<? extends Reading<? extends Argument>> arguments(
      PhraseReader phrase, Reading<List<Argument>> before, Slot slot) {
    int place = before.end();
    if (slot instanceof Slot.Element element) {
      return phrase.elements(place, before.scope()).stream()
          .map(reading -> reading.map(reference -> ofKind(phrase, reading, reference, element)))
          .toList();
    }
    if (slot instanceof Slot.Along along) {
      return stretches(phrase, place, before.scope(), along);
    }
    if (slot instanceof Slot.Kind kind) {
      return phrase.those(place, before.scope()).stream()
          .map(reading -> reading.map(those -> ofKind(phrase, reading, those, kind)))
          .toList();
    }
    ValueType wanted = ((Slot.Of) slot).type();
    List<Reading<Value>> found = phrase.values(place, before.scope(), wanted);
    return found.stream().map(reading -> reading.map(value -> ofType(value, wanted))).toList();
  }

  /** The stretches of a path that stand at an item. */
  private static List<Reading<Argument.Along>> stretches(
      PhraseReader phrase, int place, Scope scope, Slot.Along slot) {
    phrase.misses().at(place, () -> firstWords(phrase, slot));
    List<Reading<Argument.Along>> readings = new ArrayList<>();
    for (Dictionary.Entry<Stretch> entry :
        phrase.dictionary().stretches().startingWith(phrase.word(place))) {
      Stretch stretch = entry.word();
      if (slot.path().isA(stretch.path())) {
        for (Reading<List<Argument>> filled :
            read(phrase, entry.parts(), stretch.slots(), place, scope)) {
          Span span = phrase.span(place, filled.end());
          phrase.observer().found(span, new Meaning.OfStretch(stretch));
          readings.add(
              filled.map(arguments -> Result.ok(new Argument.Along(stretch, arguments, span))));
        }
      }
    }
    return readings;
  }

  private static List<String> firstWords(PhraseReader phrase, Slot.Along slot) {
    return phrase.dictionary().vocabulary().stretches().stream()
        .filter(stretch -> slot.path().isA(stretch.path()))
        .map(stretch -> RelationWords.beforeSlot(stretch.pattern()))
        .toList();
  }

  private static Result<Argument.Those> ofKind(
      PhraseReader phrase,
      Reading<Argument.Those> reading,
      Argument.Those those,
      Slot.Kind wanted) {
    Noun noun = those.variable().noun();
    return noun.isA(wanted.noun())
        ? Result.ok(those)
        : Result.bad(wrongKind(phrase, reading.end(), noun, wanted.noun()));
  }

  private static Result<Reference> ofKind(
      PhraseReader phrase, Reading<Reference> reading, Reference reference, Slot.Element element) {
    Noun noun = reference.noun();
    return noun.isA(element.noun())
        ? Result.ok(reference)
        : Result.bad(wrongKind(phrase, reading.end(), noun, element.noun()));
  }

  private static Diagnostic wrongKind(PhraseReader phrase, int end, Noun found, Noun wanted) {
    return Problems.error(
        DiagnosticCode.WRONG_ELEMENT,
        phrase.span(Math.max(end - 1, 0), end),
        English.sentence(English.withArticle(found.singular()))
            + " cannot stand here, because it is no "
            + wanted
            + ".",
        "Name " + English.withArticle(wanted.singular()) + ".");
  }

  private static Result<Value> ofType(Value value, ValueType wanted) {
    Value adapted = Typing.adapt(value, wanted);
    Optional<Diagnostic> mismatch = Typing.mismatch("what belongs here", wanted, adapted);
    return mismatch.<Result<Value>>map(Result::bad).orElseGet(() -> Result.ok(adapted));
  }
}
