package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.FLAT;
import static org.rimefast.plan.geometry.SamplePlan.SIDE;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoublePredicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.ShellSize;

class ZoneTest {
  private static final double STEP = 0.25;

  private static CorrugatedSheet sheet(CorrugationProfile profile, double phase, double extent) {
    SamplePlan plan = new SamplePlan();
    plan.shell = new ShellSize("short", extent, 2000, 2000);
    plan.face(Face.LEFT, profile, mm(phase), mm(25), Ribs.UPRIGHT, null, null);
    return Objects.requireNonNull(plan.geometry().sheet(Face.LEFT));
  }

  /** A side wall from phase 0: rib 0-70, web 70-138, bay 138-210, web 210-278. */
  private static CorrugatedSheet side() {
    return sheet(SIDE, 0, 12032);
  }

  @Test
  void everyPieceOfAPitchHasItsZone() {
    CorrugatedSheet side = side();
    assertThat(List.of(side.zoneAt(0), side.zoneAt(69.9))).containsOnly(Zone.INWARD_RIB);
    assertThat(List.of(side.zoneAt(70), side.zoneAt(137.9))).containsOnly(Zone.WEB);
    assertThat(List.of(side.zoneAt(138), side.zoneAt(209.9))).containsOnly(Zone.OUTER_BAY);
    assertThat(List.of(side.zoneAt(210), side.zoneAt(277.9))).containsOnly(Zone.WEB);
    assertThat(side.zoneAt(278 * 30 + 174)).isEqualTo(Zone.OUTER_BAY);
  }

  @Test
  void marginsOfABoxInABay() {
    CorrugatedSheet side = side();
    assertThat(side.marginInside(Zone.OUTER_BAY, 147, 201)).isEqualTo(9);
    assertThat(side.marginInside(Zone.OUTER_BAY, 140, 194)).isEqualTo(2);
    assertThat(side.marginInside(Zone.OUTER_BAY, 130, 184)).isEqualTo(-8);
    assertThat(side.shiftInto(Zone.OUTER_BAY, 130, 184)).isEqualTo(8);
    assertThat(side.shiftInto(Zone.OUTER_BAY, 160, 214)).isEqualTo(-4);
    assertThat(side.shiftInto(Zone.OUTER_BAY, 147, 201)).isEqualTo(0);
  }

  @Test
  void aBoxWiderThanTheBayReachesOutByAtLeastHalfTheExcess() {
    CorrugatedSheet side = side();
    assertThat(side.marginInside(Zone.OUTER_BAY, 124, 224)).isEqualTo(-14); // 100 in 72, centred
    assertThat(side.marginInside(Zone.OUTER_BAY, 134, 234)).isEqualTo(-24);
    assertThat(side.shiftInto(Zone.OUTER_BAY, 124, 224)).isNaN();
    assertThat(side.widest(Zone.OUTER_BAY)).isEqualTo(72);
  }

  @Test
  void gapsOfABoxToARib() {
    CorrugatedSheet side = side();
    assertThat(side.gapTo(Zone.INWARD_RIB, 147, 201)).isEqualTo(77);
    assertThat(side.gapTo(Zone.INWARD_RIB, 70, 124)).isEqualTo(0);
    assertThat(side.gapTo(Zone.INWARD_RIB, 60, 114)).isEqualTo(-10);
    assertThat(side.shiftClearOf(Zone.INWARD_RIB, 60, 114)).isEqualTo(10);
    assertThat(side.shiftClearOf(Zone.INWARD_RIB, 270, 324)).isEqualTo(-46);
    assertThat(side.shiftClearOf(Zone.INWARD_RIB, 235, 289)).isEqualTo(-11);
    assertThat(side.shiftClearOf(Zone.INWARD_RIB, 60, 360)).isNaN();
  }

  @Test
  void whatABoxFacesIsListedInOrderWithNumbers() {
    assertThat(side().facing(278 + 60, 278 + 150))
        .containsExactly(
            new Stretch(Zone.INWARD_RIB, 2, 278, 348, 338, 348),
            new Stretch(Zone.WEB, 3, 348, 416, 348, 416),
            new Stretch(Zone.OUTER_BAY, 2, 416, 488, 416, 428));
  }

  @Test
  void stretchesAreCutOffAndCountedAtTheEndsOfTheFace() {
    CorrugatedSheet sheet = sheet(SIDE, 250, 400); // the bay before the first rib: 110 to 182
    assertThat(sheet.facing(0, 400))
        .containsExactly(
            new Stretch(Zone.INWARD_RIB, 1, 0, 42, 0, 42), // 250 - 278 to 42
            new Stretch(Zone.WEB, 1, 42, 110, 42, 110),
            new Stretch(Zone.OUTER_BAY, 1, 110, 182, 110, 182),
            new Stretch(Zone.WEB, 2, 182, 250, 182, 250),
            new Stretch(Zone.INWARD_RIB, 2, 250, 320, 250, 320),
            new Stretch(Zone.WEB, 3, 320, 388, 320, 388),
            new Stretch(Zone.OUTER_BAY, 2, 388, 400, 388, 400));
    assertThat(sheet.marginInside(Zone.OUTER_BAY, 389, 399)).isEqualTo(1);
  }

  @Test
  void aFlatSheetIsOneInwardRib() {
    CorrugatedSheet flat = sheet(FLAT, 0, 1000);
    assertThat(flat.zoneAt(500)).isEqualTo(Zone.INWARD_RIB);
    assertThat(flat.marginInside(Zone.INWARD_RIB, 100, 200)).isEqualTo(100);
    assertThat(flat.marginInside(Zone.OUTER_BAY, 100, 200)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(flat.gapTo(Zone.OUTER_BAY, 100, 200)).isInfinite();
    assertThat(flat.gapTo(Zone.INWARD_RIB, 100, 200)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(flat.facing(0, 1000)).hasSize(1);
  }

  /** The stretches of a zone, read off the corners of the cross-section one after the other. */
  private static List<double[]> stretches(RandomSheet sheet, Zone zone) {
    List<double[]> found = new ArrayList<>();
    List<double[]> corners = sheet.corners();
    for (int i = 0; i + 1 < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get(i + 1);
      Zone piece = a[1] != b[1] ? Zone.WEB : a[1] == 0 ? Zone.INWARD_RIB : Zone.OUTER_BAY;
      double from = Math.max(0, a[0]);
      double to = Math.min(sheet.extentS, b[0]);
      if (piece == zone && from < to) {
        double[] last = found.isEmpty() ? new double[] {-1, -1} : found.get(found.size() - 1);
        if (Math.abs(last[1] - from) < 1e-9) {
          last[1] = to;
        } else {
          found.add(new double[] {from, to});
        }
      }
    }
    return found;
  }

  private static boolean inside(List<double[]> stretches, double from, double to) {
    return stretches.stream().anyMatch(s -> s[0] <= from && to <= s[1]);
  }

  private static boolean overlaps(List<double[]> stretches, double from, double to) {
    return stretches.stream().anyMatch(s -> s[0] < to && from < s[1]);
  }

  @Property(tries = 400, seed = "20261125")
  void marginsAndGapsAgreeWithAScanOverShifts(@ForAll Random random) {
    RandomSheet sheet = new RandomSheet(random, 1200, 0);
    double from = sheet.extentS * 0.9 * random.nextDouble();
    double to = from + Math.min(sheet.extentS - from, 120 * random.nextDouble());
    for (Zone zone : Zone.values()) {
      List<double[]> stretches = stretches(sheet, zone);
      double shiftIn = Double.POSITIVE_INFINITY;
      double shiftOut = Double.POSITIVE_INFINITY;
      double shiftClear = Double.POSITIVE_INFINITY;
      for (double shift = 0; shift < 1200; shift += STEP) {
        for (double signed : new double[] {shift, -shift}) {
          boolean in = inside(stretches, from + signed, to + signed);
          shiftIn = in ? Math.min(shiftIn, shift) : shiftIn;
          shiftOut = in ? shiftOut : Math.min(shiftOut, shift);
          boolean clear =
              from + signed >= 0
                  && to + signed <= sheet.extentS
                  && !overlaps(stretches, from + signed, to + signed);
          shiftClear = clear ? Math.min(shiftClear, shift) : shiftClear;
        }
      }
      CorrugatedSheet tested = sheet.sheet;
      double margin = tested.marginInside(zone, from, to);
      assertThat(margin >= 0).isEqualTo(shiftIn == 0);
      if (margin > 0) {
        assertThat(margin).isBetween(shiftOut - STEP, shiftOut);
      }
      double hair = 1e-9;
      assertLeast(
          tested.shiftInto(zone, from, to),
          shiftIn,
          shift -> inside(stretches, from + shift + hair, to + shift - hair));
      assertLeast(
          tested.shiftClearOf(zone, from, to),
          shiftClear,
          shift -> !overlaps(stretches, from + shift + hair, to + shift - hair));
      double gap = tested.gapTo(zone, from, to);
      assertThat(gap >= 0).isEqualTo(!overlaps(stretches, from, to));
      if (gap >= 0) {
        double expected =
            stretches.stream()
                .mapToDouble(s -> Math.max(s[0] - to, from - s[1]))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        assertThat(gap).isCloseTo(expected, within(1e-9));
      }
      assertThat(tested.facing(from, to).stream().filter(s -> s.zone() == zone).count())
          .isEqualTo(stretches.stream().filter(s -> s[0] < to && from < s[1]).count());
    }
  }

  /** A shift must do what it says, and no lesser one that the scan tried may do it. */
  private static void assertLeast(double shift, double scanned, DoublePredicate does) {
    if (Double.isNaN(shift)) {
      assertThat(scanned).isInfinite();
    } else {
      assertThat(does.test(shift)).isTrue();
      assertThat(Math.abs(shift)).isLessThanOrEqualTo(scanned + 1e-9);
    }
  }

  @Property(tries = 1000, seed = "20261126")
  void inTheOrdinaryCaseMarginAndGapAreTheLeastShift(@ForAll Random random) {
    CorrugatedSheet side = sheet(SIDE, 278 * random.nextDouble(), 12032);
    double from = 500 + 11000 * random.nextDouble();
    double to = from + 69 * random.nextDouble();
    for (Zone zone : List.of(Zone.INWARD_RIB, Zone.OUTER_BAY)) {
      double margin = side.marginInside(zone, from, to);
      double gap = side.gapTo(zone, from, to);
      double in = Math.abs(side.shiftInto(zone, from, to));
      double clear = Math.abs(side.shiftClearOf(zone, from, to));
      assertThat(in).isCloseTo(Math.max(0, -margin), within(1e-9));
      assertThat(clear).isCloseTo(Math.max(0, -gap), within(1e-9));
    }
  }

  @Property(tries = 3000, seed = "20261127")
  void marginsAndGapsChangeByNoMoreThanTheEnds(@ForAll Random random) {
    RandomSheet sheet = new RandomSheet(random, 2000, 0);
    double from = sheet.extentS * 0.8 * random.nextDouble();
    double to = from + 250 * random.nextDouble();
    double d = 20 * random.nextDouble();
    double movedFrom = from + d * (2 * random.nextDouble() - 1);
    double movedTo = Math.max(movedFrom, to + d * (2 * random.nextDouble() - 1));
    for (Zone zone : Zone.values()) {
      double margin = sheet.sheet.marginInside(zone, from, to);
      double gap = sheet.sheet.gapTo(zone, from, to);
      double movedMargin = sheet.sheet.marginInside(zone, movedFrom, movedTo);
      double movedGap = sheet.sheet.gapTo(zone, movedFrom, movedTo);
      if (Double.isInfinite(margin)) {
        assertThat(movedMargin).isEqualTo(margin);
      } else {
        assertThat(Math.abs(movedMargin - margin)).isLessThanOrEqualTo(d + 1e-9);
      }
      if (Double.isInfinite(gap)) {
        assertThat(movedGap).isEqualTo(gap);
      } else {
        assertThat(Math.abs(movedGap - gap)).isLessThanOrEqualTo(d + 1e-9);
      }
    }
  }
}
