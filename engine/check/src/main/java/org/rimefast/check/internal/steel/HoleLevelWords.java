package org.rimefast.check.internal.steel;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Explanation;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.Reading;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.plan.Part;

/** Words for how the service holes of studs line up. */
final class HoleLevelWords {
  private HoleLevelWords() {}

  static void addTo(Dictionary.Builder words) {
    words
        .number(
            new Property(
                "stud.hole offset from",
                "hole offset from _",
                Nouns.STUD,
                List.of(Kinds.element(Nouns.STUD)),
                Kinds.LENGTH),
            (facts, element, arguments, reading) ->
                offset(facts, element, arguments.element(0), reading),
            (facts, element, arguments, out) -> explain(facts, element, arguments.element(0), out))
        .number(
            Kinds.property(Nouns.STUD, "hole offset to the next stud", Kinds.LENGTH),
            (facts, element, arguments, reading) -> {
              int next = StudWords.next(facts, element);
              if (next < 0) {
                reading.missing();
              } else {
                offset(facts, element, next, reading);
              }
            },
            HoleLevelWords::explainNext);
  }

  /** Levels are heights on walls, and places across the module on roof and floor. */
  private static boolean isComparable(PlanFacts facts, int a, int b) {
    return facts.part(a).face().isWall() == facts.part(b).face().isWall();
  }

  private static void offset(PlanFacts facts, int a, int b, Reading reading) {
    if (!isComparable(facts, a, b)) {
      reading.missing();
    } else if (a == b && !((Part.Stud) facts.part(a)).holes().isEmpty()) {
      reading.exactly(0);
    } else {
      reading.between(
          facts.geometry().runs().holeOffset(a, b, false) / 1000,
          facts.geometry().runs().holeOffset(a, b, true) / 1000);
    }
  }

  private static void explain(PlanFacts facts, int a, int b, Explanation out) {
    if (!isComparable(facts, a, b)) {
      out.reason(
          facts.name(a).label() + " and " + facts.name(b).label() + " do not stand the same way");
      return;
    }
    for (int stud : new int[] {a, b}) {
      List<Part.ServiceHole> holes = ((Part.Stud) facts.part(stud)).holes();
      if (holes.isEmpty()) {
        out.reason(facts.name(stud).label() + " has no service hole");
      } else {
        out.fact(
            "service holes of " + facts.name(stud).label(),
            String.join(
                ", ",
                holes.stream()
                    .map(hole -> Places.length(facts, hole.up().millimetres()))
                    .toList()));
      }
    }
  }

  private static void explainNext(
      PlanFacts facts, int element, Arguments arguments, Explanation out) {
    StudWords.explainRow(facts, element, arguments, out);
    int next = StudWords.next(facts, element);
    if (next >= 0) {
      explain(facts, element, next, out);
    }
  }
}
