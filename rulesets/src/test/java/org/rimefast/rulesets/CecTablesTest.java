package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.rulesets.TablePlans.box;
import static org.rimefast.rulesets.TablePlans.circuit;
import static org.rimefast.rulesets.TablePlans.filled;
import static org.rimefast.rulesets.TablePlans.inAStud;
import static org.rimefast.rulesets.TablePlans.number;
import static org.rimefast.rulesets.TablePlans.outlets;
import static org.rimefast.rulesets.TablePlans.panel;
import static org.rimefast.rulesets.TablePlans.path;
import static org.rimefast.rulesets.TablePlans.room;
import static org.rimefast.rulesets.TablePlans.strapped;
import static org.rimefast.rulesets.TablePlans.straps;
import static org.rimefast.rulesets.TablePlans.studWith;
import static org.rimefast.rulesets.TablePlans.verdict;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.check.Verdict;

/**
 * The numbers that CSA C22.1 and the framing standards publish, each as a plan that the shipped
 * standard finds met at the limit and broken just beyond it. The clause stands beside each row;
 * where a number is not published where we could read it, the row says from memory.
 */
class CecTablesTest {
  private static final String CEC = "rough-in-cec";
  private static final String FRAMING = "light-steel-framing";

  // ---- Box fill

  /**
   * Conductors as gauge x count, with a plus between them; space in mL. The first two are worked
   * examples of an examination guide; the capped connectors count by pairs at the size they join.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # clause                              | rule                 | conductors  | connectors | devices | studs | space
          12-3034, Table 22; example            | box-fill             | 8x9         | 3          | 0       | 0     | 451
          12-3034, Table 22; example            | box-fill             | 8x2+12x4    | 2          | 0       | 0     | 250.1
          Table 22, No. 12                      | box-fill             | 12x1        | 0          | 0       | 0     | 28.7
          Table 22, No. 8                       | box-fill             | 8x1         | 0          | 0       | 0     | 45.1
          Table 22, No. 14; from memory         | box-fill-other-sizes | 14x1        | 0          | 0       | 0     | 24.6
          Table 22, No. 10; from memory         | box-fill-other-sizes | 10x1        | 0          | 0       | 0     | 36.9
          Table 22, No. 6; from memory          | box-fill-other-sizes | 6x1         | 0          | 0       | 0     | 73.7
          12-3034(2)(a), one for a fixture stud | box-fill             | 12x4        | 0          | 0       | 1     | 143.5
          12-3034(2)(b), one connector          | box-fill             | 12x4        | 1          | 0       | 0     | 114.8
          12-3034(2)(b), two and three          | box-fill             | 12x4        | 2          | 0       | 0     | 143.5
          12-3034(2)(b), two and three          | box-fill             | 12x4        | 3          | 0       | 0     | 143.5
          12-3034(2)(b), four and five          | box-fill             | 12x4        | 4          | 0       | 0     | 172.2
          12-3034(2)(b), four and five          | box-fill             | 12x4        | 5          | 0       | 0     | 172.2
          12-3034(2)(c), two for a device       | box-fill             | 12x4        | 0          | 1       | 0     | 172.2
          12-3034(2)(c), two for each device    | box-fill             | 12x4        | 0          | 2       | 0     | 229.6
          12-3034(2)(c), from memory: No. 14    | box-fill-other-sizes | 14x4        | 0          | 1       | 0     | 147.6
          """)
  void aBoxHoldsWhatItsSpaceAllows(
      String clause,
      String rule,
      String conductors,
      int connectors,
      int devices,
      int studs,
      BigDecimal space) {
    String device = devices == 0 ? "" : "{'kind': 'receptacle', 'count': %d, 'behind': '2.5 cm'}";
    String box = box(device.formatted(devices), connectors, studs);
    isTight(CEC, rule, "B", clause, volume -> filled(box, volume, conductors), space, less("0.1"));
  }

  /** A device deeper than 2.54 cm takes 32 cm3 for each cm of its depth, besides its conductors. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # clause    | depth | space besides 6 x 28.7 mL
          12-3034(3)  | 2     | 0
          12-3034(3)  | 2.54  | 0
          12-3034(3)  | 2.55  | 81.6
          12-3034(3)  | 3     | 96
          12-3034(3)  | 4.5   | 144
          """)
  void aDeepDeviceTakesRoomFromTheConductors(String clause, String depth, BigDecimal besides) {
    String box = box("{'kind': 'receptacle', 'behind': '%s cm'}".formatted(depth), 0, 0);
    BigDecimal space = new BigDecimal("172.2").add(besides);
    isTight(
        CEC, "box-fill", "B", clause, volume -> filled(box, volume, "12x4"), space, less("0.1"));
  }

  @Test
  void bondingConductorsAreNotCounted() {
    String bonding = "{'size': '12 AWG', 'count': 20, 'use': 'bonding'}";
    String json =
        filled(box("", 0, 0), new BigDecimal("28.7"), "12x1")
            .replace("'count': 1}", "'count': 1}, " + bonding);
    assertThat(verdict(CEC, "box-fill", "B", json)).isEqualTo(MET);
  }

  @ParameterizedTest
  @CsvSource({"12-3000(6), 150, MET", "12-3000(6), 149, BROKEN"})
  void conductorIsLeftAtABox(String clause, int slack, Verdict expected) {
    String json =
        filled(box("", 0, 0), new BigDecimal(100), "12x1")
            .replace("'to': 'B'", "'to': 'B', 'slack': {'from': 0, 'to': %d}".formatted(slack));
    assertThat(verdict(CEC, "free-conductor", "C0", json)).as(clause).isEqualTo(expected);
  }

  // ---- Nonmetallic cable in steel studs

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # clause | set-back | plate | verdict
          12-516   | 32       | 0     | MET
          12-516   | 31.5     | 0     | BROKEN
          12-516   | 15       | 1.3   | MET
          12-516   | 15       | 1.2   | BROKEN
          """)
  void aCableInAStudIsSetBackOrGuarded(
      String clause, double setBack, double plate, Verdict expected) {
    String json = inAStud(setBack, "'plate': %s, 'insert': 'bushing'".formatted(plate));
    assertThat(verdict(CEC, "cable-set-back", "C", json)).as(clause).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"12-516(3), bushing, MET", "12-516(3), none, BROKEN"})
  void anInsertGuardsACableInAStud(String clause, String insert, Verdict expected) {
    String json = inAStud(32, "'insert': '%s'".formatted(insert));
    assertThat(verdict(CEC, "insert-in-stud", "C", json)).as(clause).isEqualTo(expected);
  }

  // ---- Straps and bends

  /** Lengths in mm: to the first strap, and to the second if that is what counts. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # clause                         | rule                          | kind              | bore | first | apart
          12-510; from memory              | nonmetallic-cable-straps      | nonmetallic-cable | 0    | 300   | 1500
          12-510; from memory              | nonmetallic-cable-first-strap | nonmetallic-cable | 0    | 300   | 0
          12-618; from memory              | armoured-cable-straps         | armoured-cable    | 0    | 300   | 1500
          12-618; from memory              | armoured-cable-first-strap    | armoured-cable    | 0    | 300   | 0
          12-1404; from memory             | conduit-first-strap           | emt               | 15.8 | 1000  | 0
          12-1404, size 16; from memory    | conduit-straps                | emt               | 15.8 | 300   | 1500
          12-1404, size 21; from memory    | conduit-straps                | emt               | 20.9 | 300   | 1500
          12-1404, size 27; from memory    | conduit-straps                | emt               | 26.6 | 300   | 2000
          12-1404, size 35; from memory    | conduit-straps                | emt               | 35.1 | 300   | 2000
          12-1404, size 41; from memory    | conduit-straps                | emt               | 40.9 | 300   | 3000
          """)
  void aRunIsStrapped(String clause, String rule, String kind, double bore, int first, int apart) {
    BigDecimal limit = new BigDecimal(apart == 0 ? first : apart);
    isTight(
        CEC,
        rule,
        "C",
        clause,
        length -> strapped(kind, bore, apart == 0 ? straps(length) : straps(first, length)),
        limit,
        more("1"));
  }

  @ParameterizedTest
  @CsvSource({
    "'12-614; from memory', 10, 60",
    "'12-614; from memory', 12.7, 76.2",
    "'12-614; from memory', 14.5, 87"
  })
  void anArmouredCableIsBentInWideBends(String clause, String diameter, BigDecimal radius) {
    isTight(
        CEC,
        "armoured-cable-bends",
        "C",
        clause,
        bend ->
            room(
                "'runs': [{'id': 'C', 'kind': 'armoured-cable', 'diameter': %s, 'bendRadius': %s, 'path': [%s]}]"
                    .formatted(
                        diameter, bend, path("right 500 500", "right 500 2000", "right 900 2000"))),
        radius,
        less("0.1"));
  }

  @ParameterizedTest
  @CsvSource({"'12-942; from memory', 4, MET", "'12-942; from memory', 5, BROKEN"})
  void aConduitHasFourRightAnglesAtMost(String clause, int bends, Verdict expected) {
    List<String> zigzag = new ArrayList<>();
    for (int i = 0; i <= bends + 1; i++) {
      zigzag.add("right %d %d".formatted((i + 1) / 2 % 2 == 0 ? 400 : 900, 300 + i / 2 * 300));
    }
    String json =
        room(
            "'runs': [{'id': 'C', 'kind': 'emt', 'path': [%s]}]"
                .formatted(path(zigzag.toArray(String[]::new))));
    assertThat(verdict(CEC, "conduit-bends", "C", json)).as(clause).isEqualTo(expected);
  }

  // ---- Panels and receptacles

  /** A panel on the rear wall of a room 2000 mm long, linings 79 mm off the crests of the ribs. */
  @ParameterizedTest
  @CsvSource({"2-308(1), 1000, MET", "2-308(1), 999, BROKEN"})
  void aPanelHasRoomBeforeIt(String clause, int free, Verdict expected) {
    int depth = 2000 - 2 * 79 - free;
    String json = room("'panels': [%s]".formatted(panel(depth)));
    assertThat(verdict(CEC, "working-space", "P", json)).as(clause).isEqualTo(expected);
  }

  /** A luminaire hangs from the lining, which is 2521 mm above the floor. */
  @ParameterizedTest
  @CsvSource({"2-308(5), 2200, MET", "2-308(5), 2190, BROKEN"})
  void aPanelHasHeadroomBeforeIt(String clause, int height, Verdict expected) {
    String luminaire =
        "{'id': 'L', 'face': 'roof', 'along': 700, 'up': 750, 'width': 300, 'height': 300, 'depth':"
            + " %d, 'mount': 'surface'}";
    String json =
        room(
            "'panels': [%s], 'luminaires': [%s]"
                .formatted(panel(95), luminaire.formatted(2521 - height)));
    assertThat(verdict(CEC, "working-space", "P", json)).as(clause).isEqualTo(expected);
  }

  /** Receptacles on the left and right walls of a room of 2000 by 1500 mm. */
  @ParameterizedTest
  @CsvSource({
    "'26-724, 26-712(a)', 950, 1050, MET",
    "'26-724, 26-712(a)', 949, 1050, BROKEN",
    "'26-724, 26-712(a)', 950, 1051, BROKEN"
  })
  void noPointOfTheFrontWallIsFarFromAReceptacle(
      String clause, int left, int right, Verdict expected) {
    String receptacle =
        "{'id': 'R%s', 'kind': 'device', 'face': '%s', 'along': %d, 'up': 450, 'width': 54,"
            + " 'height': 76, 'depth': 60, 'mount': 'flush', 'devices': [{'kind': 'receptacle'}]}";
    String json =
        room(
            "'boxes': [%s, %s]"
                .formatted(
                    receptacle.formatted(1, "left", left),
                    receptacle.formatted(2, "right", right)));
    assertThat(verdict(CEC, "receptacle-spacing", "front wall", json))
        .as(clause)
        .isEqualTo(expected);
  }

  // ---- Circuits

  @ParameterizedTest
  @CsvSource({"14-104(2), 14, 15", "14-104(2), 12, 20", "14-104(2), 10, 30"})
  void aBreakerFitsItsConductor(String clause, int gauge, BigDecimal breaker) {
    isTight(
        CEC,
        "breaker-fits-conductor",
        "K",
        clause,
        amperes -> circuit(gauge, 90, 75, 1, amperes.toString(), "1"),
        breaker,
        more("0.5"));
  }

  @ParameterizedTest
  @CsvSource({
    "'Table 2; from memory', 14, 60, 15",
    "'Table 2; from memory', 14, 75, 20",
    "'Table 2; from memory', 14, 90, 25",
    "'Table 2; from memory', 12, 60, 20",
    "'Table 2; from memory', 12, 75, 25",
    "'Table 2; from memory', 12, 90, 30",
    "'Table 2; from memory', 10, 60, 30",
    "'Table 2; from memory', 10, 75, 35",
    "'Table 2; from memory', 10, 90, 40"
  })
  void aConductorAndATerminalCarryTheirLoad(
      String clause, int gauge, int rating, BigDecimal ampacity) {
    isTight(
        CEC,
        "conductors-carry-the-load",
        "C0",
        clause,
        load -> circuit(gauge, rating, 90, 2, "100", load.toString()),
        ampacity,
        more("0.5"));
    isTight(
        CEC,
        "terminals-carry-the-load",
        "K",
        "4-006; " + clause,
        load -> circuit(gauge, 90, rating, 2, "100", load.toString()),
        ampacity,
        more("0.5"));
  }

  /** No. 14 at 90 degC: 25 A. */
  @ParameterizedTest
  @CsvSource({
    "'Table 5C; from memory', 3, 25",
    "'Table 5C; from memory', 4, 20",
    "'Table 5C; from memory', 6, 20",
    "'Table 5C; from memory', 7, 17.5",
    "'Table 5C; from memory', 24, 17.5",
    "'Table 5C; from memory', 25, 15",
    "'Table 5C; from memory', 42, 15",
    "'Table 5C; from memory', 43, 12.5"
  })
  void manyConductorsTogetherCarryLess(String clause, int count, BigDecimal ampacity) {
    isTight(
        CEC,
        "conductors-carry-the-load",
        "C0",
        clause,
        load -> circuit(14, 90, 90, count, "100", load.toString()),
        ampacity,
        more("0.1"));
  }

  @ParameterizedTest
  @CsvSource({
    "'8-304(1), 2021', 15, 12",
    "'8-304(1), 2021', 20, 16",
  })
  void aCircuitHasSoManyOutlets(String clause, int breaker, BigDecimal outlets) {
    isTight(
        CEC,
        "outlets-on-a-circuit",
        "K",
        clause,
        count -> outlets(count.intValue(), breaker),
        outlets,
        more("1"));
  }

  // ---- Light steel framing

  /** Lengths in inches, with the depth of the web beside them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # source                                    | rule            | web   | width | height | met  | broken
          SSMA, punch-outs: 3/4 in to 2-1/2 in webs   | narrow-web-hole | 1.625 | ?     | 4      | 0.75 | 0.76
          SSMA, punch-outs: 3/4 in to 2-1/2 in webs   | narrow-web-hole | 2.5   | ?     | 4      | 0.75 | 0.76
          AISI S100: at most half of the web          | hole-size       | 1.625 | ?     | 4      | 0.8125 | 0.82
          AISI S100: at most half of the web          | hole-size       | 3.625 | ?     | 4      | 1.8125 | 1.82
          AISI S100: at most 2-1/2 in                 | hole-size       | 6     | ?     | 4      | 2.5  | 2.51
          AISI S100: at most 4-1/2 in along the stud  | hole-size       | 3.625 | 1.5   | ?      | 4.5  | 4.51
          """)
  void aHoleIsNoLargerThanItsStudAllows(
      String source,
      String rule,
      String web,
      String width,
      String height,
      String met,
      String broken) {
    for (String size : List.of(met, broken)) {
      String json =
          studWith(
              web,
              "{'up': 1200, 'width': '%s in', 'height': '%s in'}"
                  .formatted(width.replace("?", size), height.replace("?", size)));
      assertThat(verdict(FRAMING, rule, "S", json))
          .as(source)
          .isEqualTo(size.equals(met) ? MET : BROKEN);
    }
  }

  /** A stud that stands on the floor; its holes are 4 in high. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # source                                   | low edge | apart | verdict
          SSMA, punch-outs: 10 in from the end       | 10       | 24    | MET
          SSMA, punch-outs: 10 in from the end       | 9.99     | 24    | BROKEN
          SSMA, punch-outs: 24 in middle to middle   | 10       | 23.99 | BROKEN
          """)
  void holesKeepClearOfTheEndsAndOfEachOther(
      String source, double edge, double apart, Verdict expected) {
    double low = (edge + 2) * 25.4;
    String hole = "{'up': %s, 'width': '3/4 in', 'height': '4 in'}";
    String json =
        studWith(
            "1.625",
            hole.formatted(number(low)) + ", " + hole.formatted(number(low + apart * 25.4)));
    assertThat(verdict(FRAMING, "hole-places", "S", json)).as(source).isEqualTo(expected);
  }

  /** Design thickness in inches; the least is 95 % of it. */
  @ParameterizedTest
  @CsvSource({
    "'SSMA, 18 mil; AISI S100 A2.4', stud-steel, 0.0188, MET",
    "'SSMA, 18 mil; AISI S100 A2.4', stud-steel, 0.0187, BROKEN",
  })
  void studsAreOfTheSteelThatStudsAreRolledFrom(
      String source, String rule, String thickness, Verdict expected) {
    String json = studWith("1.625", "").replace("0.88 mm", thickness + " in");
    assertThat(verdict(FRAMING, rule, "S", json)).as(source).isEqualTo(expected);
  }

  /** Makes a plan with a value in it. */
  @FunctionalInterface
  private interface PlanOf {
    String with(BigDecimal value);
  }

  private static BigDecimal less(String step) {
    return new BigDecimal(step).negate();
  }

  private static BigDecimal more(String step) {
    return new BigDecimal(step);
  }

  /** The plan is met at the limit and broken one step beyond. */
  private static void isTight(
      String standard,
      String rule,
      String element,
      String clause,
      PlanOf plan,
      BigDecimal limit,
      BigDecimal step) {
    assertThat(verdict(standard, rule, element, plan.with(limit)))
        .as("%s, at %s", clause, limit)
        .isEqualTo(MET);
    BigDecimal beyond = limit.add(step);
    assertThat(verdict(standard, rule, element, plan.with(beyond)))
        .as("%s, at %s", clause, beyond)
        .isEqualTo(BROKEN);
  }
}
