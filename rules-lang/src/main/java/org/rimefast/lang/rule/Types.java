package org.rimefast.lang.rule;

import java.util.List;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;

/** Checks that a node's constructor makes. */
final class Types {
  private Types() {}

  static void require(boolean condition, String otherwise) {
    if (!condition) {
      throw new IllegalArgumentException(otherwise);
    }
  }

  static Dimension dimension(Value value) {
    if (value.type() instanceof ValueType.Number number) {
      return number.dimension();
    }
    throw new IllegalArgumentException("not a number: " + value);
  }

  /** True if values of the two types can be equal. */
  static boolean comparable(ValueType left, ValueType right) {
    if (left instanceof ValueType.Number a && right instanceof ValueType.Number b) {
      return a.dimension().equals(b.dimension());
    }
    return left.equals(right);
  }

  static void requireArguments(List<Slot> slots, List<Argument> arguments) {
    require(slots.size() == arguments.size(), "as many arguments as slots");
    for (int i = 0; i < slots.size(); i++) {
      require(fits(slots.get(i), arguments.get(i)), "argument " + i + " does not fit its slot");
    }
  }

  private static boolean fits(Slot slot, Argument argument) {
    if (slot instanceof Slot.Element element) {
      return argument instanceof Reference reference && reference.noun().isA(element.noun());
    }
    if (slot instanceof Slot.Along along) {
      return argument instanceof Argument.Along stretch
          && along.path().isA(stretch.stretch().path());
    }
    if (slot instanceof Slot.Kind kind) {
      return argument instanceof Argument.Those those && those.variable().noun().isA(kind.noun());
    }
    return slot instanceof Slot.Of of
        && argument instanceof Value value
        && comparable(of.type(), value.type());
  }
}
