package org.rimefast.lang.rule;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Stretch;

/** What stands at a slot: an element, a value, a stretch of a path, or all elements of a kind. */
public sealed interface Argument permits Reference, Value, Argument.Along, Argument.Those {

  /**
   * A part of the path of the element that the word is said of: {@code along its whole length}.
   *
   * @param stretch which part
   * @param arguments what stands at the stretch's own slots
   * @param span the text it was read from
   */
  record Along(Stretch stretch, List<Argument> arguments, Span span) implements Argument {
    /** Refuses arguments that do not fit. */
    public Along {
      Types.requireArguments(stretch.slots(), arguments);
      arguments = List.copyOf(arguments);
    }
  }

  /**
   * All elements of a kind that meet a condition, as what a chain may pass: {@code an insulator
   * (where its width >= 3 mm)}.
   *
   * @param variable stands for each of them in the condition
   * @param where which of the kind are meant; all if empty
   * @param span the text it was read from
   */
  record Those(Variable variable, Optional<Condition> where, Span span) implements Argument {}
}
