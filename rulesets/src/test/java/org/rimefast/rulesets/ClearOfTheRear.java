package org.rimefast.rulesets;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Circuit;
import org.rimefast.plan.Face;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;
import org.rimefast.plan.Plan;
import org.rimefast.plan.Run;

/** Takes out of a plan whatever stands on the rear wall or near it. */
final class ClearOfTheRear {
  private final Plan plan;
  private final double margin;

  private ClearOfTheRear(Plan plan, double margin) {
    this.plan = plan;
    this.margin = margin;
  }

  /** What is left if nothing may stand within {@code margin} millimetres of the rear wall. */
  static Plan of(Plan plan, double margin) {
    return new ClearOfTheRear(plan, margin).clear();
  }

  private Plan clear() {
    Set<String> gone = new HashSet<>();
    for (Part part : plan.parts()) {
      Amount width = part.width();
      double half = width == null ? 0 : width.millimetres() / 2;
      if (isNear(part.face(), part.along(), half)) {
        gone.add(part.id());
      }
    }
    for (Circuit circuit : plan.circuits()) {
      if (isGone(gone, circuit.panel())) {
        gone.add(circuit.id());
      }
    }
    List<Part> parts = plan.parts().stream().filter(part -> !isGone(gone, part)).toList();
    List<Run> runs = plan.runs().stream().filter(run -> !isGone(gone, run)).toList();
    List<Opening> openings = plan.openings().stream().filter(one -> !isNear(one)).toList();
    return new Plan(
        plan.id(),
        plan.title(),
        plan.units(),
        plan.tolerances(),
        plan.room(),
        plan.site(),
        plan.shell(),
        plan.faces(),
        openings,
        parts,
        runs,
        plan.circuits().stream().filter(circuit -> !gone.contains(circuit.id())).toList(),
        plan.foaming(),
        plan.readings(),
        plan.source());
  }

  private boolean isNear(Opening opening) {
    double half = opening.width().millimetres() / 2;
    double middle = opening.from().millimetres() + half;
    return fromTheRear(opening.face(), middle) - half < margin;
  }

  private boolean isNear(Face face, @Nullable Amount along, double half) {
    if (face == Face.REAR) {
      return true;
    }
    return along != null && fromTheRear(face, along.millimetres()) - half < margin;
  }

  private double fromTheRear(Face face, double along) {
    return switch (face) {
      case LEFT, ROOF, FLOOR -> along;
      case RIGHT -> plan.shell().length() - along;
      case FRONT -> plan.shell().length();
      case REAR -> 0;
    };
  }

  private static boolean isGone(Set<String> gone, Part part) {
    return gone.contains(part.id())
        || (part instanceof Part.Bracket bracket && isGone(gone, bracket.holds()));
  }

  private boolean isGone(Set<String> gone, Run run) {
    return isGone(gone, run.from())
        || isGone(gone, run.to())
        || isGone(gone, run.build().circuit())
        || run.path().stream().anyMatch(point -> isNear(point.face(), point.along(), 0));
  }

  private static boolean isGone(Set<String> gone, @Nullable String id) {
    return id != null && gone.contains(id);
  }
}
