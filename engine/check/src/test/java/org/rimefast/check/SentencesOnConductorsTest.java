package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.Plan;

/**
 * What a standard must be able to say of conductors without Java, each said and each seen met,
 * broken and undecided; plans are invented. What the findings say is held whole by files under
 * {@code sentences/conductors}.
 */
class SentencesOnConductorsTest {
  private static final String ON_THE_WAY = "500 600 20|900 600 20";

  /** Volumes: NFPA 70, 314.16(B); a device counts twice, all clamps once. */
  @Test
  void aBoxHoldsWhatConductorsDevicesAndClampsTake() {
    new Sentence(
            "conductors/box-fill",
            "for each box, total volume taken of conductors (where the box takes it) + (2 times its"
                + " number of devices + its sets of clamps) times largest volume taken of conductors"
                + " (where the box takes it) must be at most its volume")
        .with(
            """
            table volume taken of a conductor
              by its gauge
              | 14 | 2 in3    |
              | 12 | 2.25 in3 |
              otherwise 2.5 in3

            """)
        .on(
            module(
                ", 'boxes': [%s, %s, %s, %s], 'runs': [%s, %s, %s, %s]"
                    .formatted(
                        filled("A", 500, "12 in3", "'internal'"),
                        filled("B", 900, "13 in3", "'internal'"),
                        filled("C", 1300, "10.2 in3", "'none'"),
                        filled("D", 1700, "30 in3", "'none'")
                            .replace(", 'devices': [{'kind': 'receptacle'}]", ""),
                        wires("wire-A", "A", "'conductors': [{'size': '14 AWG', 'count': 3}]"),
                        wires("wire-B", "B", "'conductors': [{'size': '12 AWG', 'count': 3}]"),
                        wires("wire-C", "C", "'diameter': 12"),
                        wires("wire-D", "D", "'conductors': [{'size': '12 AWG', 'count': 3}]"))))
        .says(MET, "A")
        .says(BROKEN, "B")
        .says(UNDECIDED, "C", "D")
        .isHeld();
  }

  private static String filled(String id, double along, String volume, String clamps) {
    return box(id, along)
        .replace(
            "'material'",
            "'volume': '%s', 'devices': [{'kind': 'receptacle'}], 'clamps': %s, 'material'"
                .formatted(volume, clamps));
  }

  private static String wires(String id, String box, String more) {
    return run(
        id,
        "nonmetallic-cable",
        ", 'from': '%s', 'to': '%s', %s".formatted(box, box, more),
        ON_THE_WAY.split("[|]"));
  }

  /** Limits: NFPA 70, chapter 9, table 1, and 358.26; areas: chapter 9, table 5 (THHN). */
  @Test
  void aConduitIsNotOverfullAndNotBentTooOften() {
    // Four right angles, and one more.
    String path = "500 600 20|900 600 20|900 900 20|500 900 20|500 1300 20|900 1300 20";
    String four = conductors("12 AWG", 4);
    new Sentence(
            "conductors/conduit-fill",
            "for each conduit, (total area over insulation of conductors (where the conduit contains"
                + " it) <= (if its conductor count is 1 then 53 % otherwise if its conductor count is"
                + " 2 then 31 % otherwise 40 %) times its bore area and its bend in all <= 360 deg)"
                + " must hold")
        .with(
            """
            table area over insulation of a conductor
              by its gauge
              | 12 | 0.0133 in2 |
              | 10 | 0.0211 in2 |
              | 8  | 0.0366 in2 |
              otherwise 0.0507 in2

            """)
        .on(
            module(
                ", 'boxes': [%s, %s], 'runs': [%s, %s, %s, %s, %s, %s]"
                    .formatted(
                        box("A", 500),
                        box("B", 900),
                        conduit("four", four, path),
                        conduit("twelve", conductors("12 AWG", 12), path),
                        conduit("two thick", conductors("6 AWG", 2), path),
                        conduit("one thick", conductors("6 AWG", 1), path),
                        conduit("bent", four, path + "|900 1600 20"),
                        conduit("unknown", "'diameter': 18", path))))
        .says(MET, "four", "one thick")
        .says(BROKEN, "twelve", "two thick", "bent")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  private static String conductors(String size, int count) {
    return "'conductors': [{'size': '%s', 'count': %s}]".formatted(size, count);
  }

  private static String conduit(String id, String more, String path) {
    return run(
        id, "emt", ", 'from': 'A', 'to': 'B', 'bore': '0.622 in', " + more, path.split("[|]"));
  }

  /** Breakers for copper: NFPA 70, 240.4(D). */
  @Test
  void aCircuitHasFewOutletsAFittingConductorAndLittleVoltageDrop() {
    String sentence =
        "for each circuit, (its outlet count <= %s and its breaker <= (if its thinnest gauge > 12"
            + " then 15 A otherwise if its thinnest gauge > 10 then 20 A otherwise 30 A) and its"
            + " voltage drop <= 3 %%) must hold";
    Plan plan =
        module(
            ", 'panels': [%s], 'boxes': [%s, %s, %s, %s], 'circuits': [%s, %s, %s], 'runs': [%s, %s, %s, %s]"
                .formatted(
                    SentencePlans.panel("LP1", 500, "surface"),
                    outlet("R-1", 1500),
                    outlet("R-2", 2500),
                    outlet("R-3", 3500),
                    outlet("R-4", 4500),
                    circuit("circuit-1", "20 A"),
                    circuit("circuit-2", "20 A"),
                    circuit("circuit-3", "30 A"),
                    leg("C-1", "circuit-1", "LP1", "R-1", conductors("12 AWG", 2), 500, 1500),
                    leg("C-2", "circuit-1", "R-1", "R-2", conductors("12 AWG", 2), 1500, 2500),
                    leg("C-3", "circuit-2", "LP1", "R-3", conductors("14 AWG", 2), 500, 3500),
                    leg("C-4", "circuit-3", "LP1", "R-4", "'diameter': 12", 500, 4500)));
    new Sentence("conductors/circuit", sentence.formatted("12"))
        .on(plan)
        .says(MET, "circuit-1")
        .says(BROKEN, "circuit-2")
        .says(UNDECIDED, "circuit-3")
        .isHeld();
    new Sentence("conductors/circuit-crowded", sentence.formatted("1"))
        .on(plan)
        .says(BROKEN, "circuit-1", "circuit-2")
        .says(UNDECIDED, "circuit-3")
        .isHeld();
  }

  private static String outlet(String id, double along) {
    return box(id, along).replace("'material'", "'devices': [{'kind': 'receptacle'}], 'material'");
  }

  private static String circuit(String id, String breaker) {
    return "{'id': '%s', 'panel': 'LP1', 'breaker': '%s', 'voltage': '120 V', 'load': '16 A'}"
        .formatted(id, breaker);
  }

  private static String leg(
      String id, String circuit, String from, String to, String more, int start, int end) {
    return run(
        id,
        "metal-clad-cable",
        ", 'circuit': '%s', 'from': '%s', 'to': '%s', %s".formatted(circuit, from, to, more),
        start + " 1200 20",
        end + " 1200 20");
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("conductors")).isEmpty();
  }
}
