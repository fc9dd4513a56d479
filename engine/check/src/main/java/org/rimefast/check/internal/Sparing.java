package org.rimefast.check.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimefast.check.Word;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;

/** Finds out where an index spares asking every element. */
public final class Sparing {
  private Sparing() {}

  /**
   * A relation whose index names the elements that are worth asking.
   *
   * @param holds the relation, with the elements that are given
   * @param function its index
   * @param subjects true if the index names subjects, false if what stands at the slot
   * @param slot the first slot of the relation at which an element stands
   */
  public record Spare(
      Condition.Holds holds, Word.CandidateFunction function, boolean subjects, int slot) {}

  /**
   * The relation that spares a quantified condition most elements; empty if all must be asked. Only
   * a relation that must hold for an element to count can spare the others. An element counts if it
   * meets the condition and the body; for EACH and ALL_BUT, if it does not meet the body.
   */
  public static Optional<Spare> of(Words words, Condition.Quantified quantified) {
    Optional<Spare> spare = ofWhere(words, quantified);
    return spare.isPresent() ? spare : ofBody(words, quantified);
  }

  /** The relation in what says which elements are looked at: none but its own are. */
  public static Optional<Spare> ofWhere(Words words, Condition.Quantified quantified) {
    int index = quantified.variable().index();
    return quantified.where().flatMap(where -> of(words, where, index));
  }

  /** The relation in the body: of all others that are looked at, none meets it. */
  public static Optional<Spare> ofBody(Words words, Condition.Quantified quantified) {
    return switch (quantified.quantifier()) {
      case EACH, ALL_BUT -> Optional.empty();
      case SOME, NO, AT_LEAST, AT_MOST, EXACTLY ->
          of(words, quantified.body(), quantified.variable().index());
    };
  }

  /** The same for a number that is made of many. */
  public static Optional<Spare> of(Words words, Value.Aggregate aggregate) {
    return aggregate.where().flatMap(where -> of(words, where, aggregate.variable().index()));
  }

  private static Optional<Spare> of(Words words, Condition condition, int index) {
    List<Condition> needed =
        condition instanceof Condition.And and ? and.parts() : List.of(condition);
    return needed.stream()
        .flatMap(
            part ->
                part instanceof Condition.Holds holds
                    ? of(words, holds, index)
                    : Stream.<Spare>empty())
        .findFirst();
  }

  private static Stream<Spare> of(Words words, Condition.Holds holds, int index) {
    List<Argument> arguments = holds.arguments();
    int slot = elementSlot(holds.relation());
    if (slot < 0
        || !(words.relation(holds.relation()) instanceof Word.RelationWord word)
        || mayNameBut(slot, arguments, index)) {
      return Stream.empty();
    }
    Argument sought = arguments.get(slot);
    if (isVariable(sought, index) && !names(holds.subject(), index)) {
      return word.candidates().map(function -> new Spare(holds, function, false, slot)).stream();
    }
    return isVariable(holds.subject(), index) && !mayName(sought, index)
        ? word.subjects().map(function -> new Spare(holds, function, true, slot)).stream()
        : Stream.empty();
  }

  private static int elementSlot(Relation relation) {
    for (int slot = 0; slot < relation.slots().size(); slot++) {
      if (relation.slots().get(slot) instanceof Slot.Element) {
        return slot;
      }
    }
    return -1;
  }

  private static boolean mayNameBut(int but, List<Argument> arguments, int index) {
    for (int slot = 0; slot < arguments.size(); slot++) {
      if (slot != but && mayName(arguments.get(slot), index)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isVariable(Argument argument, int index) {
    return argument instanceof Reference.Bound bound && bound.variable().index() == index;
  }

  private static boolean names(Reference reference, int index) {
    return reference instanceof Reference.Linked linked
        ? names(linked.owner(), index)
        : isVariable(reference, index);
  }

  /** Anything but a literal or another element may depend on the variable; then all are asked. */
  private static boolean mayName(Argument argument, int index) {
    return argument instanceof Reference reference
        ? names(reference, index)
        : !(argument instanceof Value.Literal
            || argument instanceof Value.Word
            || argument instanceof Value.Named);
  }
}
