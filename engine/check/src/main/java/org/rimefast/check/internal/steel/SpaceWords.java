package org.rimefast.check.internal.steel;

import java.util.List;
import java.util.stream.Collectors;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.plan.Door;
import org.rimefast.plan.Opening;
import org.rimefast.plan.geometry.FloorLine;
import org.rimefast.plan.geometry.RoomSpace;

/** Words for room that is kept free: before parts, and where doors swing. */
final class SpaceWords {
  private static final PlanFacts.Key<RoomSpace> SPACE =
      new PlanFacts.Key<>("room that is free", RoomSpace.class);
  private static final int MOST_NAMED = 5;

  private SpaceWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .relation(
            Kinds.verb(
                Nouns.ELECTRICAL_PART,
                "keep free a space of _ by _ by _",
                "keeps free a space of _ by _ by _",
                Kinds.value(Kinds.LENGTH),
                Kinds.value(Kinds.LENGTH),
                Kinds.value(Kinds.LENGTH)),
            SpaceWords::keepsSpace,
            SpaceWords::explainSpace)
        .relation(
            Kinds.verb(Nouns.ELECTRICAL_PART, "open its door freely", "opens its door freely"),
            SpaceWords::opens,
            SpaceWords::explainDoor)
        .relation(
            Kinds.verb(Nouns.OPENING, "reach the floor", "reaches the floor"),
            SpaceWords::reachesFloor,
            Word.Explainer.NONE)
        .relation(
            Kinds.verb(Nouns.OPENING, "keep its swing free", "keeps its swing free"),
            (facts, element, arguments) -> keepsSwing(facts, facts.opening(element)),
            (facts, element, arguments, out) -> explainSwing(facts, facts.opening(element), out));
  }

  private static RoomSpace space(PlanFacts facts) {
    return facts.keep(SPACE, each -> RoomSpace.of(each.geometry()));
  }

  private static Truth keepsSpace(PlanFacts facts, int element, Arguments arguments) {
    if (!facts.part(element).face().isWall()) {
      return Truth.UNKNOWN;
    }
    RoomSpace space = space(facts);
    Reading width = arguments.number(0);
    Reading depth = arguments.number(1);
    Reading height = arguments.number(2);
    if (space.isCertainlyFreeBefore(
        element, width.most() * 1000, depth.most() * 1000, height.most() * 1000)) {
      return Truth.TRUE;
    }
    return space.mayBeFreeBefore(
            element, width.least() * 1000, depth.least() * 1000, height.least() * 1000)
        ? Truth.UNKNOWN
        : Truth.FALSE;
  }

  private static void explainSpace(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    if (isNotOnAWall(facts, element, out)) {
      return;
    }
    RoomSpace space = space(facts);
    Truth truth = keepsSpace(facts, element, arguments);
    if (truth == Truth.UNKNOWN) {
      name(facts, space.missingBefore(element), out);
    }
    List<Integer> found =
        space.before(
            element,
            arguments.number(0).most() * 1000,
            arguments.number(1).most() * 1000,
            arguments.number(2).most() * 1000);
    explainFound(facts, found, truth, "stands before it", out);
    length(facts, "room before it, to the lining opposite", space.depthBefore(element), out);
    length(facts, "height of the room", space.height(), out);
  }

  private static Truth opens(PlanFacts facts, int element, Arguments arguments) {
    if (!facts.part(element).face().isWall()) {
      return Truth.UNKNOWN;
    }
    RoomSpace space = space(facts);
    return space.certainlyOpens(element)
        ? Truth.TRUE
        : space.mayOpen(element) ? Truth.UNKNOWN : Truth.FALSE;
  }

  private static void explainDoor(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    if (isNotOnAWall(facts, element, out)) {
      return;
    }
    RoomSpace space = space(facts);
    Truth truth = opens(facts, element, arguments);
    if (truth == Truth.UNKNOWN) {
      name(facts, space.missingForDoor(element), out);
    }
    explainFound(facts, space.beforeDoor(element), truth, "stands before its door", out);
    length(facts, "room before it, to the lining opposite", space.depthBefore(element), out);
  }

  private static boolean isNotOnAWall(PlanFacts facts, int element, Explanation out) {
    boolean not = !facts.part(element).face().isWall();
    if (not) {
      out.reason(facts.name(element).label() + " is on no wall: nobody stands before it");
    }
    return not;
  }

  /** Whether it does so for certain, perhaps or not at all; its sill may be off. */
  private static Truth reachesFloor(PlanFacts facts, int element, Arguments arguments) {
    Opening opening = facts.opening(element);
    if (!opening.face().isWall()) {
      return Truth.FALSE;
    }
    double above = opening.sill().millimetres() - FloorLine.HIGHEST_THRESHOLD;
    return Touch.more(above, opening.sill().siTolerance() * 1000).not();
  }

  private static Truth keepsSwing(PlanFacts facts, Opening opening) {
    RoomSpace space = space(facts);
    return space.isSwingCertainlyFree(opening)
        ? Truth.TRUE
        : space.maySwingBeFree(opening) ? Truth.UNKNOWN : Truth.FALSE;
  }

  private static void explainSwing(PlanFacts facts, Opening opening, Explanation out) {
    RoomSpace space = space(facts);
    Truth truth = keepsSwing(facts, opening);
    Door door = opening.door();
    name(facts, space.missingForSwing(opening), out);
    if (door != null) {
      out.fact("door", "hinge on the " + door.hinge().word() + ", opens " + door.opens().word());
      explainFound(facts, space.beforeOpening(opening), truth, "stands where it swings", out);
    } else if (truth == Truth.TRUE) {
      out.fact("door", "none, and it does not reach the floor");
    }
  }

  /** What stands in the way; if that is not certain, what is missing of it. */
  private static void explainFound(
      PlanFacts facts, List<Integer> found, Truth truth, String name, Explanation out) {
    if (found.isEmpty()) {
      out.fact(name, "nothing");
      return;
    }
    String names =
        found.stream()
            .limit(MOST_NAMED)
            .map(handle -> facts.name(handle).label())
            .collect(Collectors.joining(", "));
    int more = found.size() - MOST_NAMED;
    out.fact(name, more > 0 ? names + " and " + more + " more" : names);
    if (truth == Truth.UNKNOWN) {
      found.forEach(handle -> name(facts, space(facts).missing(handle), out));
    }
  }

  private static void length(PlanFacts facts, String name, double millimetres, Explanation out) {
    if (!Double.isNaN(millimetres)) {
      out.fact(name, Places.length(facts, millimetres));
    }
  }

  private static void name(PlanFacts facts, List<String> missing, Explanation out) {
    missing.forEach(pointer -> out.missing(facts.missing(pointer)));
  }
}
