package org.rimefast.bench;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Verdict;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.Material;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.CorrugatedSheet;
import org.rimefast.plan.geometry.ModuleGeometry;
import org.rimefast.plan.geometry.Zone;

/**
 * The five rules as a Java programmer would write them by hand over the plan and its geometry, with
 * missing values and tolerances told apart as the rules do.
 */
final class ByHand {
  private static final double GUARD = 1e-6;

  private ByHand() {}

  /** box must sit in outer bay with clearance >= 50 mm. */
  static Verdict box(ModuleGeometry geometry, Part part, int index) {
    CorrugatedSheet sheet = geometry.sheet(part.face());
    double from = geometry.facesFrom(index);
    double to = geometry.facesTo(index);
    Verdict sits;
    if (sheet == null || Double.isNaN(from)) {
      sits = Verdict.UNDECIDED;
    } else {
      double tolerance = geometry.facesTolerance(index);
      double middle = (from + to) / 2;
      double inside = sheet.marginInside(Zone.OUTER_BAY, middle, middle);
      double gap = sheet.gapTo(Zone.INWARD_RIB, from, to);
      double worst = Math.min(inside, gap);
      sits =
          worst >= tolerance
              ? Verdict.MET
              : worst < -tolerance ? Verdict.BROKEN : Verdict.UNDECIDED;
    }
    return sits == Verdict.BROKEN ? sits : both(sits, clearance(geometry, index, 50));
  }

  /** each box where it is recessed must have depth <= 50 mm. */
  static Verdict depth(Part.Box box) {
    Mount mount = box.mount();
    if (mount == Mount.SURFACE) {
      return Verdict.NOT_APPLICABLE;
    }
    Amount depth = box.depth();
    if (depth == null) {
      return Verdict.UNDECIDED;
    }
    double tolerance = depth.siTolerance() * 1000;
    double least = depth.millimetres() - tolerance;
    double most = depth.millimetres() + tolerance;
    if (most <= 50 + GUARD) {
      return Verdict.MET;
    }
    return least > 50 + GUARD && mount != null ? Verdict.BROKEN : Verdict.UNDECIDED;
  }

  /** each stud must have clearance >= 8.4 mm unless it is on the roof. */
  static Verdict stud(ModuleGeometry geometry, Part part, int index) {
    return part.face() == Face.ROOF ? Verdict.NOT_APPLICABLE : clearance(geometry, index, 8.4);
  }

  /** box must not touch a bar (where it is metal). */
  static Verdict touch(PlanFacts facts, int index, Neighbours neighbours) {
    ModuleGeometry geometry = facts.geometry();
    neighbours.start();
    boolean placed = geometry.cuboid(index) != null;
    if (placed) {
      geometry.partsWithinInAnyOrder(
          index,
          geometry.contactTolerance()
              + neighbours.widestTolerance()
              + geometry.positionTolerance(index),
          neighbours);
    } else {
      neighbours.all();
    }
    boolean unsure = false;
    for (int i = 0; i < neighbours.count(); i++) {
      int other = neighbours.get(i);
      if (facts.part(other) instanceof Part.Bar bar && other != index) {
        Material material = bar.material();
        if (material != null && !material.isMetal()) {
          continue;
        }
        double gap = geometry.gap(index, other);
        if (Double.isNaN(gap) && apart(facts, index, other)) {
          continue;
        }
        if (gap <= geometry.contactTolerance() && material != null) {
          return Verdict.BROKEN;
        }
        unsure |= !(gap - geometry.gapTolerance(index, other) > geometry.contactTolerance());
      }
    }
    return unsure ? Verdict.UNDECIDED : Verdict.MET;
  }

  /** True if two parts on the long walls stand apart though the depth of one is not given. */
  private static boolean apart(PlanFacts facts, int a, int b) {
    Part first = facts.part(a);
    Part second = facts.part(b);
    double tolerance = tolerance(facts, first) + tolerance(facts, second);
    double along = Math.abs(fromRear(facts, first) - fromRear(facts, second));
    double alongReach = (mm(first.width()) + mm(second.width())) / 2;
    double up = Math.abs(mm(first.up()) - mm(second.up()));
    double upReach = (mm(first.height()) + mm(second.height())) / 2;
    double limit = facts.geometry().contactTolerance() + tolerance;
    return along - alongReach > limit || up - upReach > limit;
  }

  private static double fromRear(PlanFacts facts, Part part) {
    double along = mm(part.along());
    return part.face() == Face.LEFT ? along : facts.plan().shell().length() - along;
  }

  private static double tolerance(PlanFacts facts, Part part) {
    return part instanceof Part.Bar
        ? mm(facts.plan().tolerances().framing())
        : mm(facts.plan().tolerances().electrical());
  }

  private static double mm(@Nullable Amount amount) {
    return amount == null ? Double.NaN : amount.millimetres();
  }

  /** luminaire must have foam cover >= 2 in. */
  static Verdict cover(ModuleGeometry geometry, Part part, int index) {
    FaceBuild.Foam foam = geometry.plan().face(part.face()).foam();
    Amount thickness = foam == null ? null : foam.thickness();
    double nominal = geometry.clearance(index);
    if (thickness == null || Double.isNaN(nominal)) {
      return Verdict.UNDECIDED;
    }
    double tolerance = geometry.positionTolerance(index);
    double least = Math.min(nominal - tolerance, thickness.millimetres());
    double most = Math.min(nominal + tolerance, thickness.millimetres());
    return decide(least, most, 50.8);
  }

  private static Verdict clearance(ModuleGeometry geometry, int index, double limit) {
    double nominal = geometry.clearance(index);
    double tolerance = geometry.positionTolerance(index);
    return decide(nominal - tolerance, nominal + tolerance, limit);
  }

  private static Verdict decide(double least, double most, double limit) {
    if (least >= limit - GUARD) {
      return Verdict.MET;
    }
    return most < limit - GUARD ? Verdict.BROKEN : Verdict.UNDECIDED;
  }

  private static Verdict both(Verdict a, Verdict b) {
    if (a == Verdict.BROKEN || b == Verdict.BROKEN) {
      return Verdict.BROKEN;
    }
    return a == Verdict.MET && b == Verdict.MET ? Verdict.MET : Verdict.UNDECIDED;
  }
}
