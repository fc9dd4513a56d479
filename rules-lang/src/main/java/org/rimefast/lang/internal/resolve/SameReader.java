package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Reads {@code the face} after {@code is}, where it asks whether two are one and the same. */
final class SameReader {
  private final PhraseReader phrase;

  SameReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  List<Reading<Condition>> tests(int place, Scope scope, Reference subject) {
    List<Reading<Condition>> readings = new ArrayList<>();
    for (Reading<Reference> other : phrase.references(place, scope)) {
      Span span = phrase.span(place, other.end());
      readings.add(other.map(reference -> same(subject, reference, span)));
    }
    return readings;
  }

  private Result<Condition> same(Reference subject, Reference other, Span span) {
    if (subject.equals(other)) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.EMPTY_TEST,
              span,
              "Both sides are the same " + other.noun() + ", so this asks nothing.",
              "Name the "
                  + other.noun()
                  + " of another element, such as: "
                  + other.noun()
                  + " of the box"));
    }
    if (!phrase.dictionary().overlap(subject.noun(), other.noun())) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.EMPTY_TEST,
              span,
              "No "
                  + subject.noun()
                  + " is "
                  + English.withArticle(other.noun().singular())
                  + ", so this never holds.",
              "Name " + English.withArticle(subject.noun().singular()) + " here."));
    }
    return Result.ok(new Condition.Same(subject, other, span));
  }
}
