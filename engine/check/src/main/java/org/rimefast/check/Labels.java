package org.rimefast.check;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.internal.Fields;
import org.rimefast.plan.Amount;
import org.rimefast.plan.Opening;
import org.rimefast.plan.Part;

/** What elements are called and where they are, in words. */
final class Labels {
  private Labels() {}

  static String noun(PlanFacts facts, int handle) {
    if (facts.isPart(handle)) {
      return facts.part(handle).getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
    if (facts.isRun(handle)) {
      return facts.run(handle).kind().isCable() ? "cable" : "conduit";
    }
    if (facts.isOpening(handle)) {
      return "opening";
    }
    if (facts.isCircuit(handle)) {
      return "circuit";
    }
    if (facts.isConductor(handle)) {
      return "conductor";
    }
    return facts.isRoom(handle) ? "room" : Fields.faceName(facts.face(handle));
  }

  static String where(PlanFacts facts, int handle) {
    if (facts.isPart(handle)) {
      Part part = facts.part(handle);
      return Fields.faceName(part.face())
          + position(facts, ", along ", part.along())
          + position(facts, part.face().isWall() ? ", up " : ", across ", part.up());
    }
    if (facts.isOpening(handle)) {
      Opening opening = facts.opening(handle);
      return Fields.faceName(opening.face())
          + position(facts, ", from ", opening.from())
          + position(facts, ", sill ", opening.sill());
    }
    return "";
  }

  private static String position(PlanFacts facts, String name, @Nullable Amount amount) {
    return amount == null ? "" : name + Fields.length(facts.plan(), amount.si());
  }
}
