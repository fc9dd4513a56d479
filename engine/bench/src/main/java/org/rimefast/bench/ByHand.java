package org.rimefast.bench;

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
      geometry.partsWithin(
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
        if (gap <= geometry.contactTolerance() && material != null) {
          return Verdict.BROKEN;
        }
        unsure |= !(gap - geometry.gapTolerance(index, other) > geometry.contactTolerance());
      }
    }
    return unsure ? Verdict.UNDECIDED : Verdict.MET;
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
