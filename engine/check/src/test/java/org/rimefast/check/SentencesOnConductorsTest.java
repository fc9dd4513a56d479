package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.A_BOX;
import static org.rimefast.check.SentencePlans.BOX;
import static org.rimefast.check.SentencePlans.CABLE;
import static org.rimefast.check.SentencePlans.CONDUIT;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Plan;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/**
 * What a standard must be able to say of conductors without Java, each said and each seen met,
 * broken and undecided. Words that the steel vocabulary does not have are declared here, as a
 * planner would; plans and tables are invented. What the findings say is held whole by files under
 * {@code sentences/conductors}.
 */
class SentencesOnConductorsTest {
  /** Volumes: NFPA 70, 314.16(B), from memory; a device counts twice, all clamps once. */
  @Test
  void aBoxHoldsWhatConductorsDevicesAndClampsTake() {
    Noun conductor = new Noun("conductor", "conductor", "conductors", List.of(CABLE));
    Map<String, String> gauges = new HashMap<>();
    List<String> wires = new ArrayList<>();
    for (String box : List.of("A", "B", "C")) {
      for (int i = 1; i <= 3; i++) {
        String id = "wire-" + box + i;
        gauges.put(id, box.equals("B") ? "number-twelve" : "number-fourteen");
        wires.add(
            run(
                id,
                "nonmetallic-cable",
                ", 'from': '%s', 'to': '%s'".formatted(box, box),
                "500 600 20",
                "900 600 20"));
      }
    }
    gauges.remove("wire-C3");
    InventedWords words =
        new InventedWords()
            .noun(conductor, "wire")
            .choice(
                conductor,
                "gauge",
                List.of("number-fourteen", "number-twelve", "number-ten"),
                gauges)
            .number(BOX, "number of devices", Units.ONE, Map.of("A", 1.0, "B", 1.0, "C", 1.0))
            .number(BOX, "sets of clamps", Units.ONE, Map.of("A", 1.0, "B", 1.0, "C", 0.0))
            .number(
                BOX, "inside volume", Units.CUBIC_INCH, Map.of("A", 12.0, "B", 13.0, "C", 10.2));
    new Sentence(
            "conductors/box-fill",
            "for each box, total volume taken of conductors (where it enters the box) + (2 times its"
                + " number of devices + its sets of clamps) times largest volume taken of conductors"
                + " (where it enters the box) must be at most its inside volume")
        .with(
            """
            table volume taken of a conductor
              by its gauge
              | number-fourteen | 2 in3    |
              | number-twelve   | 2.25 in3 |
              | number-ten      | 2.5 in3  |

            """)
        .in(words)
        .on(
            module(
                ", 'boxes': [%s, %s, %s], 'runs': [%s]"
                    .formatted(
                        box("A", 500), box("B", 900), box("C", 1300), String.join(", ", wires))))
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C")
        .isHeld();
  }

  /** Limits: NFPA 70, chapter 9, table 1, and 358.26, from memory. */
  @Test
  void aConduitIsNotOverfullAndNotBentTooOften() {
    InventedWords words =
        new InventedWords()
            .number(
                CONDUIT,
                "fill",
                Units.PERCENT,
                Map.of("two", 31.0, "one", 53.5, "three", 39.0, "unknown", 35.0, "bent", 20.0))
            .number(
                CONDUIT,
                "number of conductors",
                Units.ONE,
                Map.of("two", 2.0, "one", 1.0, "three", 3.0, "bent", 3.0));
    words
        .words()
        .stretch(
            new Stretch("between", "between _ and _", CONDUIT, List.of(A_BOX, A_BOX)),
            (facts, element, arguments, found) -> found.add(0, 100),
            Word.Explainer.NONE)
        .number(
            new Property(
                "bend",
                "bend _",
                CONDUIT,
                List.of(new Slot.Along(CONDUIT)),
                new ValueType.Number(Dimension.ANGLE, Units.DEGREE)),
            (facts, element, arguments, out) -> out.exactly(PathWords.turns(facts.run(element))),
            Word.Explainer.NONE);
    String ends = ", 'from': 'A', 'to': 'B'";
    // Four right angles.
    String[] path = {
      "500 600 20", "900 600 20", "900 900 20", "500 900 20", "500 1300 20", "900 1300 20"
    };
    new Sentence(
            "conductors/conduit-fill",
            "for each conduit, (its fill <= (if its number of conductors is 1 then 53 % otherwise if"
                + " its number of conductors is 2 then 31 % otherwise 40 %) and (for each box (where"
                + " the conduit enters it), (for each box (where it is not the first box and the"
                + " conduit enters it), bend between the first box and the second box of the conduit"
                + " <= 360 deg))) must hold")
        .in(words)
        .on(
            module(
                ", 'boxes': [%s, %s], 'runs': [%s, %s, %s, %s, %s]"
                    .formatted(
                        box("A", 500),
                        box("B", 900),
                        run("two", "emt", ends, path),
                        run("one", "emt", ends, path),
                        run("three", "emt", ends, path),
                        run("unknown", "emt", ends, path),
                        run(
                            "bent",
                            "emt",
                            ends,
                            "500 600 20",
                            "900 600 20",
                            "900 900 20",
                            "500 900 20",
                            "500 1300 20",
                            "900 1300 20",
                            "900 1600 20"))))
        .says(MET, "two", "three")
        .says(BROKEN, "one", "bent")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  /**
   * Breakers for copper: NFPA 70, 240.4(D), from memory; 14, 12 and 10 AWG have 2.08, 3.31 and 5.26
   * mm2, ASTM B258.
   */
  @Test
  void aCircuitHasFewOutletsAFittingConductorAndLittleVoltageDrop() {
    Noun circuit = new Noun("circuit", "circuit", "circuits", List.of(CABLE));
    InventedWords words =
        new InventedWords()
            .noun(circuit, "circuit")
            .link(
                BOX,
                "circuit",
                circuit,
                Map.of(
                    "R-1",
                    "circuit-1",
                    "R-2",
                    "circuit-1",
                    "R-3",
                    "circuit-2",
                    "lamp",
                    "circuit-3"))
            .number(
                circuit,
                "conductor size",
                Units.SQUARE_MILLIMETRE,
                Map.of("circuit-1", 3.31, "circuit-2", 2.08, "circuit-3", 5.26))
            .number(
                circuit,
                "breaker",
                Units.AMPERE,
                Map.of("circuit-1", 20.0, "circuit-2", 20.0, "circuit-3", 30.0))
            .number(
                circuit, "voltage drop", Units.PERCENT, Map.of("circuit-1", 2.9, "circuit-2", 1.5));
    String sentence =
        "for each circuit, (number of boxes per circuit <= %s and its breaker <= (if its"
            + " conductor size < 3.31 mm2 then 15 A otherwise if its conductor size < 5.26 mm2 then"
            + " 20 A otherwise 30 A)"
            + " and its voltage drop <= 3 %%) must hold";
    Plan plan =
        module(
            ", 'boxes': [%s, %s, %s, %s], 'runs': [%s, %s, %s]"
                .formatted(
                    box("R-1", 500),
                    box("R-2", 800),
                    box("R-3", 1100),
                    box("lamp", 1400),
                    run("circuit-1", "armoured-cable", "", "500 600 20", "900 600 20"),
                    run("circuit-2", "armoured-cable", "", "500 700 20", "900 700 20"),
                    run("circuit-3", "armoured-cable", "", "500 800 20", "900 800 20")));
    new Sentence("conductors/circuit", sentence.formatted("12"))
        .in(words)
        .on(plan)
        .says(MET, "circuit-1")
        .says(BROKEN, "circuit-2")
        .says(UNDECIDED, "circuit-3")
        .isHeld();
    new Sentence("conductors/circuit-crowded", sentence.formatted("1"))
        .in(words)
        .on(plan)
        .says(BROKEN, "circuit-1", "circuit-2")
        .says(UNDECIDED, "circuit-3")
        .isHeld();
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("conductors")).isEmpty();
  }
}
