package org.rimefast.check.internal.steel;

import org.rimefast.check.PlanFacts;
import org.rimefast.check.internal.Fields;
import org.rimefast.plan.Face;
import org.rimefast.plan.geometry.FaceFrame;
import org.rimefast.plan.geometry.Point;

/** Says in words where something is. */
final class Places {
  private Places() {}

  /** {@code along 2635 mm, up 450 mm, 12.3 mm behind the line of the inward ribs}. */
  static String point(PlanFacts facts, Face face, Point point) {
    FaceFrame frame = facts.geometry().frame(face);
    double out = frame.out(point.x(), point.y(), point.z());
    String depth = length(facts, Math.abs(out));
    String side = depth.startsWith("0 ") ? "on" : depth + (out > 0 ? " behind" : " in front of");
    return "along "
        + length(facts, frame.along(point.x(), point.y()))
        + (face.isWall() ? ", up " : ", across ")
        + length(facts, frame.up(point.y(), point.z()))
        + ", "
        + side
        + " the line of the inward ribs";
  }

  /** A length in millimetres, as text in the plan's own unit. */
  static String length(PlanFacts facts, double millimetres) {
    return Fields.length(facts.plan(), millimetres / 1000);
  }
}
