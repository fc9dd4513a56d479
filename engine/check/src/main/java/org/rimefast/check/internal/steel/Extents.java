package org.rimefast.check.internal.steel;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Part;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.StudSection;
import org.rimefast.plan.Tolerances;

/**
 * What is known of where parts stand even if their depth or mount is not given: two parts that
 * stand well apart in a direction in which both are known neither touch nor overlap, however deep
 * they are.
 */
final class Extents {
  private static final Axis[] AXES = Axis.values();

  /** Millimetres; no shell is as large. */
  private static final double FAR = 1e9;

  private Extents() {}

  /** Directions of the module: along it, across it, up. */
  private enum Axis {
    X,
    Y,
    Z
  }

  /**
   * True if two parts certainly stand farther apart than {@code distance} millimetres, whatever
   * their depth and within the plan's tolerances.
   */
  static boolean apart(PlanFacts facts, int a, int b, double distance) {
    for (Axis axis : AXES) {
      double between = Math.abs(middle(facts, a, axis) - middle(facts, b, axis));
      double reach = reach(facts, a, axis) + reach(facts, b, axis);
      if (between - reach > distance) {
        return true;
      }
    }
    return false;
  }

  /** Puts least, then greatest x, y and z of where a part can be into {@code boxes}. */
  static void put(PlanFacts facts, int part, double[] boxes, int at) {
    for (Axis axis : AXES) {
      double middle = middle(facts, part, axis);
      double reach = reach(facts, part, axis);
      boolean known = !Double.isNaN(middle) && !Double.isNaN(reach);
      boxes[at + axis.ordinal()] = known ? middle - reach : -FAR;
      boxes[at + 3 + axis.ordinal()] = known ? middle + reach : FAR;
    }
  }

  /**
   * As {@link #apart} for a part and a point of the module; NaN where a coordinate is not known.
   */
  static boolean apart(PlanFacts facts, int part, double x, double y, double z, double distance) {
    for (Axis axis : AXES) {
      double between = Math.abs(middle(facts, part, axis) - pick(axis, x, y, z));
      if (between - reach(facts, part, axis) > distance) {
        return true;
      }
    }
    return false;
  }

  /**
   * True if, as drawn, two parts do not reach into each other by more than {@code overlap}
   * millimetres in some direction in which both are known.
   */
  static boolean drawnBeside(PlanFacts facts, int a, int b, double overlap) {
    for (Axis axis : AXES) {
      double between = Math.abs(middle(facts, a, axis) - middle(facts, b, axis));
      double reach = half(facts, a, axis) + half(facts, b, axis);
      if (reach - between <= overlap + Touch.ROUNDING) {
        return true;
      }
    }
    return false;
  }

  /** Half of a part's extent in one direction, as drawn. */
  private static double half(PlanFacts facts, int handle, Axis axis) {
    Part part = facts.part(handle);
    double along = drawnWidth(facts, part) / 2;
    double up = millimetres(part.height()) / 2;
    return switch (part.face()) {
      case LEFT, RIGHT -> pick(axis, along, Double.NaN, up);
      case FRONT, REAR -> pick(axis, Double.NaN, along, up);
      case ROOF, FLOOR -> pick(axis, along, up, Double.NaN);
    };
  }

  private static double drawnWidth(PlanFacts facts, Part part) {
    return part.width() == null ? width(facts, part) : millimetres(part.width());
  }

  /** The middle of a part in one direction; NaN toward its own face, and where it is not given. */
  private static double middle(PlanFacts facts, int handle, Axis axis) {
    Part part = facts.part(handle);
    ShellSize shell = facts.plan().shell();
    double along = millimetres(part.along());
    double up = millimetres(part.up());
    return switch (part.face()) {
      case LEFT -> pick(axis, along, Double.NaN, up);
      case RIGHT -> pick(axis, shell.length() - along, Double.NaN, up);
      case FRONT -> pick(axis, Double.NaN, along, up);
      case REAR -> pick(axis, Double.NaN, shell.width() - along, up);
      case ROOF, FLOOR -> pick(axis, along, up, Double.NaN);
    };
  }

  /** How far a part reaches from its middle in one direction, at most. */
  private static double reach(PlanFacts facts, int handle, Axis axis) {
    Part part = facts.part(handle);
    double along = width(facts, part) / 2 + placeTolerance(facts, part, part.along());
    double up = size(part.height()) / 2 + placeTolerance(facts, part, part.up());
    return switch (part.face()) {
      case LEFT, RIGHT -> pick(axis, along, Double.NaN, up);
      case FRONT, REAR -> pick(axis, Double.NaN, along, up);
      case ROOF, FLOOR -> pick(axis, along, up, Double.NaN);
    };
  }

  private static double pick(Axis axis, double x, double y, double z) {
    return axis == Axis.X ? x : axis == Axis.Y ? y : z;
  }

  private static double width(PlanFacts facts, Part part) {
    if (part.width() == null && part instanceof Part.Stud stud) {
      StudSection own = stud.section();
      StudSection section = own != null ? own : facts.plan().face(stud.face()).stud();
      return section == null ? Double.NaN : section.flange();
    }
    return size(part.width());
  }

  /** How far a part with a place may be off along its face. */
  static double alongTolerance(PlanFacts facts, int element) {
    Part part = facts.part(element);
    return placeTolerance(facts, part, part.along());
  }

  /** How far a part with a place may be off up its face. */
  static double upTolerance(PlanFacts facts, int element) {
    Part part = facts.part(element);
    return part.up() == null ? 0 : placeTolerance(facts, part, part.up());
  }

  /** Where the middle of a part is along its face; NaN if not given. */
  static double middleAlong(Part part) {
    return millimetres(part.along());
  }

  /** The greatest that an extent can be within its own tolerance. */
  private static double size(@Nullable Amount extent) {
    return extent == null ? Double.NaN : extent.millimetres() + extent.siTolerance() * 1000;
  }

  /** How far a place may be off: its own tolerance, else that of the part's trade. */
  private static double placeTolerance(PlanFacts facts, Part part, @Nullable Amount place) {
    if (place == null) {
      return Double.NaN;
    }
    if (place.plusMinus() != null) {
      return place.siTolerance() * 1000;
    }
    Tolerances trades = facts.plan().tolerances();
    Amount trade = part instanceof Part.Electrical ? trades.electrical() : trades.framing();
    return trade == null ? 0 : trade.millimetres();
  }

  private static double millimetres(@Nullable Amount amount) {
    return amount == null ? Double.NaN : amount.millimetres();
  }
}
