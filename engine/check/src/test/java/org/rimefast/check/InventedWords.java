package org.rimefast.check;

import java.util.List;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Unit;

/** The steel vocabulary and more words, worked out by a test; NaN is a missing value. */
final class InventedWords {
  private final Dictionary.Builder words = Given.DICTIONARY.toBuilder();

  Dictionary build() {
    return words.build();
  }

  /** A number that is worked out, in SI units; NaN if it is missing. */
  InventedWords measured(Noun owner, String phrase, Unit unit, Measured value) {
    words.number(
        property(owner, phrase, new ValueType.Number(unit.dimension(), unit)),
        (facts, element, arguments, out) -> out.exactly(value.of(facts, element)),
        (facts, element, arguments, out) -> {
          if (Double.isNaN(value.of(facts, element))) {
            out.missing(facts.missing(element, phrase));
          }
        });
    return this;
  }

  /** For what has no short way here. */
  Dictionary.Builder words() {
    return words;
  }

  /** Works a number out. */
  @FunctionalInterface
  interface Measured {
    double of(PlanFacts facts, int element);
  }

  static String id(PlanFacts facts, int element) {
    return facts.name(element).id();
  }

  private static Property property(Noun owner, String phrase, ValueType type) {
    return new Property(owner.id() + "." + phrase, phrase, owner, List.of(), type);
  }
}
