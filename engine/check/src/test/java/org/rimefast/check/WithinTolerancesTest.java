package org.rimefast.check;

import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.Test;

/** Intervals that hold the truth wherever things are within the plan's tolerances. */
class WithinTolerancesTest {
  private static final String CABLE =
      ", 'runs': [{'id': 'C', 'kind': 'metal-clad-cable', 'diameter': 10, %s'path': [%s]}]";

  private static String point(int along, int up) {
    return "{'face': 'left', 'along': %d, 'up': %d, 'depth': 20}".formatted(along, up);
  }

  /** The strap drawn 1 m along may be 1.8 m along: then no stretch is longer than 1.2 m. */
  @Test
  void aStrapThatMayBeFartherAlongThanTheNextShortensTheStretchAfterThat() {
    String path = point(500, 600) + ", " + point(3500, 600);
    new Sentence("tolerances/straps", "cable must have support spacing <= 1.5 m")
        .on(module(CABLE.formatted("'supports': ['1000 mm +- 800 mm', 1100], ", path)))
        .says(UNDECIDED, "C");
    new Sentence("tolerances/straps", "cable must have support spacing <= 1.1 m")
        .on(module(CABLE.formatted("'supports': ['1000 mm +- 800 mm', 1100], ", path)))
        .says(BROKEN, "C");
  }

  @Test
  void aStrapBeyondTheEndHoldsNothing() {
    String path = point(500, 600) + ", " + point(1500, 600);
    new Sentence("tolerances/beyond", "cable must have support spacing <= 1.5 m")
        .on(module(CABLE.formatted("'supports': [500, 1001], ", path)))
        .says(UNDECIDED, "C")
        .on(module(CABLE.formatted("'supports': [500, 1000], ", path)))
        .says(MET, "C")
        .on(module(CABLE.formatted("'supports': [500, '1001 mm +- 1 mm'], ", path)))
        .says(MET, "C");
  }

  /** The cable passes at the hole, and perhaps again 300 mm lower, where it ends. */
  @Test
  void whereARunOnlyPerhapsPassesItsOffsetIsNotCertain() {
    String stud =
        ", 'tolerances': {'electrical': 5}, 'studs': [{'id': 'S', 'face': 'left', 'along': 1000,"
            + " 'holes': [{'up': 600, 'width': 20, 'height': 100}]}]";
    String to = point(700, 600) + ", " + point(1300, 600) + ", " + point(1300, 300) + ", ";
    String sentence =
        "for each run, (for each stud (where the run passes through it),"
            + " offset from the service hole of it of the run <= 20 mm) must hold";
    new Sentence("tolerances/offset", sentence)
        .on(module(stud + CABLE.formatted("", to + point(1003, 300))))
        .says(UNDECIDED, "C")
        .on(module(stud + CABLE.formatted("", to + point(1020, 300))))
        .says(MET, "C")
        .on(module(stud + CABLE.formatted("", to + point(980, 300))))
        .says(BROKEN, "C");
  }

  /** Its back is at the lining's room side but for what a computer rounds. */
  @Test
  void aBoxWhoseBackIsDrawnAtTheLiningComesAfterTheFoam() {
    String box =
        ", 'foaming': {'nozzle': 500, 'reach': 400}, 'boxes': [{'id': 'B', 'kind': 'square',"
            + " 'face': 'left', 'along': 1000, 'up': 1200, 'width': 100, 'height': 100,"
            + " 'depth': 38.1, 'front': -50.8}]";
    new Sentence("tolerances/lining", "box must have bare steel behind <= 0 m2")
        .on(module(box))
        .says(MET, "B");
  }
}
