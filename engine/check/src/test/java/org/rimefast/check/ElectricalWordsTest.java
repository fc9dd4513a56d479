package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.panel;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.plan.Plan;

/** Words for runs, conductors, boxes and circuits, against published values; plans are invented. */
class ElectricalWordsTest {
  private static final String[] STRAIGHT = {"500 600 20", "900 600 20"};

  private static String wires(String groups) {
    return ", 'from': 'A', 'to': 'A', 'diameter': 12, 'conductors': [" + groups + "]";
  }

  private static String group(int count, String size, String use) {
    return "{'count': %s, 'size': '%s AWG', 'use': '%s', 'rating': '90 degC'}"
        .formatted(count, size, use);
  }

  private static Verdict verdict(String sentence, Plan plan, String element) {
    Given.check(sentence, plan); // both evaluators, of every element
    return Given.explain(sentence, plan, element).verdict();
  }

  /**
   * Circular mils: NFPA 70, chapter 9, table 8; all but those of 12 and 8 AWG from memory. 1
   * circular mil is 5.067e-4 mm2.
   */
  @ParameterizedTest
  @CsvSource({"18, 1620", "14, 4110", "12, 6530", "10, 10380", "8, 16510", "6, 26240", "1, 83690"})
  void theCrossSectionOfAGaugeIsThatOfTheTable(String gauge, double circularMils) {
    Plan plan =
        module(
            ", 'boxes': [%s], 'runs': [%s]"
                .formatted(
                    box("A", 500),
                    run("C", "emt", wires(group(1, gauge, "current-carrying")), STRAIGHT)));
    PlanFacts facts = new PlanFacts(plan, Given.DICTIONARY);
    int conductor = facts.members(Given.DICTIONARY.noun("conductor"))[0];
    Finding finding =
        new Checker(Given.DICTIONARY, Given.rule("conductor must have cross-section >= 0 mm2"))
            .explain("r", conductor, facts);
    double area = finding.evidence().get(0).measurement().orElseThrow().least();
    // The table starts from diameters rounded to 0.1 mil and rounds again: 1624 to 1620, 0.27 %.
    assertThat(area * 1e6).isCloseTo(circularMils * 5.067075e-4, within(area * 1e6 * 3e-3));
  }

  /**
   * Box fill worked out by NFPA 70, 314.16(B), all bonding conductors counted as one: two 12/2 with
   * bond, one receptacle, clamps 18.0 in3; three 12/2 with bond, one receptacle, no clamps 20.25
   * in3; one 14/2 with bond, a switch and clamps 12.0 in3.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 12, 1, receptacle, internal, 18.0",
    "6, 12, 1, receptacle, none, 20.25",
    "2, 14, 1, switch, internal, 12.0"
  })
  void boxFillIsThatOfWorkedExamples(
      int insulated, String gauge, int bond, String device, String clamps, double cubicInches) {
    String fill =
        "total volume taken of conductors (where the box takes it and it is insulated) + (2 times"
            + " its number of devices + its sets of clamps + "
            + bond
            + ") times largest volume taken of conductors (where the box takes it)";
    String table =
        "table volume taken of a conductor by its gauge\n| 14 | 2 in3 |\notherwise 2.25 in3\n";
    for (String offset : List.of("0", "-0.05", "0.05")) {
      String filled =
          box("A", 500)
              .replace(
                  "'material'",
                  "'volume': '%s in3', 'devices': [{'kind': '%s'}], 'clamps': '%s', 'material'"
                      .formatted(cubicInches + Double.parseDouble(offset), device, clamps));
      String groups =
          group(insulated, gauge, "current-carrying")
              + (bond == 0 ? "" : ", " + group(2, gauge, "bonding"));
      Plan plan =
          module(
              ", 'boxes': [%s], 'runs': [%s]"
                  .formatted(filled, run("C", "nonmetallic-cable", wires(groups), STRAIGHT)));
      Checker checker =
          new Checker(
              Given.DICTIONARY,
              Given.rule(table, "for each box, " + fill + " must be at most its volume"));
      Verdict verdict = checker.explain("r", "A", new PlanFacts(plan, Given.DICTIONARY)).verdict();
      assertThat(verdict).as(offset).isEqualTo(offset.startsWith("-") ? BROKEN : MET);
    }
  }

  /** Handbook examples of 2 K I L / CM with K = 12.9: 7.90 V, 3.13 V and 3.16 V of 120 V. */
  @ParameterizedTest
  @CsvSource({"20, 100, 12, 7.90", "20, 100, 8, 3.13", "16, 50, 12, 3.16"})
  void theVoltageDropIsThatOfWorkedExamples(double load, double feet, String gauge, double volts) {
    Plan plan = oneCircuit(load, feet, gauge, "'from': 'LP1', 'to': 'A', 'circuit': 'L1'", "");
    Finding finding = Given.explain("circuit must have voltage drop <= 100 %", plan, "L1");
    Measurement drop = finding.evidence().get(0).measurement().orElseThrow();
    assertThat(drop.least() * 120).isCloseTo(volts, within(0.005));
    assertThat(drop.most()).isEqualTo(drop.least());
    assertThat(finding.evidence().get(0).facts())
        .contains(
            new Evidence.Fact(
                "route",
                "panel LP1 -> conduit C (%s AWG, %s mm) -> box A, %s mm in all"
                    .formatted(gauge, text(feet * 304.8), text(feet * 304.8))));
  }

  private static String text(double millimetres) {
    return java.math.BigDecimal.valueOf(millimetres).stripTrailingZeros().toPlainString();
  }

  /** A run that goes there and back along the wall, as long as it is asked to be. */
  private static Plan oneCircuit(
      double load, double feet, String gauge, String run, String tolerances) {
    double part = feet * 304.8 / 4;
    return module(
        "%s, 'panels': [%s], 'boxes': [%s], 'circuits': [{'id': 'L1', 'panel': 'LP1', 'voltage': '120 V', 'load': '%s A'}], 'runs': [%s]"
            .formatted(
                tolerances,
                panel("LP1", 500, "surface"),
                box("A", 9000).replace("'material'", "'devices': [], 'material'"),
                load,
                run(
                    "C",
                    "emt",
                    ", 'diameter': 18, %s%s"
                        .formatted(
                            run,
                            gauge.isEmpty()
                                ? ""
                                : ", 'conductors': [" + group(2, gauge, "current-carrying") + "]"),
                    "500 2200 20",
                    (500 + part) + " 2200 20",
                    "500 2200 20",
                    (500 + part) + " 2200 20",
                    "500 2200 20")));
  }

  @Test
  void aVoltageDropNamesWhatThePlanLacks() {
    assertThat(missing("'from': 'LP1', 'to': 'A', 'circuit': 'L1'", ""))
        .containsExactly("/runs/0/conductors");
    assertThat(missing("'from': 'LP1', 'circuit': 'L1'", "12")).containsExactly("/runs/0/to");
    // Whether it is of the circuit is not known; it hangs together with the circuit's panel.
    assertThat(missing("'from': 'LP1', 'to': 'A'", "12")).contains("/runs/0/circuit");
  }

  private static List<String> missing(String run, String gauge) {
    Plan plan = oneCircuit(16, 50, gauge, run, "");
    assertThat(verdict("circuit must have voltage drop <= 3 %", plan, "L1")).isEqualTo(UNDECIDED);
    return Given.explain("circuit must have voltage drop <= 3 %", plan, "L1").missing().stream()
        .map(MissingValue::pointer)
        .toList();
  }

  @Test
  void aVoltageDropNearItsLimitIsUndecidedWithinTheTolerance() {
    Plan plan =
        oneCircuit(
            16,
            50,
            "12",
            "'from': 'LP1', 'to': 'A', 'circuit': 'L1'",
            ", 'tolerances': {'electrical': 20}");
    // 15240 mm +- 4 x 2 x 34.64 mm: 2.587 % to 2.681 %.
    String sentence = "circuit must have voltage drop <= %s %%";
    assertThat(verdict(sentence.formatted("2.69"), plan, "L1")).isEqualTo(MET);
    assertThat(verdict(sentence.formatted("2.63"), plan, "L1")).isEqualTo(UNDECIDED);
    assertThat(verdict(sentence.formatted("2.58"), plan, "L1")).isEqualTo(BROKEN);
  }

  @Test
  void aRunThatIsNotJoinedToThePanelLeavesTheVoltageDropOpen() {
    Plan plan = oneCircuit(16, 50, "12", "'from': 'A', 'to': 'A', 'circuit': 'L1'", "");
    Finding finding = Given.explain("circuit must have voltage drop <= 3 %", plan, "L1");
    assertThat(finding.verdict()).isEqualTo(UNDECIDED);
    assertThat(finding.reason())
        .contains("conduit C is not joined to panel LP1 by runs of circuit L1");
  }

  @Test
  void anEndThatIsNotNamedEntersOnlyWhatItIsDrawnAt() {
    Plan plan =
        module(
            ", 'boxes': [%s, %s, %s], 'runs': [%s]"
                .formatted(
                    box("A", 500),
                    box("B", 900),
                    box("C", 2000),
                    run(
                        "R",
                        "emt",
                        ", 'from': 'A', 'diameter': 18",
                        "527 1200 20",
                        "873 1200 20")));
    assertThat(entered(plan, "A")).isEqualTo(Truth.TRUE);
    assertThat(entered(plan, "B")).isEqualTo(Truth.UNKNOWN);
    assertThat(entered(plan, "C")).isEqualTo(Truth.FALSE);
  }

  private static Truth entered(Plan plan, String box) {
    Finding finding = Given.explain("for each box, at least 1 run must enter it", plan, box);
    return switch (finding.verdict()) {
      case MET -> Truth.TRUE;
      case BROKEN -> Truth.FALSE;
      case UNDECIDED, NOT_APPLICABLE, ERROR -> Truth.UNKNOWN;
    };
  }

  @Test
  void runsThatLieSideBySideForLongAreAlongside() {
    String runs =
        run("A", "nonmetallic-cable", ", 'diameter': 10", "500 600 20", "3000 600 20")
            + ", "
            + run("B", "nonmetallic-cable", ", 'diameter': 10", "500 620 20", "1109.6 620 20")
            + ", "
            + run("C", "nonmetallic-cable", ", 'diameter': 10", "500 900 20", "3000 900 20")
            + ", "
            + run("D", "nonmetallic-cable", "", "500 1500 20", "3000 1500 20");
    Plan plan = module(", 'runs': [" + runs + "]");
    String again = "run must not be alongside another cable within 10 mm over 24 in";
    assertThat(verdict(again, plan, "B")).isEqualTo(BROKEN);
    // 609.6 mm of it is 24 in; B's own ends reach no farther.
    assertThat(verdict("run must not be alongside another cable within 9 mm over 24 in", plan, "B"))
        .isEqualTo(UNDECIDED);
    assertThat(Given.explain(again, plan, "C").missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/runs/3/diameter");
  }

  @Test
  void slackAndConnectorsAreThoseOfTheEndThatEnters() {
    String more =
        ", 'from': 'A', 'to': 'B', 'slack': {'from': 300, 'to': 100}, 'fromConnector': 'metal'";
    Plan plan =
        module(
            ", 'boxes': [%s, %s, %s], 'runs': [%s]"
                .formatted(
                    box("A", 500), box("B", 900), box("C", 1500), run("R", "emt", more, STRAIGHT)));
    String slack =
        "for each box, (for each run (where it enters the box), slack at the box of it >= 300 mm)"
            + " must hold";
    assertThat(verdict(slack, plan, "A")).isEqualTo(MET);
    assertThat(verdict(slack, plan, "B")).isEqualTo(BROKEN);
    String connector =
        "for each box, (for each run (where it enters the box), connector at the box of it is metal)"
            + " must hold";
    assertThat(verdict(connector, plan, "A")).isEqualTo(MET);
    assertThat(Given.explain(connector, plan, "B").missing())
        .extracting(MissingValue::pointer)
        .containsExactly("/runs/0/toConnector");
  }

  /** Each sentence compiles as it stands, and a plan that says nothing leaves it undecided. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "conduit must have bore >= 10 mm",
        "conduit must have bore area >= 10 mm2",
        "conduit must have conductor count <= 3",
        "conduit must have current-carrying conductor count <= 3",
        "conduit must have thinnest gauge <= 12",
        "conduit must have lowest temperature rating >= 90 degC",
        "conduit must have corner slack >= 50 mm",
        "conduit must have support spacing <= 0.1 m",
        "for each conduit, breaker of its circuit must be at most 20 A",
        "each conduit where it bends must have tightest bend radius >= 4 in",
        "conductor must have gauge <= 14",
        "conductor must have temperature rating >= 60 degC",
        "each conductor where its use is not bonding must have cross-section >= 2 mm2",
        "conductor must be insulated",
        "box must have volume >= 10 in3",
        "box must have number of devices <= 2",
        "box must have number of receptacles <= 2",
        "box must have number of switches <= 2",
        "box must have sets of clamps <= 1",
        "box must have number of fixture studs <= 1",
        "box must have number of wire connectors <= 4",
        "box must have depth >= its depth behind its strap + 1/4 in",
        "circuit must have breaker <= 20 A",
        "circuit must have voltage <= 120 V",
        "circuit must have load <= 16 A",
        "circuit must have terminal rating >= 60 degC",
        "circuit must have outlet count <= 0",
        "circuit must have thinnest gauge <= 12",
        "circuit must have length to the farthest outlet <= 20 m",
        "circuit must have voltage drop <= 3 %",
        "for each circuit, its panel must be mounted on the lining"
      })
  void whatAPlanDoesNotSayIsUndecidedAndNamed(String sentence) {
    Plan plan =
        module(
            ", 'boxes': [%s], 'circuits': [{'id': 'L1'}], 'runs': [%s]"
                .formatted(
                    box("A", 500),
                    run("C", "emt", ", 'from': 'A'", "500 600 20", "900 600 20", "900 900 20")));
    RuleResult result = Given.check(sentence, plan);
    assertThat(result.count(UNDECIDED)).as(sentence).isEqualTo(1);
    assertThat(result.findings().get(0).missing()).as(sentence).isNotEmpty();
  }

  /** What is certain whatever the plan leaves open. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "conduit must have length >= 700 mm",
        "conduit must have bend in all <= 90 deg",
        "conduit must bend",
        "conduit must not round an inside corner",
        "conduit must be in a wall",
        "conduit must not be in the roof",
        "conduit must not be in the floor",
        "each run must have kind = emt",
      })
  void whatFollowsFromThePathIsDecided(String sentence) {
    Plan plan =
        module(
            ", 'runs': [%s]"
                .formatted(run("C", "emt", "", "500 600 20", "900 600 20", "900 900 20")));
    assertThat(verdict(sentence, plan, "C")).isEqualTo(MET);
  }
}
