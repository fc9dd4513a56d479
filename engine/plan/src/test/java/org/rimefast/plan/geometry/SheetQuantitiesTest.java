package org.rimefast.plan.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimefast.plan.geometry.SamplePlan.mm;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.plan.CorrugationProfile;
import org.rimefast.plan.Face;
import org.rimefast.plan.FaceBuild;
import org.rimefast.plan.FaceBuild.Ribs;
import org.rimefast.plan.ShellSize;
import org.rimefast.plan.Tolerances;

class SheetQuantitiesTest {
  /**
   * Developed length over pitch, worked out by hand from the flats and slants of typical profiles
   * (common practice, no source): (72 + 70 + 2 sqrt(68^2 + 36^2)) / 278 and so on.
   */
  @ParameterizedTest
  @CsvSource({"72, 68, 70, 36, 1.064", "110, 18, 104, 45.6, 1.248", "91, 13.5, 91, 20, 1.102"})
  void theSteelOfWholePitchesHasThePublishedRatio(
      double outer, double web, double inner, double depth, double ratio) {
    CorrugationProfile profile = new CorrugationProfile("given", outer, web, inner, depth);
    SamplePlan plan = new SamplePlan();
    plan.shell = new ShellSize("test", 20 * profile.pitch(), 2350, 2600);
    plan.face(Face.LEFT, profile, mm(40), mm(25));
    SheetQuantities quantities = SheetQuantities.of(plan.geometry());
    Bounds steel = quantities.steelArea(Face.LEFT);
    double face = plan.shell.length() * 2600;
    assertThat(quantities.foamArea(Face.LEFT)).isEqualTo(new Bounds(face, face));
    assertThat(steel.least() / face).isCloseTo(ratio, within(0.0005));
    assertThat(steel.most()).isEqualTo(steel.least());
  }

  /** The reference adds up thin slices of a profile that is written down apart from the sheet. */
  @Test
  void areasAndVolumesAreThoseOfThinSlices() {
    Random random = new Random(51);
    for (int round = 0; round < 2_000; round++) {
      CorrugationProfile profile =
          new CorrugationProfile(
              "random",
              5 + random.nextInt(60),
              4 + random.nextInt(20),
              5 + random.nextInt(60),
              5 + random.nextInt(40));
      double phase = random.nextInt(200) - 60;
      Ribs ribs = random.nextBoolean() ? Ribs.UPRIGHT : Ribs.LEVEL;
      SamplePlan plan = new SamplePlan();
      plan.shell = new ShellSize("test", 400, 200, 300);
      plan.faces.put(
          Face.LEFT,
          new FaceBuild(
              Face.LEFT,
              "/faces/left",
              profile,
              ribs,
              mm(phase),
              mm(2),
              mm(25),
              SamplePlan.STUD,
              mm(12.7),
              new FaceBuild.Foam(null, mm(50), null)));
      int from = random.nextInt(300);
      int sill = random.nextInt(200);
      int width = random.nextInt(160);
      int height = random.nextInt(150);
      plan.opening(Face.LEFT, from, sill, width, height);
      SheetQuantities quantities = SheetQuantities.of(plan.geometry());
      double area = 0;
      double steel = 0;
      double volume = 0;
      double slice = 0.5;
      boolean upright = ribs == Ribs.UPRIGHT;
      for (double s = 0; s < (upright ? 400 : 300); s += slice) {
        double middle = s + slice / 2;
        boolean cut =
            upright
                ? middle > from && middle < from + width
                : middle > sill && middle < sill + height;
        double hole =
            upright ? Math.min(300, sill + height) - sill : Math.min(400, from + width) - from;
        double across = (upright ? 300 : 400) - (cut ? hole : 0);
        double rise = (out(profile, phase, s + slice) - out(profile, phase, s)) / slice;
        area += slice * across;
        steel += slice * Math.sqrt(1 + rise * rise) * across;
        volume += slice * (50 + out(profile, phase, middle)) * across;
      }
      assertThat(quantities.foamArea(Face.LEFT).least()).isCloseTo(area, within(1e-3));
      assertThat(quantities.steelArea(Face.LEFT).least()).isCloseTo(steel, near(steel, 1e-9));
      assertThat(quantities.foamVolume(Face.LEFT).least()).isCloseTo(volume, near(volume, 1e-9));
      assertThat(quantities.foamVolume(Face.LEFT).most()).isCloseTo(volume, near(volume, 1e-9));
    }
  }

  private static Offset<Double> near(double value, double share) {
    return within(value * share + 1e-3);
  }

  /** All corners of the profile lie at whole millimetres, so no slice holds one inside. */
  private static double out(CorrugationProfile profile, double phase, double s) {
    double place = (s - phase) % profile.pitch();
    place = place < 0 ? place + profile.pitch() : place;
    double web = profile.inner();
    double bay = web + profile.web();
    double back = bay + profile.outer();
    if (place <= web) {
      return 0;
    }
    if (place < bay) {
      return profile.depth() * (place - web) / profile.web();
    }
    return place <= back ? profile.depth() : profile.depth() * (1 - (place - back) / profile.web());
  }

  @Test
  void whatIsBuiltLiesWithinTheBounds() {
    Random random = new Random(52);
    for (int round = 0; round < 500; round++) {
      SamplePlan drawn = new SamplePlan();
      drawn.tolerances = new Tolerances(mm(5), null, null, null);
      drawn.face(Face.LEFT, SamplePlan.END, mm(40), mm(25));
      drawn.opening(Face.LEFT, mm(1000, 4), mm(300, 4), mm(900, 4), mm(1500, 4));
      SamplePlan built = new SamplePlan();
      built.face(Face.LEFT, SamplePlan.END, mm(40 + 5 * part(random)), mm(25));
      built.opening(
          Face.LEFT,
          1000 + 4 * part(random),
          300 + 4 * part(random),
          900 + 4 * part(random),
          1500 + 4 * part(random));
      SheetQuantities bounds = SheetQuantities.of(drawn.geometry());
      SheetQuantities real = SheetQuantities.of(built.geometry());
      assertThat(real.foamArea(Face.LEFT).least())
          .isBetween(bounds.foamArea(Face.LEFT).least(), bounds.foamArea(Face.LEFT).most());
      assertThat(real.steelArea(Face.LEFT).least())
          .isBetween(bounds.steelArea(Face.LEFT).least(), bounds.steelArea(Face.LEFT).most());
    }
  }

  private static double part(Random random) {
    return Math.round(2000 * random.nextDouble() - 1000) / 1000.0;
  }

  @Test
  void aFaceWithoutSteelHasNoneAndAnUnknownOneIsNamed() {
    SamplePlan plan = SamplePlan.whole();
    plan.face(Face.FLOOR, new CorrugationProfile("plywood", 1, 0, 0, 0, false), null, null);
    plan.face(Face.ROOF, null, null, null);
    SheetQuantities quantities = SheetQuantities.of(plan.geometry());
    assertThat(quantities.foamVolume(Face.FLOOR)).isEqualTo(new Bounds(0, 0));
    assertThat(quantities.steelArea(Face.ROOF).isKnown()).isFalse();
    assertThat(quantities.missingForSteelArea(Face.ROOF)).containsExactly("/faces/roof/profile");
    assertThat(quantities.missingForFoamVolume(Face.LEFT))
        .containsExactly("/faces/left/foam/thickness");
  }
}
