package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProductsTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final Offset<Double> EXACT_VOLUME = within(1e-15);

  // ISO 6346 codes; typical inside sizes as published by owners of such modules. ISO 1496-1 gives
  // the least inside: 5867 x 2330 x 2350, 11998 x 2330 x 2350, 11998 x 2330 x 2655.
  @ParameterizedTest
  @CsvSource({
    "22G1, 5898, 2352, 2395, 5867, 2350",
    "25G1, 5898, 2352, 2693, 5867, 2655",
    "42G1, 12032, 2352, 2392, 11998, 2350",
    "45G1, 12032, 2350, 2693, 11998, 2655"
  })
  void aShellHasItsTypicalInsideAndNotLessThanTheLeast(
      String code, double length, double width, double height, double least, double low) {
    ShellSize shell = Products.shell(code).orElseThrow();
    assertThat(shell).isEqualTo(new ShellSize(code, length, width, height));
    assertThat(shell.length()).isGreaterThanOrEqualTo(least);
    assertThat(shell.width()).isGreaterThanOrEqualTo(2330);
    assertThat(shell.height()).isGreaterThanOrEqualTo(low);
  }

  // Pitch and depth as makers give them (common practice, no source).
  @ParameterizedTest
  @CsvSource({"side wall, 278, 36", "front wall, 250, 45.6", "roof, 209, 20"})
  void theFlatsOfAProfileAddUpToItsPitch(String name, double pitch, double depth) {
    CorrugationProfile profile = Products.profile(name).orElseThrow();
    assertThat(profile.pitch()).isCloseTo(pitch, EXACT);
    assertThat(profile.depth()).isEqualTo(depth);
    assertThat(profile.isFlat()).isFalse();
  }

  // Length of sheet to length of wall: 1.064, 1.248, 1.102 (common practice, no source).
  @ParameterizedTest
  @CsvSource({"side wall, 1.0643", "front wall, 1.2482", "roof, 1.1017"})
  void theDevelopedLengthIsWhatMakersGive(String name, double ratio) {
    CorrugationProfile profile = Products.profile(name).orElseThrow();
    double developed =
        profile.outer() + profile.inner() + 2 * Math.hypot(profile.web(), profile.depth());
    assertThat(developed / profile.pitch()).isCloseTo(ratio, within(0.0001));
  }

  @Test
  void aFlatSheetHasNoRibs() {
    assertThat(Products.profile("flat").orElseThrow().isFlat()).isTrue();
  }

  // 28 mm plywood on cross members (published descriptions of such modules): no steel sheet.
  @Test
  void onlyPlywoodIsNoSteel() {
    for (String name : Products.profileNames()) {
      assertThat(Products.profile(name).orElseThrow().steel()).isEqualTo(!name.equals("plywood"));
    }
    assertThat(Products.profile("plywood").orElseThrow().isFlat()).isTrue();
  }

  // Only its depth and the way its ribs run are known.
  @Test
  void aDoorsProfileIsNotInvented() {
    assertThat(Products.profile("door")).isEmpty();
  }

  // Webs and flanges: SSMA product technical guide. Design thickness: AISI S100 A2.4, in inches.
  @ParameterizedTest
  @CsvSource({
    "162S125-33, 1.625, 1.25, 0.0346",
    "162S125-18, 1.625, 1.25, 0.0188",
    "250S137-27, 2.5, 1.375, 0.0283",
    "350S162-30, 3.5, 1.625, 0.0312",
    "362S200-43, 3.625, 2.0, 0.0451",
    "400S250-54, 4.0, 2.5, 0.0566",
    "600S300-68, 6.0, 3.0, 0.0713",
    "600S350-97, 6.0, 3.5, 0.1017",
    "362S162-118, 3.625, 1.625, 0.1242"
  })
  void aStudIsReadFromItsDesignation(String name, double depth, double flange, double thickness) {
    StudSection stud = Products.stud(name).orElseThrow();
    assertThat(stud.name()).isEqualTo(name);
    assertThat(stud.depth()).isCloseTo(depth * 25.4, EXACT);
    assertThat(stud.flange()).isCloseTo(flange * 25.4, EXACT);
    assertThat(stud.thickness()).isCloseTo(thickness * 25.4, EXACT);
  }

  // AISI S100 A2.4: the least thickness is 95 % of the design thickness; mil is 1/1000 in of it.
  @ParameterizedTest
  @CsvSource({
    "18, 0.0179",
    "27, 0.0269",
    "30, 0.0296",
    "33, 0.0329",
    "43, 0.0428",
    "54, 0.0538",
    "68, 0.0677",
    "97, 0.0966",
    "118, 0.1180"
  })
  void theLeastThicknessIs95PercentOfTheDesignThickness(String mil, double least) {
    StudSection stud = Products.stud("162S125-" + mil).orElseThrow();
    assertThat(stud.thickness() * 0.95 / 25.4).isCloseTo(least, within(0.00008));
    assertThat(least * 1000).isCloseTo(Double.parseDouble(mil), within(0.6));
  }

  @ParameterizedTest
  @CsvSource({
    "162T125-33",
    "163S125-33",
    "162S126-33",
    "162S125-34",
    "162S12533",
    "S-",
    "''",
    "-S"
  })
  void noOtherDesignationIsAStud(String name) {
    assertThat(Products.stud(name)).isEmpty();
  }

  @Test
  void everyListedStudIsKnown() {
    assertThat(Products.studNames()).hasSize(6 * 7 * 9).doesNotHaveDuplicates();
    assertThat(Products.studNames()).allMatch(name -> Products.stud(name).isPresent());
  }

  // Listed volumes in cubic inches: NFPA 70, table 314.16(A), but for the two marked ones, which
  // are from memory. A box's listed volume is never more than its outside.
  @ParameterizedTest
  @CsvSource({
    "3 x 2 x 1-1/2 in, 2, 3, 1.5, 7.5",
    "3 x 2 x 2 in, 2, 3, 2, 10.0",
    "3 x 2 x 2-1/4 in, 2, 3, 2.25, 10.5",
    "3 x 2 x 2-1/2 in, 2, 3, 2.5, 12.5",
    "3 x 2 x 2-3/4 in, 2, 3, 2.75, 14.0",
    "3 x 2 x 3-1/2 in, 2, 3, 3.5, 18.0",
    "4 x 4 x 1-1/4 in, 4, 4, 1.25, 18.0",
    "4 x 4 x 1-1/2 in, 4, 4, 1.5, 21.0",
    "4 x 4 x 2-1/8 in, 4, 4, 2.125, 30.3",
    "4-11/16 x 4-11/16 x 1-1/4 in, 4.6875, 4.6875, 1.25, 25.5",
    "4-11/16 x 4-11/16 x 1-1/2 in, 4.6875, 4.6875, 1.5, 29.5",
    "4-11/16 x 4-11/16 x 2-1/8 in, 4.6875, 4.6875, 2.125, 42.0",
    "octagon 4 x 1-1/4 in, 4, 4, 1.25, 12.5",
    "octagon 4 x 1-1/2 in, 4, 4, 1.5, 15.5",
    "octagon 4 x 2-1/8 in, 4, 4, 2.125, 21.5",
    "handy 4 x 2-1/8 x 1-1/2 in, 2.125, 4, 1.5, 10.3", // volume from memory
    "handy 4 x 2-1/8 x 1-7/8 in, 2.125, 4, 1.875, 13.0",
    "handy 4 x 2-1/8 x 2-1/8 in, 2.125, 4, 2.125, 14.5" // volume from memory
  })
  void aBoxHasItsTradeSize(
      String name, double width, double height, double depth, double listedVolume) {
    Products.BoxSize box = Products.box(name).orElseThrow();
    assertThat(box.width().siDouble()).isCloseTo(width * 0.0254, EXACT);
    assertThat(box.height().siDouble()).isCloseTo(height * 0.0254, EXACT);
    assertThat(box.depth().siDouble()).isCloseTo(depth * 0.0254, EXACT);
    assertThat(width * height * depth).isGreaterThanOrEqualTo(listedVolume);
    assertThat(box.volume().siDouble()).isCloseTo(listedVolume * Math.pow(0.0254, 3), EXACT_VOLUME);
  }

  // NFPA 70, chapter 9, table 4: inside diameter and whole area in inches; a published area is
  // rounded to three places. Outside diameters: from memory.
  @ParameterizedTest
  @CsvSource({
    "1/2 in EMT, 0.622, 0.304, 0.706",
    "3/4 in EMT, 0.824, 0.533, 0.922",
    "1 in EMT, 1.049, 0.864, 1.163",
    "1-1/4 in EMT, 1.380, 1.496, 1.510"
  })
  void tubingHasTheBoreOfTheTable(String name, double bore, double area, double diameter) {
    Products.EmtSize size = Products.emt(name).orElseThrow();
    double inches = size.bore().siDouble() / 0.0254;
    assertThat(inches).isCloseTo(bore, EXACT);
    assertThat(Math.PI / 4 * inches * inches).isCloseTo(area, within(0.0005));
    assertThat(size.diameter().siDouble()).isCloseTo(diameter * 0.0254, EXACT);
  }

  @Test
  void everyListedTubingIsKnown() {
    assertThat(Products.emtNames()).hasSize(4);
    assertThat(Products.emtNames()).allMatch(name -> Products.emt(name).isPresent());
    assertThat(Products.emt("1-1/2 in EMT")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"18 AWG, 18", "10 AWG, 10", "9 AWG, 9", "1 AWG, 1"})
  void aGaugeIsReadFromASize(String size, int number) {
    assertThat(Products.gauge(size)).hasValue(number);
  }

  @ParameterizedTest
  @CsvSource({"19 AWG", "0 AWG", "1/0 AWG", "-2 AWG", "012 AWG", "12AWG", "12 awg", "12", "''"})
  void noOtherSizeIsAGauge(String size) {
    assertThat(Products.gauge(size)).isEmpty();
  }

  @Test
  void everyListedBoxIsKnown() {
    assertThat(Products.boxNames()).hasSize(18);
    assertThat(Products.boxNames()).allMatch(name -> Products.box(name).isPresent());
  }
}
