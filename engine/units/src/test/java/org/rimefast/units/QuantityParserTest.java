package org.rimefast.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantityParserTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "50 mm | 1/20 | mm",
        "50mm | 1/20 | mm",
        "2 in | 127/2500 | in",
        "1-5/8 in | 1651/40000 | in",
        "5/8 in | 127/8000 | in",
        "5 ft 6-1/2 in | 16891/10000 | ft",
        "5 ft | 381/250 | ft",
        "-38 degC | 4703/20 | degC",
        "- 38 degC | 4703/20 | degC",
        "-40 degF | 4663/20 | degF",
        "60 % | 3/5 | %",
        "60% | 3/5 | %",
        "0.025 W/(m K) | 1/40 | W/(m K)",
        "12 | 12 | ''",
        "3 days | 259200 | d",
        "1000.50 money | 2001/2 | money",
        "6 m2 K/W | 6 | m2 K/W",
      })
  void readsWhatPeopleWrite(String text, String si, String unit) {
    Quantity quantity = quantity(text);
    assertThat(quantity.si()).hasToString(si);
    assertThat(quantity.unit().symbol()).isEqualTo(unit);
    assertThat(quantity.text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "1,000 mm | Write 1000 mm, or 1.000 mm if the comma is a decimal sign.",
        "1,000,000 mm | Write 1000000 mm.",
        ".5 in | Put a zero before the point: 0.5 in.",
        "1 5/8 in | Join the whole number and the fraction with a hyphen: 1-5/8 in.",
        "1e3 mm | Write all digits, such as 0.001 or 20000, without an exponent.",
        "5' 6\" | Write the units: 5 ft 6-1/2 in.",
        "5 ft 18 in | Write it as 5 ft 6-1/2 in, or in one unit.",
        "5 ft 6 mm | Write it as 5 ft 6-1/2 in, or in one unit.",
        "3-2/0 in | Write a fraction as 5/8, and a whole number with a fraction as 1-5/8.",
        "2-9/8 in | Write a fraction as 5/8, and a whole number with a fraction as 1-5/8.",
        "10-20 mm | Put a space on both sides of a minus sign; a range is two comparisons.",
        "1.2.3 mm | A number has one point: 1000.5.",
        "50 millimetres | Write 50 mm.",
        "2 inches | Write 2 in.",
        "2\" | Write 2 in.",
        "50 MM | Write 50 mm.",
        "20 C | Write 20 degC.",
        "5 Kg | Write 5 kg.",
        "0.025 W/mK | Write 0.025 W/(m K).",
        "20 \u00b0C | Write 20 degC.",
        "\u221238 degC | Write -38 degC.",
        "1\u00bd in | Write 1-1/2 in.",
        "7 cubits | Units are spelt as in 50 mm, 2 in, -38 degC, 60 %.",
        "mm | Write the number first and its unit after it, such as 50 mm or 1-5/8 in.",
        "1234567890123456789012345678901 mm | A number has at most 30 digits.",
      })
  void saysWhatToWriteInstead(String text, String help) {
    assertThat(QuantityParser.parse(text))
        .isInstanceOfSatisfying(
            QuantityParser.Parsed.Problem.class,
            problem -> assertThat(problem.help()).isEqualTo(help));
  }

  @Test
  void anEmptyOrAVeryLongTextIsAProblem() {
    assertThat(QuantityParser.parse("  ")).isInstanceOf(QuantityParser.Parsed.Problem.class);
    assertThat(QuantityParser.parse("9".repeat(1_000_000)))
        .isInstanceOf(QuantityParser.Parsed.Problem.class);
  }

  @Test
  void runsOfSpacesAreFoldedInTheText() {
    assertThat(quantity("  5  ft   6 in ").text()).isEqualTo("5 ft 6 in");
  }

  @Property(seed = "20261125")
  void everyUnitIsReadBackAsWritten(
      @ForAll("units") Unit unit, @ForAll @IntRange(max = 99999) int n) {
    Quantity quantity = quantity(unit.symbol().isEmpty() ? n + "" : n + " " + unit.symbol());
    assertThat(quantity.unit()).isEqualTo(unit);
    assertThat(quantity.number()).isEqualTo(Rational.of(n));
  }

  @Property(seed = "20261125")
  void conversionLosesNothing(
      @ForAll("units") Unit unit, @ForAll long n, @ForAll @IntRange(min = 1) int d) {
    Rational number = Rational.of(n, d);
    assertThat(unit.fromSi(unit.toSi(number))).isEqualTo(number);
  }

  @Property(seed = "20261125")
  void mixedNumbersAreExact(
      @ForAll @IntRange(max = 9999) int whole, @ForAll @IntRange(min = 1, max = 63) int above) {
    Quantity quantity = quantity(whole + "-" + above + "/64 in");
    assertThat(quantity.number().times(Rational.of(64)))
        .isEqualTo(Rational.of(64L * whole + above));
  }

  @Property(seed = "20261125")
  void anyTextIsAnsweredWithoutAnException(@ForAll String text) {
    assertThat(QuantityParser.parse(text)).isNotNull();
  }

  @Property(seed = "20261125")
  void anyTextOfNumberSignsIsAnswered(@ForAll("nearlyQuantities") String text) {
    assertThat(QuantityParser.parse(text)).isNotNull();
  }

  @Test
  void theLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
      assertThat(quantity("1.5 in").si()).hasToString("381/10000");
      assertThat(QuantityFormat.format(0.0381, Units.INCH)).isEqualTo("1.5 in");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(Units.all());
  }

  @Provide
  Arbitrary<String> nearlyQuantities() {
    return Arbitraries.strings()
        .withChars("0123456789.,/-'\" ftinmeE%\u00bd\u00b0C")
        .ofMaxLength(14);
  }

  private static Quantity quantity(String text) {
    QuantityParser.Parsed parsed = QuantityParser.parse(text);
    assertThat(parsed).isInstanceOf(QuantityParser.Parsed.Ok.class);
    return ((QuantityParser.Parsed.Ok) parsed).quantity();
  }
}
