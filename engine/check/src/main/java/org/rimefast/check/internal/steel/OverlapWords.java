package org.rimefast.check.internal.steel;

import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Truth;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.ModuleGeometry;

/** Words for what is drawn where something else already is. */
final class OverlapWords {
  private OverlapWords() {}

  static void addTo(Dictionary.Builder words) {
    words.relation(
        Kinds.verb(Nouns.ITEM, "overlap _", "overlaps _", Kinds.element(Nouns.PART)),
        OverlapWords::overlaps,
        (facts, element, arguments, candidates) ->
            GapWords.neighbouringParts(facts, element, candidates),
        OverlapWords::explain);
  }

  private static Truth overlaps(PlanFacts facts, int element, Arguments arguments) {
    int part = arguments.element(0);
    ModuleGeometry geometry = facts.geometry();
    if (element == part) {
      return Truth.FALSE;
    }
    if (facts.isPart(element)) {
      double contact = geometry.contactTolerance();
      return Extents.apart(facts, element, part, 0)
              || Extents.drawnBeside(facts, element, part, contact)
          ? Truth.FALSE
          : Touch.truth(geometry.runs().partsOverlap(element, part));
    }
    int run = facts.runIndex(element);
    Truth overlaps = Touch.truth(geometry.runs().overlaps(run, part));
    if (overlaps == Truth.FALSE) {
      return overlaps;
    }
    overlaps = overlaps.and(Entries.enters(facts, element, part).not());
    return facts.part(part) instanceof Part.Stud
        ? overlaps.and(Touch.truth(geometry.runs().passesHole(run, part)).not())
        : overlaps;
  }

  private static void explain(PlanFacts facts, int element, Arguments arguments, Explanation out) {
    int part = arguments.element(0);
    ModuleGeometry geometry = facts.geometry();
    boolean isPart = facts.isPart(element);
    double depth =
        element == part
            ? Double.NaN
            : isPart
                ? geometry.runs().partOverlap(element, part)
                : geometry.runs().overlap(facts.runIndex(element), part);
    double past = isPart ? geometry.runs().outOfTrack(element, part) : Double.NaN;
    if (depth > 0 && past <= geometry.contactTolerance()) {
      out.fact("in the track", "the end of the stud");
    } else if (depth > 0) {
      out.fact("reaches into it by", Places.length(facts, depth));
      if (past > 0) {
        out.fact("the stud reaches past the track by", Places.length(facts, past));
      }
    }
    geometry.missing(part).forEach(pointer -> out.missing(facts.missing(pointer)));
    if (isPart) {
      geometry.missing(element).forEach(pointer -> out.missing(facts.missing(pointer)));
    } else {
      geometry
          .runMissing(facts.runIndex(element))
          .forEach(pointer -> out.missing(facts.missing(pointer)));
      Entries.explain(facts, element, part, out);
    }
  }
}
