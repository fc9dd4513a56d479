package org.rimefast.check.internal.steel;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.Zone;
import org.rimefast.units.Dimension;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Types of values, and short ways to declare words. */
final class Kinds {
  static final ValueType.Number LENGTH = number(Dimension.LENGTH, "mm");
  static final ValueType.Number COUNT = ValueType.Number.count();
  static final ValueType.Number TEMPERATURE = number(Dimension.TEMPERATURE, "degC");
  static final ValueType.Number FACE_AREA = number(Dimension.AREA, "m2");
  static final ValueType.Number FOAM_VOLUME = number(Dimension.VOLUME, "m3");
  static final ValueType.Number SHARE = number(Dimension.PERCENT, "%");
  static final ValueType.Number CONDUCTIVITY = number(Dimension.CONDUCTIVITY, "W/(m K)");
  static final ValueType.Text TEXT = new ValueType.Text();
  static final ValueType.Choice MOUNT = choice("mount", Mount.values(), Mount::word);
  static final ValueType.Choice MATERIAL = choice("material", Material.values(), Material::word);
  static final ValueType.Choice BOX_KIND =
      choice("kind of box", Part.Box.Kind.values(), Part.Box.Kind::word);
  static final ValueType.Choice FOAM_KIND =
      choice("kind of insulation", FaceBuild.Foam.Kind.values(), FaceBuild.Foam.Kind::word);
  static final ValueType.Choice ZONE = choice("zone of the sheet", Zone.values(), Zone::word);

  static final ValueType.Choice SIDE =
      new ValueType.Choice(
          "side of a part", List.of("above", "below", "side", "left", "right", "back", "front"));

  private Kinds() {}

  static ValueType.Number number(Dimension dimension, String unit) {
    return new ValueType.Number(dimension, unit(unit));
  }

  private static Unit unit(String symbol) {
    return Units.find(symbol)
        .orElseThrow(() -> new IllegalStateException("no unit is called " + symbol));
  }

  static <E> ValueType.Choice choice(String name, E[] values, Function<E, String> word) {
    return new ValueType.Choice(name, Arrays.stream(values).map(word).toList());
  }

  static Property property(Noun owner, String phrase, ValueType type) {
    return new Property(owner.id() + "." + phrase, phrase, owner, List.of(), type);
  }

  static Relation verb(Noun subject, String base, String third, Slot... slots) {
    return new Relation(
        subject.id() + "." + base, Relation.Form.VERB, base, third, subject, List.of(slots));
  }

  static Relation being(Noun subject, String pattern, Slot... slots) {
    return new Relation(
        subject.id() + ".be " + pattern,
        Relation.Form.BE,
        pattern,
        pattern,
        subject,
        List.of(slots));
  }

  static Slot element(Noun noun) {
    return new Slot.Element(noun);
  }

  static Slot value(ValueType type) {
    return new Slot.Of(type);
  }

  /** A length up to which something is near: a greater one makes no less near. */
  static Slot reach() {
    return new Slot.Of(LENGTH, true);
  }
}
