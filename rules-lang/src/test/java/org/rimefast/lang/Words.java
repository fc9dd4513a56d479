package org.rimefast.lang;

import java.util.List;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Relation.Form;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/** A small vocabulary for tests; it has one trap on purpose, see {@code reach}. */
public final class Words {
  static final ValueType.Number LENGTH = new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE);
  static final ValueType.Number TEMPERATURE =
      new ValueType.Number(Dimension.TEMPERATURE, Units.DEGREE_CELSIUS);
  static final ValueType.Number DIFFERENCE =
      new ValueType.Number(Dimension.TEMPERATURE_DIFFERENCE, Units.KELVIN);
  static final ValueType.Number PERCENT = new ValueType.Number(Dimension.PERCENT, Units.PERCENT);
  static final ValueType.Number VOLUME =
      new ValueType.Number(Dimension.VOLUME, Units.CUBIC_CENTIMETRE);
  static final ValueType.Number POWER = new ValueType.Number(Dimension.POWER, Units.WATT);
  static final ValueType.Number NUMBER = new ValueType.Number(Dimension.NUMBER, Units.ONE);
  static final ValueType.Choice MOUNT =
      new ValueType.Choice("mount", List.of("flush", "surface", "on the lining"));
  static final ValueType.Choice BAY =
      new ValueType.Choice("place", List.of("outer bay", "inward rib", "web"));

  static final Noun METAL = new Noun("metal-part", "metal part", "metal parts", List.of());
  static final Noun ROOM = new Noun("room", "room", "rooms", List.of());
  static final Noun BOX = new Noun("box", "box", "boxes", List.of());
  static final Noun STUD = new Noun("stud", "stud", "studs", List.of(METAL));
  static final Noun BRACKET = new Noun("bracket", "bracket", "brackets", List.of(METAL));
  static final Noun PANEL = new Noun("panel", "panel", "panels", List.of());
  static final Noun CABLE = new Noun("cable", "cable", "cables", List.of());
  static final Noun CIRCUIT = new Noun("circuit", "circuit", "circuits", List.of());
  static final Noun SHELL = new Noun("shell", "shell", "shells", List.of(METAL));

  private Words() {}

  public static Vocabulary vocabulary() {
    return Vocabulary.builder()
        .stages(List.of("layout", "framing", "rough-in", "pre-foam", "foam", "lining", "handover"))
        .noun(METAL)
        .noun(ROOM)
        .noun(BOX)
        .noun(STUD)
        .noun(BRACKET)
        .noun(PANEL)
        .noun(CABLE)
        .noun(CIRCUIT)
        .noun(SHELL)
        .property(property("box.clearance", "clearance", BOX, LENGTH))
        .property(property("box.depth", "depth", BOX, LENGTH))
        .property(property("box.volume", "volume", BOX, VOLUME))
        .property(property("box.fill", "fill", BOX, PERCENT))
        .property(property("box.mount", "mount", BOX, MOUNT))
        .property(property("box.mark", "mark", BOX, new ValueType.Text()))
        .property(property("box.surface-temperature", "surface temperature", BOX, TEMPERATURE))
        .property(property("panel.mount", "mount", PANEL, MOUNT))
        .property(property("metal.depth", "depth", METAL, LENGTH))
        .property(property("stud.warm-face", "distance to studs' warm face", CABLE, LENGTH))
        .property(property("cable.length", "length", CABLE, LENGTH))
        .property(property("room.temperature", "temperature", ROOM, TEMPERATURE))
        .property(property("room.dew-point", "dew point", ROOM, TEMPERATURE))
        .property(property("room.humidity", "humidity", ROOM, PERCENT))
        .property(property("circuit.load", "load", CIRCUIT, POWER))
        .property(property("circuit.outlets", "outlets", CIRCUIT, NUMBER))
        .property(
            new Property(
                "box.distance", "distance to _", BOX, List.of(new Slot.Element(METAL)), LENGTH))
        .property(property("bracket.reach", "reach", BRACKET, LENGTH))
        .property(
            new Property(
                "box.reach-of", "reach of _", BOX, List.of(new Slot.Element(BRACKET)), LENGTH))
        .link(new Link("box.room", "room", BOX, ROOM))
        .link(new Link("box.bracket", "bracket", BOX, BRACKET))
        .link(new Link("bracket.box", "box", BRACKET, BOX))
        .link(new Link("panel.room", "room", PANEL, ROOM))
        .link(new Link("box.circuit", "circuit", BOX, CIRCUIT))
        .link(new Link("room.shell", "shell", ROOM, SHELL))
        .relation(verb("sit", "sit in _", "sits in _", BOX, new Slot.Of(BAY)))
        .relation(verb("touch", "touch _", "touches _", BOX, new Slot.Element(METAL)))
        .relation(verb("metal-touch", "touch _", "touches _", METAL, new Slot.Element(BOX)))
        .relation(verb("touch-box", "touch _", "touches _", BOX, new Slot.Element(BOX)))
        .relation(verb("hold", "hold _", "holds _", BRACKET, new Slot.Element(BOX)))
        .relation(verb("enter", "enter _", "enters _", CABLE, new Slot.Element(BOX)))
        .relation(
            verb(
                "pass",
                "pass _ within _",
                "passes _ within _",
                CABLE,
                new Slot.Element(METAL),
                new Slot.Of(LENGTH)))
        .relation(verb("loop", "have a drip loop", "has a drip loop", CABLE))
        .relation(state("wet", "wet", ROOM))
        .relation(state("mounted", "mounted on _", PANEL, new Slot.Of(surface())))
        .relation(
            state(
                "within", "within _ of _", BOX, new Slot.Of(LENGTH, true), new Slot.Element(METAL)))
        .relation(state("held", "held by _", BOX, new Slot.Element(BRACKET)))
        .build();
  }

  private static ValueType.Choice surface() {
    return new ValueType.Choice("surface", List.of("lining", "shell"));
  }

  private static Property property(String id, String words, Noun owner, ValueType type) {
    return new Property(id, words, owner, List.of(), type);
  }

  private static Relation verb(String id, String base, String third, Noun subject, Slot... slots) {
    return new Relation(id, Form.VERB, base, third, subject, List.of(slots));
  }

  private static Relation state(String id, String pattern, Noun subject, Slot... slots) {
    return new Relation(id, Form.BE, pattern, pattern, subject, List.of(slots));
  }
}
