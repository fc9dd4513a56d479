package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.units.Dimension;

/** Types of the values of runs, boxes, conductors and circuits. */
final class ElectricalKinds {
  static final ValueType.Number AREA = Kinds.number(Dimension.AREA, "mm2");
  static final ValueType.Number VOLUME = Kinds.number(Dimension.VOLUME, "cm3");
  static final ValueType.Number ANGLE = Kinds.number(Dimension.ANGLE, "deg");
  static final ValueType.Number CURRENT = Kinds.number(Dimension.CURRENT, "A");
  static final ValueType.Number VOLTAGE = Kinds.number(Dimension.VOLTAGE, "V");
  static final ValueType.Choice RUN_KIND =
      Kinds.choice("kind of run", Run.Kind.values(), Run.Kind::word);
  static final ValueType.Choice ARMOUR =
      Kinds.choice("armour", RunBuild.Armour.values(), RunBuild.Armour::word);
  static final ValueType.Choice CONNECTOR =
      Kinds.choice("connector", RunBuild.Connector.values(), RunBuild.Connector::word);
  static final ValueType.Choice USE =
      Kinds.choice(
          "use of a conductor", RunBuild.Conductors.Use.values(), RunBuild.Conductors.Use::word);

  private ElectricalKinds() {}

  /** A property of an element at a part. */
  static Property at(Noun owner, String pattern, ValueType type) {
    Slot part = new Slot.Element(Nouns.PART);
    return new Property(owner.id() + "." + pattern, pattern, owner, List.of(part), type);
  }

  /** The place of a word in its list; -1 if it is not given. */
  static int place(@org.jspecify.annotations.Nullable Enum<?> value) {
    return value == null ? -1 : value.ordinal();
  }
}
