package org.rimefast.plan.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Foam;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.Run;
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

  private Names() {}

  private static <T> Map<String, T> words(T[] values, Function<T, String> word) {
    Map<String, T> words = new LinkedHashMap<>();
    for (T value : values) {
      words.put(word.apply(value), value);
    }
    return words;
  }
}
