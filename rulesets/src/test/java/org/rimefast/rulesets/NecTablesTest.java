package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.rulesets.NecPlans.bent;
import static org.rimefast.rulesets.NecPlans.box;
import static org.rimefast.rulesets.NecPlans.group;
import static org.rimefast.rulesets.NecPlans.groups;
import static org.rimefast.rulesets.NecPlans.loaded;
import static org.rimefast.rulesets.NecPlans.path;
import static org.rimefast.rulesets.NecPlans.run;
import static org.rimefast.rulesets.NecPlans.supported;
import static org.rimefast.rulesets.NecPlans.text;
import static org.rimefast.rulesets.NecPlans.tubing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Evidence;
import org.rimefast.check.Finding;
import org.rimefast.check.Measurement;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.plan.PlanReader;
import org.rimefast.plan.PlanReading;

/**
 * The published numbers of NFPA 70, each as a plan that the shipped standard {@code rough-in-nec}
 * checks just within and just beyond. The clause stands beside each row or above its table; what is
 * from memory says so. The plans are invented.
 */
class NecTablesTest {
  private static final double INCH = 25.4;
  private static final double FOOT = 304.8;
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final Checker CHECKER =
      new Checker(
          DICTIONARY,
          new RuleCompiler(DICTIONARY.vocabulary())
              .compile(StandardLibrary.find("rough-in-nec").orElseThrow())
              .standard()
              .orElseThrow());

  // Boxes

  /**
   * Table 314.16(A), least volumes, with the volume that table 314.16(B) asks for each conductor:
   * as many conductors as fit are met, and one more is broken. Two volumes of handy boxes are from
   * memory; a rule that advises looks at those.
   */
  @ParameterizedTest
  @CsvSource({
    "octagon, octagon 4 x 1-1/4 in,          12.5, box-fill",
    "octagon, octagon 4 x 1-1/2 in,          15.5, box-fill",
    "octagon, octagon 4 x 2-1/8 in,          21.5, box-fill",
    "square,  4 x 4 x 1-1/4 in,              18.0, box-fill",
    "square,  4 x 4 x 1-1/2 in,              21.0, box-fill",
    "square,  4 x 4 x 2-1/8 in,              30.3, box-fill",
    "square,  4-11/16 x 4-11/16 x 1-1/4 in,  25.5, box-fill",
    "square,  4-11/16 x 4-11/16 x 1-1/2 in,  29.5, box-fill",
    "square,  4-11/16 x 4-11/16 x 2-1/8 in,  42.0, box-fill",
    "device,  3 x 2 x 1-1/2 in,               7.5, box-fill",
    "device,  3 x 2 x 2 in,                  10.0, box-fill",
    "device,  3 x 2 x 2-1/4 in,              10.5, box-fill",
    "device,  3 x 2 x 2-1/2 in,              12.5, box-fill",
    "device,  3 x 2 x 2-3/4 in,              14.0, box-fill",
    "device,  3 x 2 x 3-1/2 in,              18.0, box-fill",
    "handy,   handy 4 x 2-1/8 x 1-1/2 in,    10.3, handy-box-fill", // volume from memory
    "handy,   handy 4 x 2-1/8 x 1-7/8 in,    13.0, box-fill",
    "handy,   handy 4 x 2-1/8 x 2-1/8 in,    14.5, handy-box-fill", // volume from memory
  })
  void aBoxTakesAsManyConductorsAsItsVolumeHasRoomFor(
      String kind, String size, double volume, String rule) {
    int[] gauges = {18, 16, 14, 12, 10, 8, 6};
    double[] each = {1.5, 1.75, 2.0, 2.25, 2.5, 3.0, 5.0};
    for (int i = 0; i < gauges.length; i++) {
      int most = (int) Math.floor(volume / each[i] + 1e-9);
      String box = "'kind': '%s', 'size': '%s', 'clamps': 'none', 'devices': []";
      for (int count = most; count <= most + 1; count++) {
        assertThat(verdict(rule, "B", box(box.formatted(kind, size), group(gauges[i], count))))
            .as("%s with %d conductors of %d AWG", size, count, gauges[i])
            .isEqualTo(count == most ? Verdict.MET : Verdict.BROKEN);
      }
    }
  }

  /** Worked examples of 314.16(B): what is in the box and the volume that it needs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Two 12/2 with bonding conductors, one receptacle, clamps inside: 8 x 2.25.
        "12x4, 12b2       | 1 | internal | 18.0",
        // Three 12/2 with bonding conductors, one receptacle, no clamps inside: 9 x 2.25.
        "12x6, 12b3       | 1 | none     | 20.25",
        // 4 x 14, 4 x 12 and 2 x 10: 8 + 9 + 5.
        "14x4, 12x4, 10x2 | 0 | none     | 22.0",
        // 14/2 with bonding conductor, one switch, clamps inside: 6 x 2.0.
        "14x2, 14b1       | 1 | internal | 12.0",
        // Five bonding conductors: 4 + 1.25 + 2 times 2.25 (2020 and later, from memory).
        "12x4, 12b5       | 1 | none     | 16.3125",
      })
  void aBoxIsFullAtTheVolumeOfTheExample(
      String conductors, int devices, String clamps, double volume) {
    String rule = conductors.contains("b5") ? "box-fill-many-bonds" : "box-fill";
    String box = "'kind': 'square', 'volume': '%s in3', 'clamps': '%s', 'devices': [%s]";
    String held = devices == 0 ? "" : "{'kind': 'switch', 'count': " + devices + "}";
    String groups = groups(conductors);
    assertThat(verdict(rule, "B", box(box.formatted(text(volume), clamps, held), groups)))
        .isEqualTo(Verdict.MET);
    assertThat(verdict(rule, "B", box(box.formatted(text(volume - 0.01), clamps, held), groups)))
        .isEqualTo(Verdict.BROKEN);
  }

  /** The box of the last example but one, 314.16: 14/2 needs 12.0 in3, the smallest box has 7.5. */
  @ParameterizedTest
  @CsvSource({"3 x 2 x 1-1/2 in, BROKEN", "3 x 2 x 2-1/4 in, BROKEN", "3 x 2 x 2-1/2 in, MET"})
  void aSwitchOnOneCableNeedsADeepEnoughDeviceBox(String size, Verdict expected) {
    String box =
        "'kind': 'device', 'size': '%s', 'clamps': 'internal', 'devices': [{'kind': 'switch'}]";
    assertThat(verdict("box-fill", "B", box(box.formatted(size), groups("14x2, 14b1"))))
        .isEqualTo(expected);
  }

  // Conduits

  /**
   * Annex C, EMT with THHN: as many conductors of one size as are listed are met, and one more is
   * broken. They follow from chapter 9, tables 1, 4 and 5, and the note on a remainder of 0.8.
   * Areas of 14 and 6 AWG are from memory, the counts are not.
   */
  @ParameterizedTest
  @CsvSource({
    "14, 12, 22, 35, 61", //
    "12,  9, 16, 26, 45",
    "10,  5, 10, 16, 28",
    " 8,  3,  6,  9, 16",
    " 6,  2,  4,  7, 12",
  })
  void tubingTakesAsManyConductorsAsAnnexCLists(
      int gauge, int half, int threeQuarters, int one, int oneAndAQuarter) {
    int[] counts = {half, threeQuarters, one, oneAndAQuarter};
    String[] sizes = {"1/2 in EMT", "3/4 in EMT", "1 in EMT", "1-1/4 in EMT"};
    for (int i = 0; i < sizes.length; i++) {
      for (int count = counts[i]; count <= counts[i] + 1; count++) {
        assertThat(verdict(fillRule(gauge), "R", tubing(sizes[i], 1000, group(gauge, count))))
            .as("%s with %d conductors of %d AWG", sizes[i], count, gauge)
            .isEqualTo(count == counts[i] ? Verdict.MET : Verdict.BROKEN);
      }
    }
  }

  /** Chapter 9, table 4, column of 60 %, for pieces of up to 24 in, with 12 AWG of 0.0133 in2. */
  @ParameterizedTest
  @CsvSource({
    "1/2 in EMT,   0.182, 13", // 13.68
    "3/4 in EMT,   0.320, 24", // 24.06
    "1 in EMT,     0.519, 39", // 38.99 rounds up
    "1-1/4 in EMT, 0.897, 67", // 67.48
  })
  void aShortPieceTakesMore(String size, double area, int most) {
    assertThat(area / 0.0133).isBetween(most - 0.2, most + 0.8);
    double nipple = 24 * INCH;
    assertThat(verdict("conduit-fill", "R", tubing(size, nipple, group(12, most))))
        .isEqualTo(Verdict.MET);
    assertThat(verdict("conduit-fill", "R", tubing(size, nipple, group(12, most + 1))))
        .isEqualTo(Verdict.BROKEN);
    assertThat(verdict("conduit-fill", "R", tubing(size, nipple + 1, group(12, most))))
        .isEqualTo(Verdict.BROKEN);
  }

  /** Worked examples of chapter 9. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 0.0399 + 0.0844 + 0.2928 = 0.4171 in2: 0.346 is too little, 0.598 is enough.
        "12x3, 10x4, 8x8 | 1 in EMT     | BROKEN",
        "12x3, 10x4, 8x8 | 1-1/4 in EMT | MET",
        // 0.0532 of 0.304 in2: 17.5 %.
        "12x4            | 1/2 in EMT   | MET",
        // 52.5 % of it.
        "12x12           | 1/2 in EMT   | BROKEN",
        "12x12           | 3/4 in EMT   | MET",
        // 0.0798 + 0.0633 = 0.1431 in2: 0.122 is too little, 0.213 is enough.
        "12x6, 10x3      | 1/2 in EMT   | BROKEN",
        "12x6, 10x3      | 3/4 in EMT   | MET",
      })
  void aMixtureOfConductorsFitsTheTubingOfTheExample(
      String conductors, String size, Verdict expected) {
    assertThat(verdict("conduit-fill", "R", tubing(size, 1000, groups(conductors))))
        .isEqualTo(expected);
  }

  /** 358.26: no more than 360 degrees between pull points. */
  @ParameterizedTest
  @CsvSource({"1100, MET", "1103, BROKEN"})
  void aConduitTurnsByNoMoreThanFourRightAngles(double last, Verdict expected) {
    String turns = path(1000, 1000, 1500, 1000, 1500, 1300, 1100, 1300, 1100, 1100, 1300, last);
    assertThat(verdict("conduit-turns", "R", "'runs': [" + run("emt", "", turns) + "]"))
        .isEqualTo(expected);
  }

  /** Chapter 9, table 2, for one shot and full shoe benders, to the middle line (from memory). */
  @ParameterizedTest
  @CsvSource({
    "1/2 in EMT,   0.706, 4", //
    "3/4 in EMT,   0.922, 4.5",
    "1 in EMT,     1.163, 5.75",
    "1-1/4 in EMT, 1.510, 7.25",
  })
  void tubingIsBentNoMoreSharplyThanItsSizeAllows(String size, double outside, double radius) {
    for (double more : new double[] {0.01, -0.01}) {
      String made =
          ", 'size': '%s', 'bendRadius': '%s in'"
              .formatted(size, text(radius + more - outside / 2));
      assertThat(verdict("tubing-bends", "R", bent("emt", made)))
          .isEqualTo(more > 0 ? Verdict.MET : Verdict.BROKEN);
    }
  }

  // Cables

  /** 330.24 and 320.24, to the inner edge of the bend; 334.24 from memory. */
  @ParameterizedTest
  @CsvSource({
    "armour-bends,      metal-clad-cable,  interlocked, 12.7, 7", //
    "armour-bends,      metal-clad-cable,  corrugated,  20,   7",
    "armour-bends,      metal-clad-cable,  smooth,      19,   10",
    "armour-bends,      armoured-cable,    '',          12.7, 5",
    "nonmetallic-bends, nonmetallic-cable, '',          10,   5",
  })
  void aCableIsBentNoMoreSharplyThanItsMakeAllows(
      String rule, String kind, String armour, double diameter, double factor) {
    for (double radius : new double[] {diameter * factor, diameter * factor - 0.5}) {
      String made =
          ", 'diameter': %s, 'bendRadius': %s".formatted(text(diameter), text(radius))
              + (armour.isEmpty() ? "" : ", 'armour': '" + armour + "'");
      assertThat(verdict(rule, "R", bent(kind, made)))
          .isEqualTo(radius == diameter * factor ? Verdict.MET : Verdict.BROKEN);
    }
  }

  /** Feet between supports and inches from a box. */
  @ParameterizedTest
  @CsvSource({
    "emt,               10,  36", // 358.30
    "metal-clad-cable,   6,  12", // 330.30
    "armoured-cable,     4.5, 12", // 320.30
    "nonmetallic-cable,  4.5, 12", // 334.30
    "flexible-conduit,   4.5, 12", // 348.30
  })
  void aRunIsHeldOftenEnoughAndNearItsBox(String kind, double feet, double inches) {
    double first = inches * INCH;
    double second = first + feet * FOOT;
    assertThat(verdict("run-is-supported", "R", supported(kind, first, second)))
        .isEqualTo(Verdict.MET);
    assertThat(verdict("run-is-supported", "R", supported(kind, first, second + 1)))
        .isEqualTo(Verdict.BROKEN);
    assertThat(verdict("run-is-held-at-boxes", "R", supported(kind, first, second)))
        .isEqualTo(Verdict.MET);
    assertThat(verdict("run-is-held-at-boxes", "R", supported(kind, first + 1, second)))
        .isEqualTo(Verdict.BROKEN);
  }

  /** 314.17: 8 in at a nonmetallic single-gang box without clamps. */
  @ParameterizedTest
  @CsvSource({"203.2, MET", "204, BROKEN"})
  void aNonmetallicCableIsHeldCloserWhereTheBoxHasNoClamps(double first, Verdict expected) {
    String plan =
        supported("nonmetallic-cable", first, 1000)
            .replace("'kind': 'square'", "'kind': 'device', 'material': 'plastic'");
    assertThat(verdict("nonmetallic-at-boxes-without-clamps", "R", plan)).isEqualTo(expected);
  }

  /** 300.4(A), (B) and (D): 1-1/4 in behind the face of the stud, or a plate of 1/16 in. */
  @ParameterizedTest
  @CsvSource({
    "metal-clad-cable,  1.25, 0,     MET",
    "metal-clad-cable,  1.24, 0,     BROKEN",
    "armoured-cable,    1.25, 0,     MET",
    "armoured-cable,    1.24, 0,     BROKEN",
    "nonmetallic-cable, 1.25, 0,     MET",
    "nonmetallic-cable, 1.24, 0,     BROKEN",
    "nonmetallic-cable, 1.20, 1/16,  MET",
    "nonmetallic-cable, 1.20, 1/17,  BROKEN",
    "flexible-conduit,  1.24, 0,     BROKEN",
    "emt,               1.20, 0,     NOT_APPLICABLE", // exception for tubing
  })
  void whatGoesThroughAStudIsSetBackOrBehindAPlate(
      String kind, double setBack, String plate, Verdict expected) {
    double depth = setBack * INCH + 6;
    String stud =
        "'studs': [{'id': 'S', 'face': 'left', 'along': 1500, 'section': '362S125-33', 'holes':"
            + " [{'up': 1000, 'width': '1-1/2 in', 'height': '4 in', 'plate': '%s in'}]}]";
    String run =
        run(
            kind,
            ", 'diameter': 12",
            path(1000, 1000, 2000, 1000).replace("'depth': 20", "'depth': " + text(depth)));
    assertThat(
            verdict(
                "run-in-studs-is-guarded", "R", stud.formatted(plate) + ", 'runs': [" + run + "]"))
        .isEqualTo(expected);
  }

  // Panels and receptacles

  /** 110.26(A): 30 in wide, 36 in deep, 78 in high; up to 150 V to ground. */
  @ParameterizedTest
  @CsvSource({
    "30,    36,    78,    MET", //
    "29.95, 36,    78,    BROKEN",
    "30,    35.95, 78,    BROKEN",
    "30,    36,    77.95, BROKEN",
    "40,    48,    90,    MET",
  })
  void thereIsRoomToWorkBeforeAPanel(double wide, double deep, double high, Verdict expected) {
    double front = 66.275 + 12.7 + 95; // from the ribs to the room side of the panel
    double width = front + deep * INCH + 66.275 + 12.7;
    double edge = 3000 - wide * INCH / 2;
    double hang = 2600 - 66.275 - 12.7 - high * INCH;
    String parts =
        "'panels': [{'id': 'P', 'face': 'left', 'along': 3000, 'up': 1500, 'width': 360, 'height':"
            + " 600, 'depth': 95, 'mount': 'surface'}], 'boxes': [%s, %s], 'luminaires': [{'id':"
            + " 'L', 'face': 'roof', 'along': 3000, 'up': %s, 'width': 300, 'height': 300, 'depth':"
            + " %s, 'mount': 'surface'}]";
    String box =
        "{'id': '%s', 'kind': 'square', 'face': 'left', 'along': %s, 'up': 1200, 'width': 100,"
            + " 'height': 100, 'depth': 300, 'mount': 'surface'}";
    String plan =
        parts.formatted(
            box.formatted("B1", text(edge - 50)),
            box.formatted("B2", text(edge + wide * INCH + 50)),
            text(width / 2),
            text(hang));
    assertThat(verdict("panel-working-space", "P", plan, width)).isEqualTo(expected);
  }

  /** 210.52(A): 6 ft to the next receptacle, wall spaces from 2 ft, outlets up to 5-1/2 ft. */
  @ParameterizedTest
  @CsvSource({
    "6,    3,    1.99, MET", //
    "6.01, 3,    1.99, BROKEN",
    "6,    5.49, 1.99, MET",
    "6,    5.51, 1.99, BROKEN",
    "6,    3,    2,    BROKEN", // the narrow wall space counts, and it has no receptacle
  })
  void noPointOfAWallIsFarFromAReceptacle(double way, double up, double space, Verdict expected) {
    // Between two doors a stretch twice as long as the way, with a receptacle in its middle; then a
    // wall space between the second door and a third, without one.
    double from = 1000;
    double to = from + 2 * way * FOOT;
    double third = to + 900 + space * FOOT;
    String door =
        "{'id': 'D%s', 'face': 'left', 'from': %s, 'sill': 0, 'width': %s, 'height': 2032, 'door':"
            + " {'hinge': 'left', 'opens': 'outward'}}";
    String box =
        "{'id': 'B', 'kind': 'square', 'face': 'left', 'along': %s, 'up': %s, 'devices': [{'kind':"
            + " 'receptacle'}]}";
    String plan =
        "'openings': [%s, %s, %s], 'boxes': [%s]"
            .formatted(
                door.formatted("1", "0", text(from)),
                door.formatted("2", text(to), "900"),
                door.formatted("3", text(third), text(12000 - third)),
                box.formatted(text((from + to) / 2), text(up * FOOT)));
    assertThat(verdict("receptacle-spacing", "left", plan)).isEqualTo(expected);
  }

  // Circuits

  /** Table 310.16, copper, 30 degC, no more than three current-carrying conductors. */
  @ParameterizedTest
  @CsvSource({
    "14, 15, 20, 25", //
    "12, 20, 25, 30",
    "10, 30, 35, 40",
    " 8, 40, 50, 55",
    " 6, 55, 65, 75",
  })
  void aConductorCarriesWhatItsSizeAndRatingAllow(int gauge, int at60, int at75, int at90) {
    int[] ratings = {60, 75, 90};
    int[] most = {at60, at75, at90};
    for (int i = 0; i < ratings.length; i++) {
      assertLoad(gauge, ratings[i], 30, 3, most[i]);
    }
  }

  /** Ambient factors, table 310.15(B)(1)(1): for 60, 75 and 90 degC. */
  @ParameterizedTest
  @CsvSource({
    "10, 1.29, 1.20, 1.15", //
    "11, 1.22, 1.15, 1.12",
    "15, 1.22, 1.15, 1.12",
    "16, 1.15, 1.11, 1.08",
    "20, 1.15, 1.11, 1.08",
    "21, 1.08, 1.05, 1.04",
    "25, 1.08, 1.05, 1.04",
    "26, 1.00, 1.00, 1.00",
    "30, 1.00, 1.00, 1.00",
    "31, 0.91, 0.94, 0.96",
    "35, 0.91, 0.94, 0.96",
    "36, 0.82, 0.88, 0.91",
    "40, 0.82, 0.88, 0.91",
    "41, 0.71, 0.82, 0.87",
    "45, 0.71, 0.82, 0.87",
    "46, 0.58, 0.75, 0.82",
    "50, 0.58, 0.75, 0.82",
    "51, 0.41, 0.67, 0.76",
    "55, 0.41, 0.67, 0.76",
    "56, 0.00, 0.58, 0.71",
    "60, 0.00, 0.58, 0.71",
  })
  void aWarmRoomTakesAwayFromTheAmpacity(double ambient, double at60, double at75, double at90) {
    double[] factors = {at60, at75, at90};
    int[] ratings = {60, 75, 90};
    int[] ampacities = {20, 25, 30};
    for (int i = 0; i < factors.length; i++) {
      assertLoad(12, ratings[i], ambient, 3, ampacities[i] * factors[i]);
      // The published factors are sqrt((Tc - Ta) / (Tc - 30)) at the upper end of their row.
      double upper = Math.max(10, Math.ceil(ambient / 5) * 5);
      double derived = Math.sqrt(Math.max(0, (ratings[i] - upper) / (ratings[i] - 30)));
      assertThat(factors[i]).isBetween(derived - 0.006, derived + 0.006);
    }
  }

  /** Factors by the number of current-carrying conductors, table 310.15(C)(1). */
  @ParameterizedTest
  @CsvSource({
    " 3, 1.00", //
    " 4, 0.80",
    " 6, 0.80",
    " 7, 0.70",
    " 9, 0.70",
    "10, 0.50",
    "20, 0.50",
    "21, 0.45",
    "30, 0.45",
    "31, 0.40",
    "40, 0.40",
    "41, 0.35",
  })
  void conductorsThatLieTogetherCarryLess(int count, double factor) {
    assertLoad(12, 90, 30, count, 30 * factor);
  }

  /** 334.80: 12 AWG of 90 degC, bundled: 30 x 0.8 = 24 A, but no more than 20 A. */
  @ParameterizedTest
  @CsvSource({"20, MET, MET", "20.1, MET, BROKEN", "24, MET, BROKEN", "24.1, BROKEN, BROKEN"})
  void aNonmetallicCableIsDeratedFrom90AndEndsAt60(
      double load, Verdict derated, Verdict sixtyDegrees) {
    String plan = loaded(12, 90, 30, 4, load);
    assertThat(verdict("run-carries-the-load", "R", plan)).isEqualTo(derated);
    assertThat(verdict("nonmetallic-at-60", "R", plan)).isEqualTo(sixtyDegrees);
  }

  /** 240.4(D): breakers of 15, 20 and 30 A at most. */
  @ParameterizedTest
  @CsvSource({"14, 15", "12, 20", "10, 30"})
  void aBreakerGuardsASmallConductor(int gauge, int breaker) {
    for (int more = 0; more < 2; more++) {
      String plan =
          loaded(gauge, 90, 30, 2, 1)
              .replace("'load'", "'breaker': '" + (breaker + more) + " A', 'load'");
      assertThat(verdict("breaker-guards-the-conductor", "C", plan))
          .isEqualTo(more == 0 ? Verdict.MET : Verdict.BROKEN);
    }
  }

  /**
   * 2 K I L / CM with K = 12.9 ohm cmil/ft for copper; circular mils of chapter 9, table 8. The
   * limit of 3 % is that of the informational note of 210.19(A).
   */
  @ParameterizedTest
  @CsvSource({
    "12, 20, 100, 7.90, BROKEN", // 6.6 %
    " 8, 20, 100, 3.13, MET", //    2.6 %
    "12, 16,  50, 3.16, MET", //    2.6 %
    // Just within and just beyond 3.6 V: 3.6 x 6530 / (2 x 12.9 x 16) = 56.95 ft.
    "12, 16,  56.9, 3.60, MET",
    "12, 16,  57.0, 3.60, BROKEN",
  })
  void littleVoltageIsLost(int gauge, double amperes, double feet, double volts, Verdict expected) {
    double leg = (feet * FOOT - 200) / 3; // there, back and there again, with two steps up
    String path =
        path(500, 500, 500 + leg, 500, 500 + leg, 600, 500, 600, 500, 700, 500 + leg, 700);
    String plan =
        "'panels': [{'id': 'P', 'face': 'left'}], 'boxes': [{'id': 'B', 'kind': 'square', 'face':"
            + " 'left', 'devices': [{'kind': 'receptacle'}]}], 'circuits': [{'id': 'C', 'panel':"
            + " 'P', 'voltage': '120 V', 'load': '%s A'}], 'runs': [%s]";
    String ends = ", 'from': 'P', 'to': 'B', 'circuit': 'C', 'conductors': [%s]";
    String run = run("nonmetallic-cable", ends.formatted(group(gauge, 2)), path);
    Finding finding = finding("little-voltage-drop", "C", plan.formatted(text(amperes), run), 2350);
    assertThat(finding.verdict()).isEqualTo(expected);
    assertThat(measured(finding.evidence()) * 120).isBetween(volts - 0.02, volts + 0.02);
  }

  /** The first number that was measured. */
  private static double measured(List<Evidence> evidence) {
    return evidence.stream()
        .flatMap(part -> part.measurement().stream())
        .mapToDouble(Measurement::least)
        .findFirst()
        .orElseThrow();
  }

  // What the standard says

  /** A run is met at its load, within a thousandth, and broken just beyond it. */
  private static void assertLoad(int gauge, int rating, double ambient, int count, double most) {
    for (double more : new double[] {-0.001, 0.001}) {
      double load = Math.max(0.0005, most + more);
      assertThat(verdict("run-carries-the-load", "R", loaded(gauge, rating, ambient, count, load)))
          .as("%d AWG, %d degC, %s A in %s degC, %d", gauge, rating, load, ambient, count)
          .isEqualTo(more < 0 && most > 0 ? Verdict.MET : Verdict.BROKEN);
    }
  }

  private static String fillRule(int gauge) {
    return gauge >= 8 && gauge <= 12 ? "conduit-fill" : "conduit-fill-other-sizes";
  }

  private static Verdict verdict(String rule, String element, String plan) {
    return verdict(rule, element, plan, 2350);
  }

  private static Verdict verdict(String rule, String element, String plan, double width) {
    return finding(rule, element, plan, width).verdict();
  }

  /** What a rule says of an element of a module; single quotes stand for double ones. */
  private static Finding finding(String rule, String element, String plan, double width) {
    String json =
        """
        {'format': 'rimefast-plan-1', 'id': 'nec', 'title': 'A plan (invented)', 'units': 'mm',
         'shell': {'inside': {'length': 12000, 'width': %s, 'height': 2600}},
         'faces': {'default': {'profile': 'flat', 'standoff': 25, 'stud': '162S125-33',
                               'lining': 12.7}},
         %s}
        """
            .formatted(text(width), plan)
            .replace('\'', '"');
    PlanReading reading = new PlanReader().read("nec.json", json.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.faults()).isEmpty();
    PlanFacts facts = new PlanFacts(reading.plan().orElseThrow(), DICTIONARY);
    return CHECKER.explain(rule, facts.handleNamed(element), facts);
  }
}
