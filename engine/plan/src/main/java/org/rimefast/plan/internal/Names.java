package org.rimefast.plan.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.rimefast.plan.BoxFittings.Device;
import org.rimefast.plan.Door;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Foam;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** The words of the format. */
final class Names {
  static final Map<String, Unit> UNITS =
      words(
          new Unit[] {Units.MILLIMETRE, Units.CENTIMETRE, Units.METRE, Units.INCH, Units.FOOT},
          Unit::symbol);
  static final Map<String, Face> FACES = words(Face.values(), Face::word);
  static final List<String> FACE_ENTRIES =
      List.of("default", "left", "right", "front", "rear", "roof", "floor");
  static final Map<String, Ribs> RIBS = words(Ribs.values(), Ribs::word);
  static final Map<String, Foam.Kind> FOAM_KINDS = words(Foam.Kind.values(), Foam.Kind::word);
  static final Map<String, Material> MATERIALS = words(Material.values(), Material::word);
  static final Map<String, Mount> MOUNTS = words(Mount.values(), Mount::word);
  static final Map<String, Part.Box.Kind> BOX_KINDS =
      words(Part.Box.Kind.values(), Part.Box.Kind::word);
  static final Map<String, Run.Kind> RUN_KINDS = words(Run.Kind.values(), Run.Kind::word);
  static final Map<String, RunBuild.Armour> ARMOURS =
      words(RunBuild.Armour.values(), RunBuild.Armour::word);
  static final Map<String, RunBuild.Side> SIDES =
      words(RunBuild.Side.values(), RunBuild.Side::word);
  static final Map<String, RunBuild.Connector> CONNECTORS =
      words(RunBuild.Connector.values(), RunBuild.Connector::word);
  static final Map<String, RunBuild.Conductors.Use> USES =
      words(RunBuild.Conductors.Use.values(), RunBuild.Conductors.Use::word);
  static final Map<String, Device.Kind> DEVICE_KINDS =
      words(Device.Kind.values(), Device.Kind::word);
  static final Map<String, Boolean> CLAMPS =
      words(new Boolean[] {true, false}, there -> there ? "internal" : "none");
  static final Map<String, Boolean> INSERTS =
      words(new Boolean[] {true, false}, there -> there ? "bushing" : "none");
  static final Map<String, Door.Hinge> HINGES = words(Door.Hinge.values(), Door.Hinge::word);
  static final Map<String, Door.Swing> SWINGS = words(Door.Swing.values(), Door.Swing::word);

  private Names() {}

  /** The word of a value. */
  static <T> String wordOf(Map<String, T> words, T value) {
    for (Map.Entry<String, T> entry : words.entrySet()) {
      if (entry.getValue().equals(value)) {
        return entry.getKey();
      }
    }
    throw new IllegalStateException("a value without a word: " + value);
  }

  private static <T> Map<String, T> words(T[] values, Function<T, String> word) {
    Map<String, T> words = new LinkedHashMap<>();
    for (T value : values) {
      words.put(word.apply(value), value);
    }
    return words;
  }
}
