package org.rimefast.check.internal;

import java.util.Locale;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;
import org.rimefast.units.QuantityFormat;

/** How findings say in words what a plan says in names of fields. */
public final class Fields {
  private Fields() {}

  /**
   * {@code outdoorDesignTemperature} as {@code outdoor design temperature}, {@code foam/thickness}
   * as {@code foam thickness}, {@code path/1/depth} as {@code depth of point 2 of the path}.
   *
   * @param field a field's place within its element, as the end of a JSON pointer
   */
  public static String words(String field) {
    String[] steps = field.split("/", -1);
    String last = steps[steps.length - 1];
    if (steps.length == 3 && steps[0].equals("path")) {
      return last + " of point " + (Integer.parseInt(steps[1]) + 1) + " of the path";
    }
    return String.join(" ", steps).replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
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
