package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.NOT_APPLICABLE;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/**
 * What a standard must be able to say of runs without Java, each said and each seen met, broken and
 * undecided. Words that the steel vocabulary does not have are declared here, as a planner would;
 * plans and tables are invented. What the findings say is held whole by files under {@code
 * sentences/runs}.
 */
class SentencesOnRunsTest {
  @Test
  void aCableClearsTheShellAlongItsWholeLengthAndStaysBehindTheStuds() {
    String diameter = ", 'diameter': 12";
    new Sentence(
            "runs/cable-clear",
            "each cable where it is in a wall or it is in the roof must"
                + " clear the shell by 25 mm along its whole length and not stand proud of the"
                + " studs")
        .on(
            module(
                ", 'runs': [%s, %s, %s, %s, %s]"
                    .formatted(
                        run("in", "armoured-cable", diameter, "500 600 20", "900 600 20"),
                        run("at the steel", "armoured-cable", diameter, "500 600 20", "900 600 40"),
                        run("proud", "armoured-cable", diameter, "500 600 20", "900 600 3"),
                        run("unknown", "armoured-cable", "", "500 600 20", "900 600 20"),
                        run("on the floor", "armoured-cable", diameter, "500 900 0", "900 900 0")
                            .replace("left", "floor"))))
        .says(MET, "in")
        .says(BROKEN, "at the steel", "proud")
        .says(UNDECIDED, "unknown")
        .says(NOT_APPLICABLE, "on the floor")
        .isHeld();
  }

  @Test
  void aCableFromAboveHasADripLoop() {
    String ends = ", 'diameter': 12, 'from': 'B', 'to': 'A'";
    new Sentence(
            "runs/drip-loop",
            "for each cable, (for each box (where the cable comes to it from above), drip loop"
                + " below it of the cable >= 25 mm) must hold")
        .on(
            module(
                ", 'boxes': [%s, %s], 'runs': [%s, %s, %s]"
                    .formatted(
                        box("A", 492),
                        box("B", 2000),
                        run(
                            "looped",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 1100 20",
                            "492 1150 20"),
                        run(
                            "straight",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 2000 20",
                            "492 1240 20"),
                        run(
                            "unknown",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 ? 20",
                            "492 1150 20"))))
        .says(MET, "looped")
        .says(BROKEN, "straight")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  /** Factors: NFPA 70, 320.24 and 330.24; that of nonmetallic cable, 334.24, from memory. */
  @Test
  void aBendIsNoSharperThanTheKindOfCableAllows() {
    String corner = "500 600 20|900 600 20|900 900 20";
    new Sentence(
            "runs/bend-radius",
            "each cable where it bends must have tightest bend radius >= its least bend factor times"
                + " diameter")
        .with(
            """
            table least bend factor of a cable
              by its kind, its armour
              | metal-clad-cable                      | interlocked or corrugated | 7  |
              | metal-clad-cable                      | smooth                    | 10 |
              | armoured-cable or nonmetallic-cable   | any                       | 5  |
              otherwise 10

            """)
        .on(
            module(
                ", 'runs': [%s, %s, %s, %s, %s, %s]"
                    .formatted(
                        bent(
                            "A",
                            "metal-clad-cable",
                            "'armour': 'interlocked', 'bendRadius': 84",
                            corner),
                        bent(
                            "B",
                            "metal-clad-cable",
                            "'armour': 'interlocked', 'bendRadius': 83",
                            corner),
                        bent("C", "nonmetallic-cable", "'bendRadius': 60", corner),
                        bent("D", "metal-clad-cable", "'bendRadius': 80", corner),
                        bent("E", "metal-clad-cable", "'armour': 'interlocked'", corner),
                        bent(
                            "straight",
                            "metal-clad-cable",
                            "'armour': 'smooth'",
                            "500 600 20|900 600 20"))))
        .says(MET, "A", "C")
        .says(BROKEN, "B")
        .says(UNDECIDED, "D", "E")
        .says(NOT_APPLICABLE, "straight")
        .isHeld();
  }

  private static String bent(String id, String kind, String more, String points) {
    return run(id, kind, ", 'diameter': 12, " + more, points.split("[|]"));
  }

  /** Limits: NFPA 70, 330.30. */
  @Test
  void aCableIsSupportedOftenEnoughAndNearEachBox() {
    String ends = ", 'from': 'A', 'to': 'B'";
    String[] path = {"500 600 20", "4500 600 20"};
    new Sentence(
            "runs/supports",
            "for each cable, (its support spacing <= 6 ft and (for each box (where the cable enters"
                + " it), support distance at it of the cable <= 12 in)) must hold")
        .on(
            module(
                ", 'boxes': [%s, %s], 'runs': [%s, %s, %s, %s]"
                    .formatted(
                        box("A", 500),
                        box("B", 4500),
                        run(
                            "sound",
                            "metal-clad-cable",
                            ends + ", 'supports': [300, 2000, 3750]",
                            path),
                        run("far", "metal-clad-cable", ends + ", 'supports': [300, 3750]", path),
                        run(
                            "late",
                            "metal-clad-cable",
                            ends + ", 'supports': [300, 2000, 3600]",
                            path),
                        run("unknown", "metal-clad-cable", ends, path))))
        .says(MET, "sound")
        .says(BROKEN, "far", "late")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  @Test
  void aConduitPassesOnlyThroughServiceHolesThatLineUp() {
    String thick = ", 'diameter': 18";
    new Sentence(
            "runs/holes-line-up",
            "for each conduit, (its service hole spread <= 3 mm and (for each stud (where the conduit"
                + " passes through it), the conduit passes through a service hole of it)) must hold")
        .on(
            module(
                ", 'studs': [%s, %s, %s, %s], 'runs': [%s, %s, %s]"
                    .formatted(
                        stud("S1", "'along': 400, ", 610),
                        stud("S2", "'along': 800, ", 612),
                        stud("S3", "'along': 1200, ", 616),
                        "{'id': 'whole', 'face': 'left', 'along': 1600}",
                        run("through", "emt", thick, "200 611 20", "1000 611 20"),
                        run("crooked", "emt", thick, "200 611 20", "1400 611 20"),
                        run("no hole", "emt", thick, "1400 611 20", "1800 611 20"))))
        .says(MET, "through")
        .says(BROKEN, "crooked", "no hole")
        .on(
            module(
                ", 'studs': [%s, %s], 'runs': [%s, %s]"
                    .formatted(
                        stud("S1", "'along': 400, ", 610),
                        stud("S2", "", 616),
                        run("unknown", "emt", thick, "200 611 20", "1000 611 20"),
                        run("how thick", "emt", "", "200 611 20", "500 611 20"))))
        .says(UNDECIDED, "unknown", "how thick")
        .isHeld();
  }

  @Test
  void aRunIsSetBackBehindTheStudsOrGuardedByAPlateOfSteel() {
    String hole =
        "{'id': '%s', 'face': 'left', 'along': %s, 'holes': [{'up': 610, 'width': 30, 'height':"
            + " 100%s}]}";
    new Sentence(
            "runs/set-back-at-studs",
            "for each cable, (for each stud (where the cable passes through it), set-back at it of"
                + " the cable >= 1-1/4 in or plate thickness at it of the cable >= 1.6 mm) must"
                + " hold")
        .on(
            module(
                ", 'studs': [%s, %s, %s], 'runs': [%s, %s, %s, %s]"
                    .formatted(
                        hole.formatted("plated", 400, ", 'plate': 1.6"),
                        hole.formatted("bare", 800, ", 'plate': 0"),
                        hole.formatted("unsaid", 1200, ""),
                        run(
                            "guarded",
                            "armoured-cable",
                            ", 'diameter': 12",
                            "300 610 20",
                            "500 610 20"),
                        run(
                            "near",
                            "armoured-cable",
                            ", 'diameter': 12",
                            "700 610 20",
                            "900 610 20"),
                        run("far", "armoured-cable", ", 'diameter': 4", "700 610 34", "900 610 34"),
                        run(
                            "open",
                            "armoured-cable",
                            ", 'diameter': 12",
                            "1100 610 20",
                            "1300 610 20"))))
        .says(MET, "guarded", "far")
        .says(BROKEN, "near")
        .says(UNDECIDED, "open")
        .isHeld();
  }

  private static String stud(String id, String along, double hole) {
    return "{'id': '%s', 'face': 'left', %s'holes': [{'up': %s, 'width': 30, 'height': 100}]}"
        .formatted(id, along, hole);
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("runs")).isEmpty();
  }
}
