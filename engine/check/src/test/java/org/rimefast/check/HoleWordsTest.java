package org.rimefast.check;

import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.Test;

/**
 * Where service holes are in a stud. Limits: SSMA product technical guide, as punch-outs of studs;
 * a stud without a height reaches 25 mm short of floor and roof here.
 */
class HoleWordsTest {
  @Test
  void holesKeepAwayFromTheEndsOfTheStud() {
    new Sentence("holes/edge", "each stud must have hole edge distance >= 10 in")
        .on(
            studs(
                stud("in", hole("304", "100")),
                stud("low", hole("303", "100")),
                stud("whole", ""),
                stud("about", hole("'304 mm +- 2 mm'", "100"))))
        .says(MET, "in")
        .says(BROKEN, "low")
        .says(UNDECIDED, "whole", "about")
        .isHeld();
  }

  @Test
  void holesKeepAwayFromEachOther() {
    new Sentence("holes/spacing", "each stud must have hole spacing >= 24 in")
        .on(
            studs(
                stud(
                    "far",
                    hole("600", "100") + ", " + hole("1209.6", "100") + ", " + hole("1900", "100")),
                stud(
                    "near",
                    hole("600", "100") + ", " + hole("1900", "100") + ", " + hole("1209.5", "100")),
                stud("one", hole("600", "100"))))
        .says(MET, "far")
        .says(BROKEN, "near")
        .says(UNDECIDED, "one")
        .isHeld();
  }

  @Test
  void theLargestHoleCounts() {
    new Sentence(
            "holes/size", "each stud must have widest hole <= 3/4 in and have tallest hole <= 4 in")
        .on(
            studs(
                stud("small", hole("600", "101.6")),
                stud("tall", hole("600", "50") + ", " + hole("1900", "102")),
                stud("wide", hole("600", "50").replace("19.05", "20")),
                stud("whole", "")))
        .says(MET, "small")
        .says(BROKEN, "tall", "wide")
        .says(UNDECIDED, "whole")
        .isHeld();
  }

  private static String hole(String up, String height) {
    return "{'up': %s, 'width': 19.05, 'height': %s}".formatted(up, height);
  }

  private static String stud(String id, String holes) {
    return "{'id': '%s', 'face': 'left', 'along': 1000, 'holes': [%s]}".formatted(id, holes);
  }

  private static org.rimefast.plan.Plan studs(String... studs) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < studs.length; i++) {
      all.append(i == 0 ? "" : ", ").append(studs[i].replace("1000", "" + (1000 + 400 * i)));
    }
    return SentencePlans.module(", 'studs': [" + all + "]");
  }
}
