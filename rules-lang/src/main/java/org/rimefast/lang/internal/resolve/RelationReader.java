package org.rimefast.lang.internal.resolve;

import static org.rimefast.lang.internal.resolve.PhraseReader.quoted;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;

/** Reads verbs and what follows {@code be}. */
final class RelationReader {
  private final PhraseReader phrase;

  RelationReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  List<Reading<Condition>> relations(
      int place, Scope scope, Reference subject, PhraseReader.Use use) {
    phrase.misses().at(place, () -> expected(subject, use));
    Dictionary dictionary = phrase.dictionary();
    List<Reading<Condition>> readings = new ArrayList<>();
    switch (use) {
      case STATE -> read(dictionary.states(), place, scope, subject, use, false, readings);
      case BASE -> {
        read(dictionary.bases(), place, scope, subject, use, false, readings);
        read(dictionary.thirds(), place, scope, subject, use, true, readings);
      }
      case THIRD -> {
        read(dictionary.thirds(), place, scope, subject, use, false, readings);
        read(dictionary.bases(), place, scope, subject, use, true, readings);
      }
    }
    return readings.stream()
        .filter(broad -> readings.stream().noneMatch(narrow -> hides(narrow, broad)))
        .toList();
  }

  private List<String> expected(Reference subject, PhraseReader.Use use) {
    Relation.Form form = use == PhraseReader.Use.STATE ? Relation.Form.BE : Relation.Form.VERB;
    return phrase.dictionary().vocabulary().relations().stream()
        .filter(relation -> relation.form() == form && subject.noun().isA(relation.subject()))
        .map(use == PhraseReader.Use.THIRD ? Relation::third : Relation::pattern)
        .map(RelationWords::beforeSlot)
        .filter(words -> !words.isEmpty())
        .distinct()
        .toList();
  }

  private void read(
      Dictionary.Table<Relation> table,
      int place,
      Scope scope,
      Reference subject,
      PhraseReader.Use use,
      boolean wrongForm,
      List<Reading<Condition>> readings) {
    List<Dictionary.Entry<Relation>> entries =
        new ArrayList<>(table.startingWith(phrase.word(place)));
    entries.addAll(table.startingWith("_"));
    for (Dictionary.Entry<Relation> entry : entries) {
      Relation relation = entry.word();
      if (wrongForm && relation.third().equals(relation.pattern())) {
        continue;
      }
      Scope owned = scope.withBare(subject);
      for (Reading<List<Argument>> filled :
          PatternReader.read(phrase, entry.parts(), relation.slots(), place, owned)) {
        Span span = phrase.span(place, filled.end());
        phrase.observer().found(span, new Meaning.OfRelation(relation));
        Reading<Condition> reading =
            filled.map(arguments -> holds(relation, subject, arguments, span));
        Diagnostic form = wrongForm ? wrongForm(entry.parts(), relation, use, place) : null;
        readings.add(form == null ? reading : Reading.bad(filled.end(), form, filled.scope()));
      }
    }
  }

  private static Result<Condition> holds(
      Relation relation, Reference subject, List<Argument> arguments, Span span) {
    if (subject.noun().isA(relation.subject())) {
      return Result.ok(new Condition.Holds(relation, subject, arguments, span));
    }
    boolean verb = relation.form() == Relation.Form.VERB;
    return Result.bad(
        Problems.error(
            DiagnosticCode.WRONG_OWNER,
            span,
            English.sentence(English.withArticle(subject.noun().singular()))
                + (verb ? " cannot " : " cannot be ")
                + quoted(RelationWords.beforeSlot(relation.pattern()))
                + ".",
            "That is said of " + English.withArticle(relation.subject().singular()) + "."));
  }

  private Diagnostic wrongForm(
      List<String> parts, Relation relation, PhraseReader.Use use, int place) {
    String right =
        RelationWords.beforeSlot(
            use == PhraseReader.Use.BASE ? relation.pattern() : relation.third());
    int slot = parts.indexOf("_");
    Span span = phrase.span(place, place + (slot < 0 ? parts.size() : slot));
    String written = String.join(" ", slot < 0 ? parts : parts.subList(0, slot));
    return Problems.fixable(
        DiagnosticCode.WRONG_FORM,
        span,
        quoted(written) + " is the wrong form here.",
        "Write " + quoted(right) + ".",
        span,
        right);
  }

  /** Of relations with one pattern, one of a broader kind gives way to one of a narrower. */
  private static boolean hides(Reading<Condition> narrow, Reading<Condition> broad) {
    return narrow.end() == broad.end()
        && narrow.result().node() instanceof Condition.Holds a
        && broad.result().node() instanceof Condition.Holds b
        && !a.relation().equals(b.relation())
        && a.relation().pattern().equals(b.relation().pattern())
        && a.relation().form() == b.relation().form()
        && isNarrower(a.relation(), b.relation());
  }

  private static boolean isNarrower(Relation a, Relation b) {
    boolean strictly = !a.subject().id().equals(b.subject().id());
    if (!a.subject().isA(b.subject())) {
      return false;
    }
    for (int i = 0; i < a.slots().size(); i++) {
      if (a.slots().get(i) instanceof Slot.Element x
          && b.slots().get(i) instanceof Slot.Element y) {
        if (!x.noun().isA(y.noun())) {
          return false;
        }
        strictly |= !x.noun().id().equals(y.noun().id());
      } else if (!a.slots().get(i).equals(b.slots().get(i))) {
        return false;
      }
    }
    return strictly;
  }
}
