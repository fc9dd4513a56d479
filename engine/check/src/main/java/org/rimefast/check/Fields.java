package org.rimefast.check;

import java.util.Locale;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;
import org.rimefast.units.QuantityFormat;

/** How findings say in words what a plan says in names of fields. */
final class Fields {
  private Fields() {}

  /** {@code outdoorDesignTemperature} as {@code outdoor design temperature}. */
  static String words(String field) {
    return field.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /** {@code left wall}, {@code roof}. */
  static String faceName(Face face) {
    return face.isWall() ? face.word() + " wall" : face.word();
  }

  /** A length in metres, as text in the plan's own unit. */
  static String length(Plan plan, double metres) {
    return QuantityFormat.format(metres, plan.units());
  }
}
