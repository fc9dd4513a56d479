package org.rimefast.check.internal.steel;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.geometry.CorrugatedSheet;
import org.rimefast.plan.geometry.Stretch;
import org.rimefast.plan.geometry.Zone;

/** Words for which rib, web or bay of the sheet a part stands before. */
final class Facing {
  private static final Zone[] ZONES = Zone.values();

  private Facing() {}

  static void addTo(Dictionary.Builder words) {
    words
        .relation(
            Kinds.verb(Nouns.PART, "sit in _", "sits in _", Kinds.value(Kinds.ZONE)),
            Facing::sitsIn,
            Facing::explain)
        .relation(
            Kinds.verb(Nouns.PART, "face _", "faces _", Kinds.value(Kinds.ZONE)),
            (facts, element, arguments) -> faces(facts, element, ZONES[arguments.word(0)]),
            Facing::explain)
        .relation(
            Kinds.verb(Nouns.PART, "face only _", "faces only _", Kinds.value(Kinds.ZONE)),
            Facing::facesOnly,
            Facing::explain);
  }

  /**
   * A part sits in a zone if its middle stands before it; in an outer bay, moreover, no part of it
   * may stand before an inward rib.
   */
  private static Truth sitsIn(PlanFacts facts, int element, Arguments arguments) {
    CorrugatedSheet sheet = sheet(facts, element);
    double from = facts.geometry().facesFrom(element);
    double to = facts.geometry().facesTo(element);
    if (sheet == null || Double.isNaN(from)) {
      return Truth.UNKNOWN;
    }
    Zone zone = ZONES[arguments.word(0)];
    double middle = (from + to) / 2;
    double tolerance = facts.geometry().facesTolerance(element);
    Truth inside = decide(sheet.marginInside(zone, middle, middle), tolerance);
    return zone == Zone.OUTER_BAY
        ? inside.and(faces(facts, element, Zone.INWARD_RIB).not())
        : inside;
  }

  private static Truth faces(PlanFacts facts, int element, Zone zone) {
    CorrugatedSheet sheet = sheet(facts, element);
    double from = facts.geometry().facesFrom(element);
    double to = facts.geometry().facesTo(element);
    if (sheet == null || Double.isNaN(from)) {
      return Truth.UNKNOWN;
    }
    return decide(sheet.gapTo(zone, from, to), facts.geometry().facesTolerance(element)).not();
  }

  private static Truth facesOnly(PlanFacts facts, int element, Arguments arguments) {
    CorrugatedSheet sheet = sheet(facts, element);
    double from = facts.geometry().facesFrom(element);
    double to = facts.geometry().facesTo(element);
    if (sheet == null || Double.isNaN(from)) {
      return Truth.UNKNOWN;
    }
    return decide(
        sheet.marginInside(ZONES[arguments.word(0)], from, to),
        facts.geometry().facesTolerance(element));
  }

  /** What a margin says: not negative within the tolerance is true, negative beyond it is false. */
  private static Truth decide(double margin, double tolerance) {
    if (margin >= tolerance - Touch.ROUNDING) {
      return Truth.TRUE;
    }
    return margin < -tolerance - Touch.ROUNDING ? Truth.FALSE : Truth.UNKNOWN;
  }

  private static @Nullable CorrugatedSheet sheet(PlanFacts facts, int element) {
    return facts.geometry().sheet(facts.part(element).face());
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    explain(facts, element, out);
  }

  /** Says what a part stands before; nothing for a run, which has no one face. */
  static void explain(PlanFacts facts, int element, Explanation out) {
    if (!facts.isPart(element)) {
      return;
    }
    CorrugatedSheet sheet = sheet(facts, element);
    double from = facts.geometry().facesFrom(element);
    double to = facts.geometry().facesTo(element);
    if (sheet == null || Double.isNaN(from)) {
      facts
          .geometry()
          .missingForFacing(element)
          .forEach(pointer -> out.missing(facts.missing(pointer)));
      return;
    }
    if (!sheet.isFlat()) {
      out.fact("stands before", stretches(facts, sheet, from, to));
    }
  }

  private static String stretches(PlanFacts facts, CorrugatedSheet sheet, double from, double to) {
    List<Stretch> all = sheet.facing(from, to);
    String axis = sheet.variesAlong() ? "along " : "up ";
    return all.stream()
        .map(
            stretch ->
                stretch.zone().word()
                    + " "
                    + stretch.number()
                    + " ("
                    + axis
                    + Places.length(facts, stretch.from())
                    + " to "
                    + Places.length(facts, stretch.to())
                    + ")"
                    + (all.size() == 1
                        ? " wholly"
                        : " for "
                            + Places.length(facts, stretch.coveredTo() - stretch.coveredFrom())))
        .collect(Collectors.joining(", "));
  }
}
