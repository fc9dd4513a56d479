package org.rimefast.lang.internal.resolve;

import java.util.List;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Reads {@code its foam cover needed}, where that is a table of the standard. */
final class TableReader {
  private final PhraseReader phrase;

  TableReader(PhraseReader phrase) {
    this.phrase = phrase;
  }

  void read(int place, Scope scope, List<Reading<Value>> readings) {
    boolean its = phrase.word(place).equals("its");
    int first = its || phrase.word(place).equals("the") ? place + 1 : place;
    for (Tables.Named named : phrase.tables().all()) {
      if (!named.parts().get(0).equals(phrase.word(first))) {
        continue;
      }
      int end = phrase.matchEnd(named.parts(), first);
      if (end < 0) {
        continue;
      }
      Reference owner = its ? scope.it() : scope.bare();
      readings.add(new Reading<>(end, of(named, owner, phrase.span(place, end)), List.of(), scope));
      if (!its && phrase.word(end).equals("of")) {
        phrase.misses().endedAt(end + 1);
        for (Reading<Reference> other : phrase.elements(end + 1, scope)) {
          Span span = phrase.span(place, other.end());
          readings.add(other.map(reference -> of(named, reference, span)));
        }
      }
    }
  }

  /** The value that a table gives for an element. */
  Result<Value> of(Tables.Named named, Reference owner, Span span) {
    if (!owner.noun().isA(named.noun())) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.WRONG_OWNER,
              span,
              English.sentence(English.withArticle(owner.noun().singular()))
                  + " has no "
                  + named.name()
                  + ".",
              "The table is of "
                  + English.withArticle(named.noun().singular())
                  + ": write whose it is, as in "
                  + English.quoted(named.name() + " of the " + named.noun())
                  + "."));
    }
    Table table = named.table();
    if (table == null) {
      return Result.bad(early(named, span));
    }
    return Result.ok(new Value.Lookup(table, owner, span));
  }

  private Diagnostic early(Tables.Named named, Span span) {
    String name = "The table " + English.quoted(named.name());
    return switch (named.state()) {
      case CURRENT ->
          Problems.error(
              DiagnosticCode.EARLY_TABLE,
              span,
              name + " is used in its own definition.",
              "Name another value: a table can use the vocabulary and the tables before it.");
      case ANNOUNCED ->
          Problems.error(
              DiagnosticCode.EARLY_TABLE,
              span,
              name + " is defined further down.",
              "Put it first: a table or term can use only tables that stand before it.");
      case BROKEN -> {
        phrase.tables().noteUseOfBroken(span);
        yield Problems.error(
            DiagnosticCode.EARLY_TABLE,
            span,
            name + " has mistakes of its own.",
            "Put them right first.");
      }
      case DEFINED -> throw new IllegalStateException("a table without its content: " + named);
    };
  }
}
