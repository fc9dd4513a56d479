package org.rimefast.check.internal;

import java.util.Locale;
import java.util.Map;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;
import org.rimefast.units.QuantityFormat;

/** How findings say in words what a plan says in names of fields. */
public final class Fields {
  /** Fields whose names say little without the object that they stand in. */
  private static final Map<String, String> SAID =
      Map.ofEntries(
          Map.entry("slack/from", "slack at the first end"),
          Map.entry("slack/to", "slack at the last end"),
          Map.entry("slack/corners", "slack at the corners"),
          Map.entry("fromSide", "side at the first end"),
          Map.entry("toSide", "side at the last end"),
          Map.entry("fromConnector", "connector at the first end"),
          Map.entry("toConnector", "connector at the last end"));

  private Fields() {}

  /**
   * {@code outdoorDesignTemperature} as {@code outdoor design temperature}, {@code foam/thickness}
   * as {@code foam thickness}, {@code path/1/depth} as {@code depth of point 2 of the path}, {@code
   * holes/0/plate} as {@code plate of service hole 1}.
   *
   * @param field a field's place within its element, as the end of a JSON pointer
   */
  public static String words(String field) {
    String said = SAID.get(field);
    if (said != null) {
      return said;
    }
    String[] steps = field.split("/", -1);
    if (steps.length == 3 && steps[1].matches("[0-9]{1,9}")) {
      return inList(steps[0], Integer.parseInt(steps[1]) + 1, spaced(steps[2]));
    }
    return spaced(String.join(" ", steps));
  }

  /** A field of an entry, counted from 1, of a list of an element. */
  private static String inList(String list, int number, String field) {
    return switch (list) {
      case "path" -> field + " of point " + number + " of the path";
      case "holes" -> field + " of service hole " + number;
      case "conductors" -> field + " of group " + number + " of the conductors";
      case "devices" ->
          (field.equals("behind") ? "depth behind the strap" : field) + " of device " + number;
      default -> field + " of entry " + number + " of the " + spaced(list);
    };
  }

  private static String spaced(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /** {@code left wall}, {@code roof}. */
  public static String faceName(Face face) {
    return face.isWall() ? face.word() + " wall" : face.word();
  }

  /** A length in metres, as text in the plan's own unit. */
  public static String length(Plan plan, double metres) {
    return QuantityFormat.format(metres, plan.units());
  }
}
