package org.rimefast.check.internal.reference;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.Arguments;
import org.rimefast.check.Explanation;
import org.rimefast.check.Reading;
import org.rimefast.check.Stretches;
import org.rimefast.check.Word;
import org.rimefast.lang.rule.Reference;

/** Finds the elements that references name. */
final class ElementFinder {
  /** The arguments of a word without slots. */
  static final Arguments NO_ARGUMENTS = new FixedArguments(List.of());

  private ElementFinder() {}

  /** What stands at one slot: one of the three. */
  record Filled(int handle, Optional<Outcome.Interval> number, Optional<Stretches> stretches) {}

  /** Arguments that do not change. */
  record FixedArguments(List<Filled> slots) implements Arguments {
    FixedArguments {
      slots = List.copyOf(slots);
    }

    @Override
    public int element(int slot) {
      return slots.get(slot).handle();
    }

    @Override
    public Reading number(int slot) {
      Reading reading = new Reading();
      slots.get(slot).number().ifPresent(n -> reading.between(n.least(), n.most()));
      return reading;
    }

    @Override
    public int word(int slot) {
      return slots.get(slot).handle();
    }

    @Override
    public Stretches stretches(int slot) {
      return slots.get(slot).stretches().orElseThrow();
    }
  }

  static Outcome<Integer> find(Reference reference, Scope scope) {
    if (reference instanceof Reference.Linked linked) {
      Outcome<Integer> owner = find(linked.owner(), scope);
      if (owner.value().isEmpty()) {
        return owner;
      }
      Word.LinkWord word = scope.words().link(linked.link());
      int found = word.function().find(scope.facts(), owner.value().get());
      Outcome<Integer> explained = explained(word, owner.value().get(), NO_ARGUMENTS, scope);
      return found < 0 ? explained : Outcome.of(found).and(owner);
    }
    return Outcome.of(scope.element(((Reference.Bound) reference).variable()));
  }

  /** No value, with what the word has to say about it. */
  static <T> Outcome<T> explained(Word word, int element, Arguments arguments, Scope scope) {
    Explanation explanation = new Explanation();
    word.explainer().explain(scope.facts(), element, arguments, explanation);
    return new Outcome<>(
        Optional.empty(),
        Optional.empty(),
        explanation.facts(),
        explanation.missing(),
        explanation.reasons());
  }

  /** How people call the element. */
  static String label(Reference reference, Scope scope) {
    Outcome<Integer> found = find(reference, scope);
    if (found.value().isPresent()) {
      return scope.facts().name(found.value().get()).label();
    }
    return reference instanceof Reference.Linked linked
        ? linked.link().phrase() + " of " + label(linked.owner(), scope)
        : reference.noun().singular();
  }
}
