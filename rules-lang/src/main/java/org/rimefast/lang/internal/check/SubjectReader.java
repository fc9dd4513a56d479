package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;

/** Reads what a clause speaks of. */
final class SubjectReader {
  private final OperandReader operands;

  SubjectReader(OperandReader operands) {
    this.operands = operands;
  }

  /** The subjects that an operand can be before this tail. */
  Candidates<Subject> of(Operand operand, Scope scope, Clause.Tail tail) {
    boolean element = !(tail instanceof Clause.Tail.Compare);
    boolean value = tail instanceof Clause.Tail.Compare || tail instanceof Clause.Tail.Be;
    return of(operand, scope, element, value);
  }

  /** The subjects that an operand can be. */
  Candidates<Subject> of(Operand operand, Scope scope, boolean element, boolean value) {
    List<Reading<Subject>> all = new ArrayList<>();
    if (!(operand instanceof Phrase phrase)) {
      Candidates<Value> values = operands.values(operand, scope, null);
      values.readings().forEach(reading -> all.add(quantity(reading)));
      return values.isOk() ? new Candidates<>(all, List.of()) : Candidates.bad(values.problems());
    }
    PhraseReader reader = operands.reader(phrase);
    if (value) {
      reader.values(0, scope, null).stream()
          .filter(reading -> reading.end() == reader.size())
          .forEach(reading -> all.add(quantity(reading)));
    }
    if (element || all.stream().noneMatch(Reading::isOk)) {
      reader.elements(0, scope).stream()
          .filter(reading -> reading.end() == reader.size())
          .forEach(reading -> all.add(element(reading)));
    }
    return Candidates.of(all, reader::failure);
  }

  private static Reading<Subject> quantity(Reading<Value> reading) {
    Result<Subject> subject =
        reading.isOk()
            ? Result.ok(new Subject.Quantity(reading.get(), reading.openings(), reading.scope()))
            : Result.bad(reading.result().problems());
    return new Reading<>(reading.end(), subject, reading.openings(), reading.scope());
  }

  static Reading<Subject> element(Reading<Reference> reading) {
    Result<Subject> subject =
        reading.isOk()
            ? Result.ok(new Subject.Element(reading.get(), reading.openings(), reading.scope()))
            : Result.bad(reading.result().problems());
    return new Reading<>(reading.end(), subject, reading.openings(), reading.scope());
  }
}
