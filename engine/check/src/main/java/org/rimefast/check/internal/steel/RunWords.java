package org.rimefast.check.internal.steel;

import static org.rimefast.check.internal.steel.Kinds.property;

import org.rimefast.check.Dictionary;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;

/** Words for cables and conduits. */
final class RunWords {
  private RunWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            property(Nouns.RUN, "diameter", Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                Given.read(facts.run(element).diameter(), reading),
            (facts, element, arguments, out) ->
                Given.explain(facts, element, facts.run(element).diameter(), "diameter", out))
        .relation(
            Kinds.being(Nouns.RUN, "armoured"),
            (facts, element, arguments) -> Truth.of(facts.run(element).kind().isArmoured()),
            Word.Explainer.NONE);
  }
}
