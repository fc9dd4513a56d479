package org.rimefast.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantityFormatTest {
  @ParameterizedTest
  @CsvSource({
    "0.0508, in, 2 in",
    "0.0064, in, 0.252 in",
    "0.0064, mm, 6.4 mm",
    "0.05, mm, 50 mm",
    "-0.00001, mm, 0 mm",
    "-0.0, mm, 0 mm",
    "0.00025, mm, 0.3 mm",
    "12.192, ft, 40 ft",
    "235.15, degC, -38 degC",
    "273.15, degF, 32 degF",
    "1.25, K, 1.25 K",
    "0.6, %, 60 %",
    "0.025, W/(m K), 0.025 W/(m K)",
    "0.0224567, W/(m K), 0.02246 W/(m K)",
    "123456.7, W, 123457 W",
    "0, W, 0 W",
    "7, '', 7",
    "1000000, m, 1000000 m",
  })
  void printsWhatAReaderUses(double si, String unit, String expected) {
    assertThat(QuantityFormat.format(si, Units.find(unit).orElseThrow())).isEqualTo(expected);
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThatThrownBy(() -> QuantityFormat.format(Double.NaN, Units.METRE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(seed = "20261125")
  void whatIsPrintedReadsBackWithinHalfAStep(
      @ForAll @DoubleRange(min = -50, max = 50) double metres) {
    String text = QuantityFormat.format(metres, Units.MILLIMETRE);
    assertThat(text).doesNotStartWith("-0 ").doesNotContain("E");
    QuantityParser.Parsed parsed = QuantityParser.parse(text);
    double read = ((QuantityParser.Parsed.Ok) parsed).quantity().siDouble();
    assertThat(Math.abs(read - metres)).isLessThanOrEqualTo(0.0000500001);
  }
}
