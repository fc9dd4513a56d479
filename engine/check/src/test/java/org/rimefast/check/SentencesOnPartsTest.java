package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.BOX;
import static org.rimefast.check.SentencePlans.ROOM;
import static org.rimefast.check.SentencePlans.TEMPERATURE;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.bracket;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.panel;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.plan.Plan;
import org.rimefast.units.Units;

/**
 * What a standard must be able to say of parts without Java, each said and each seen met, broken
 * and undecided. Words that the steel vocabulary does not have are declared here, as a planner
 * would; plans and tables are invented. What the findings say is held whole by files under {@code
 * sentences/parts}.
 */
class SentencesOnPartsTest {
  @Test
  void aBoxSitsInAnOuterBayWithAClearance() {
    Plan plan =
        module(
            ", 'boxes': [%s, %s, %s]"
                .formatted(
                    box("A", 214), box("B", 75), box("C", 492).replace("'depth': 47.6, ", "")));
    new Sentence("parts/box-in-outer-bay", "box must sit in outer bay with clearance >= 50 mm")
        .on(plan)
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
    new Sentence(
            "parts/box-in-outer-bay-constant",
            "box must sit in outer bay with clearance >= foam behind a box")
        .with("let foam behind a box be 50 mm\n\n")
        .on(plan)
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
    new Sentence(
            "parts/box-in-outer-bay-table",
            "box must sit in outer bay with clearance >= its foam needed")
        .with(
            """
            table foam needed of a box
              by its mount
              | flush or covered | 50 mm |
              | surface          | 10 mm |

            """)
        .on(plan)
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
  }

  @Test
  void noUnbrokenMetalPathLeadsFromTheShell() {
    new Sentence("parts/no-metal-path", "each electrical part must not lead over metal to a face")
        .on(
            module(
                ", 'boxes': [%s, %s, %s], 'brackets': [%s, %s, %s]"
                    .formatted(
                        box("A", 631),
                        box("B", 353),
                        box("C", 909),
                        bracket("short", 659, 38, ", 'material': 'steel'"),
                        bracket("long", 381, 66.3, ", 'material': 'steel'"),
                        bracket("unknown", 937, 66.3, ""))))
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
  }

  @Test
  void aPanelOnTheLiningIsFedFromAJunctionBoxBehindIt() {
    String junctions = "";
    String cables = "";
    for (int i = 1; i <= 4; i++) {
      junctions += (i == 1 ? "" : ", ") + box("J" + i, i * 1000).replace("device", "junction");
      String ends = ", 'diameter': 12, 'from': 'P" + i + "', 'to': 'J" + i + "'";
      String slack = i == 3 ? "" : ", 'slack': {'to': " + (i == 2 ? 100 : 320) + "}";
      cables +=
          (i == 1 ? "" : ", ")
              + run("F" + i, "armoured-cable", ends + slack, i + "050 600 20", i + "050 1100 20");
    }
    new Sentence(
            "parts/panel-fed",
            "for each panel, (it is mounted on the lining and (for each cable (where it enters the"
                + " panel), there is a box (where its kind is junction and the cable enters it and it"
                + " passes behind the panel and slack at it of the cable >= 300 mm))) must hold")
        .on(
            module(
                ", 'panels': [%s, %s, %s, %s, %s], 'boxes': [%s], 'runs': [%s]"
                    .formatted(
                        panel("P1", 1000, "surface"),
                        panel("P2", 2000, "surface"),
                        panel("P3", 3000, "surface"),
                        panel("P4", 5000, "surface"),
                        panel("recessed", 6000, "flush"),
                        junctions.replace("'up': 1200", "'up': 1400"),
                        cables)))
        .says(MET, "P1")
        .says(BROKEN, "P2", "P4", "recessed")
        .says(UNDECIDED, "P3")
        .isHeld();
  }

  @Test
  void noPointOfAFloorLineIsFarFromAReceptacle() {
    new Sentence(
            "parts/receptacles",
            "each wall must have way along the floor line to a receptacle below 5.5 ft in wall spaces"
                + " from 2 ft <= 6 ft")
        .on(
            FittedPlans.receptacles(
                module(
                    ", 'boxes': [%s, %s, %s, %s, %s, %s], 'openings': [%s]"
                        .formatted(
                            box("A", 1500),
                            box("B", 4500),
                            box("C", 7500),
                            box("D", 10500),
                            box("E", 1500).replace("left", "right"),
                            box("F", 1500).replace("left", "rear").replace("'along': 1500.0, ", ""),
                            "{'id': 'doors', 'face': 'front', 'from': 0, 'sill': 0, 'width': 2340, 'height': 2280}")),
                "A",
                "B",
                "C",
                "D",
                "E"))
        .says(MET, "left", "front")
        .says(BROKEN, "right")
        .says(UNDECIDED, "rear")
        .isHeld();
  }

  @Test
  void theWorkingSpaceBeforeAPanelIsFree() {
    String box = box("A", 4300).replace("flush", "surface").replace("47.6", "200");
    new Sentence("parts/working-space", "panel must keep free a space of 30 in by 36 in by 78 in")
        .on(
            module(
                ", 'panels': [%s, %s, %s], 'boxes': [%s, %s, %s, %s]"
                    .formatted(
                        panel("free", 1000, "surface"),
                        panel("crowded", 4000, "surface"),
                        panel("unknown", 8000, "surface"),
                        box,
                        box.replace("'A'", "'L'").replace("4300", "3700"),
                        box("flush", 1000),
                        box("B", 8000).replace(", 'mount': 'flush'", ""))))
        .says(MET, "free")
        .says(BROKEN, "crowded")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  /** Dew point: ISO 13788, saturation pressure above 0 degC, formula from memory. */
  @Test
  void theColdestSurfaceOfABoxStaysAboveTheDewPoint() {
    Map<String, Double> factor = Map.of("A", 0.75, "B", 0.70);
    InventedWords words =
        new InventedWords()
            .measured(
                ROOM,
                "dew point",
                Units.DEGREE_CELSIUS,
                (facts, element) -> {
                  double pressure = 610.5 * Math.exp(17.269 * 21 / (237.3 + 21)) * 0.35;
                  double log = Math.log(pressure / 610.5);
                  return 273.15 + 237.3 * log / (17.269 - log);
                });
    words
        .words()
        .number(
            new Property(
                "coldest",
                "coldest surface at _",
                BOX,
                List.of(new Slot.Of(TEMPERATURE)),
                TEMPERATURE),
            (facts, element, arguments, out) -> {
              double outside = arguments.number(0).least();
              Double at = factor.get(InventedWords.id(facts, element));
              out.exactly(at == null ? Double.NaN : outside + at * (273.15 + 21 - outside));
            },
            (facts, element, arguments, out) -> {
              if (!factor.containsKey(InventedWords.id(facts, element))) {
                out.missing(facts.missing(element, "temperature factor"));
              }
            });
    new Sentence(
            "parts/dew-point",
            "for each box, its coldest surface at outdoor design temperature of its room must be at"
                + " least dew point of its room + 1 K")
        .in(words)
        .on(
            module(
                ", 'boxes': [%s, %s, %s]".formatted(box("A", 214), box("B", 492), box("C", 770))))
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
  }

  @Test
  void aStudThatCarriesABoxIsBracedAndFoamReachesBehindOrBesideTheBox() {
    String brace =
        "{'id': '%s', 'face': 'left', 'along': %s, 'up': %s, 'width': 300, 'height': 40, 'depth': 18, 'front': 0, 'material': 'wood'}";
    new Sentence(
            "parts/stud-braced",
            "for each stud, each box (where it touches the stud) must be within 300 mm of a bar"
                + " (where it touches the stud)")
        .on(
            module(
                ", 'studs': [%s, %s, %s, %s], 'boxes': [%s, %s, %s], 'bars': [%s, %s, %s]"
                    .formatted(
                        plainStud("near", 500),
                        plainStud("far", 1500),
                        plainStud("unknown", 2500),
                        plainStud("bare", 3500),
                        box("A", 542.875),
                        box("B", 1542.875),
                        box("C", 2542.875),
                        brace.formatted("low", 500, 1000),
                        brace.formatted("high", 1500, 2000),
                        brace.formatted("somewhere", 2500, 1000).replace("'depth': 18, ", ""))))
        .says(MET, "near")
        .says(BROKEN, "far")
        .says(UNDECIDED, "unknown")
        .says(MET, "bare")
        .isHeld();
    String plate =
        "{'id': '%s', 'face': 'left', 'along': 3214, 'up': %s, 'width': 2300, 'height': 40, 'depth': 18, 'front': 0, 'material': 'wood'}";
    new Sentence(
            "parts/foam-access",
            "box must have clearance >= 75 mm or have foam access beside >= 75 mm")
        .on(
            module(
                ", 'boxes': [%s, %s, %s, %s], 'studs': [%s, %s, %s, %s, %s], 'bars': [%s, %s]"
                    .formatted(
                        box("A", 214),
                        box("B", 2214),
                        box("C", 4214).replace("'depth': 47.6, ", ""),
                        box("shallow", 2770).replace("47.6", "30"),
                        plainStud("S1", 2100),
                        plainStud("S2", 2328),
                        plainStud("S3", 4100),
                        plainStud("S4", 4328),
                        plainStud("S5", 2860),
                        plate.formatted("above", 1300),
                        plate.formatted("below", 1100))))
        .says(MET, "A", "shallow")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
  }

  private static String plainStud(String id, double along) {
    return "{'id': '%s', 'face': 'left', 'along': %s}".formatted(id, along);
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("parts")).isEmpty();
  }
}
