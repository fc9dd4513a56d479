package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.panel;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Door;
import org.rimefast.plan.RunBuild.Connector;

/**
 * Words for the space around parts, each seen met, broken and undecided. Plans are invented. What
 * the findings say is held whole by files under {@code sentences/space}.
 */
class SentencesOnSpaceTest {
  private static String bar(String id, double along, double up, double width, double height) {
    return "{'id': '%s', 'face': 'left', 'along': %s, 'up': %s, 'width': %s, 'height': %s, 'depth': 3, 'front': 0, 'material': 'steel'}"
        .formatted(id, along, up, width, height);
  }

  @Test
  void steelBehindAPartIsReachedFromItsOpenSides() {
    String bars =
        ", 'bars': [%s, %s, %s]"
            .formatted(
                bar("narrow", 1000, 1200, 500, 100),
                bar("wide", 3000, 1200, 1500, 1500),
                bar("lost", 5000, 1200, 500, 100).replace("'along': 5000.0, ", ""));
    new Sentence("space/bare-behind", "bar must have bare steel behind <= 0.1 m2")
        .on(FittedPlans.gun(module(bars), 50, 400))
        .says(MET, "narrow")
        .says(BROKEN, "wide")
        .says(UNDECIDED, "lost")
        .on(module(bars))
        .says(UNDECIDED, "narrow")
        .isHeld();
  }

  @Test
  void bareSteelOfAFaceIsThatBehindPartsAndInNarrowCorners() {
    String plan =
        ", 'studs': [{'id': 'S1', 'face': 'left', 'along': 36}, {'id': 'S2', 'face': 'right', 'along': 400}], 'bars': [%s]"
            .formatted(bar("wide", 3000, 1200, 1500, 1500));
    new Sentence("space/bare-face", "each wall must have bare steel <= 0.05 m2")
        .on(FittedPlans.gun(module(plan), 24, 400))
        .says(MET, "right", "front")
        .says(BROKEN, "left")
        .on(module(plan))
        .says(UNDECIDED, "left")
        .isHeld();
  }

  @Test
  void foamAccessBehindIsStraightBackToTheSheetOrTheNextPart() {
    new Sentence("space/access-behind", "box must have foam access behind >= 50 mm")
        .on(
            module(
                ", 'boxes': [%s, %s, %s, %s], 'bars': [{'id': 'bar', 'face': 'left', 'along': 770, 'up': 1200, 'width': 100, 'height': 20, 'depth': 10, 'front': 50}]"
                    .formatted(
                        box("bay", 214),
                        box("rib", 353),
                        box("barred", 770),
                        box("lost", 1048).replace("'depth': 47.6, ", ""))))
        .says(MET, "bay")
        .says(BROKEN, "rib", "barred")
        .says(UNDECIDED, "lost")
        .isHeld();
  }

  @Test
  void quantitiesOfFacesAreThoseOfTheirSheets() {
    String door =
        ", 'openings': [{'id': 'D', 'face': 'left', 'from': 1000, 'sill': 0, 'width': 1000, 'height': 2000}]";
    new Sentence(
            "space/quantities",
            "each face must have foam area <= 31 m2 and have steel area <= 33 m2 and have foam volume"
                + " <= 3 m3")
        .on(module(door))
        .says(MET, "left", "floor")
        .says(BROKEN, "right")
        .on(Given.plan(Given.json(40, 25, door).replace(", 'thickness': '3 in'", "")))
        .says(UNDECIDED, "left")
        .isHeld();
  }

  @Test
  void aPanelOpensItsDoor() {
    new Sentence("space/door", "panel must open its door freely")
        .on(
            module(
                ", 'panels': [%s, %s, %s], 'boxes': [%s, %s, %s]"
                    .formatted(
                        panel("free", 1000, "surface"),
                        panel("crowded", 4000, "surface"),
                        panel("unknown", 8000, "surface"),
                        box("A", 4000)
                            .replace("flush", "surface")
                            .replace("47.6", "300")
                            .replace("1200", "1500"),
                        box("flush", 1000),
                        box("B", 8000).replace(", 'mount': 'flush'", "").replace("1200", "1500"))))
        .says(MET, "free")
        .says(BROKEN, "crowded")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  @Test
  void aDoorKeepsItsSwingFree() {
    String opening =
        "{'id': '%s', 'face': '%s', 'from': %s, 'sill': %s, 'width': 900, 'height': 600}";
    new Sentence("space/swing", "each opening must keep its swing free")
        .on(
            FittedPlans.doors(
                module(
                    ", 'openings': [%s, %s, %s, %s, %s], 'boxes': [%s]"
                        .formatted(
                            opening.formatted("free", "left", 1000, 0),
                            opening.formatted("blocked", "left", 4000, 0),
                            opening.formatted("outward", "right", 1000, 0),
                            opening.formatted("unknown", "right", 4000, 20),
                            opening.formatted("window", "right", 7000, 900),
                            box("A", 5100)
                                .replace("'up': 1200", "'up': 500")
                                .replace("'width': 54", "'width': 500")
                                .replace("flush", "surface"))),
                Map.of(
                    "free", new Door(Door.Hinge.LEFT, Door.Swing.INWARD),
                    "blocked", new Door(Door.Hinge.LEFT, Door.Swing.INWARD),
                    "outward", new Door(Door.Hinge.RIGHT, Door.Swing.OUTWARD))))
        .says(MET, "free", "outward", "window")
        .says(BROKEN, "blocked")
        .says(UNDECIDED, "unknown")
        .isHeld();
    assertThat(
            Given.explain(
                    "each opening must reach the floor",
                    module(", 'openings': [" + opening.formatted("low", "left", 1000, 100) + "]"),
                    "low")
                .verdict())
        .isEqualTo(MET);
  }

  @Test
  void aBoxBehindALargerPartIsCovered() {
    new Sentence("space/covered", "box must be covered by a panel")
        .on(
            module(
                ", 'panels': [%s, %s], 'boxes': [%s, %s, %s]"
                    .formatted(
                        panel("P", 1000, "surface"),
                        panel("Q", 4000, "surface"),
                        box("inside", 1000).replace("'up': 1200", "'up': 1400"),
                        box("beside", 4170).replace("'up': 1200", "'up': 1400"),
                        box("lost", 4000)
                            .replace("'up': 1200", "'up': 1400")
                            .replace("'depth': 47.6, ", ""))))
        .says(MET, "inside")
        .says(BROKEN, "beside")
        .says(UNDECIDED, "lost")
        .isHeld();
  }

  @Test
  void armourCarriesColdIntoABoxUnlessAConnectorInsulates() {
    String cables = "";
    String boxes = "";
    String[] ids = {"metal", "insulating", "unknown"};
    for (int i = 0; i < 3; i++) {
      double along = 214 + 556 * i;
      boxes += (i == 0 ? "" : ", ") + box(ids[i], along);
      cables +=
          (i == 0 ? "" : ", ")
              + run(
                  "C" + i,
                  "armoured-cable",
                  ", 'diameter': 12, 'to': '" + ids[i] + "'",
                  (along + 139) + " 900 60.3",
                  (along + 139) + " 1000 20",
                  along + " 1162 20");
    }
    new Sentence(
            "space/metal-cable",
            "for each box, it must not lead over metal to a face without passing a conduit")
        .on(
            FittedPlans.connectors(
                module(", 'boxes': [%s], 'runs': [%s]".formatted(boxes, cables)),
                Map.of("C0", Connector.METAL, "C1", Connector.INSULATING)))
        .says(MET, "insulating")
        .says(BROKEN, "metal")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("space")).isEmpty();
  }
}
