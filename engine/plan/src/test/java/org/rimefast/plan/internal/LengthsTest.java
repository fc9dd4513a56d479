package org.rimefast.plan.internal;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.plan.Amount;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.Rational;
import org.rimefast.units.Units;

class LengthsTest {
  private static Quantity quantity(String text) {
    if (QuantityParser.parse(text) instanceof QuantityParser.Parsed.Ok ok) {
      return ok.quantity();
    }
    throw new AssertionError(text);
  }

  @ParameterizedTest
  @CsvSource({
    "44 in, mm, 44 in",
    "1112 mm, mm, 1112 mm",
    "4 ft, mm, 48 in",
    "4 ft, ft, 4 ft",
    "40 cm, m, 400 mm",
    "1/3 in, mm, 1/3 in",
    "1-1/3 ft, in, 16 in",
    "7/9 in, mm, 7/9 in",
    "0.5 mm, in, 0.5 mm"
  })
  void aSpacingIsSpeltWithTheFewestDecimals(String text, String unit, String spelt) {
    Quantity quantity = quantity(text);
    Quantity shortest = Lengths.shortest(quantity.si(), Units.find(unit).orElseThrow());
    assertThat(shortest.text()).isEqualTo(spelt);
    assertThat(shortest.si()).isEqualTo(quantity.si());
  }

  @Property(tries = 500, seed = "1")
  void whateverIsSpeltReadsBackExactly(
      @ForAll @IntRange(min = -100000, max = 100000) int above,
      @ForAll @IntRange(min = 1, max = 1000) int below) {
    Rational metres = Rational.of(above, below);
    Quantity spelt = Lengths.shortest(metres, Units.MILLIMETRE);
    assertThat(spelt.si()).isEqualTo(metres);
    assertThat(quantity(spelt.text())).isEqualTo(spelt);
  }

  @ParameterizedTest
  @CsvSource({
    "400 mm, 44 in, 2, 2635.2 mm",
    "16 in, 16 in, 27, 448 in",
    "5 ft 6 in, 3 in, 1, 5.75 ft",
    "16 in, 100 mm, 1, 506.4 mm",
    "1/3 ft, 1/3 ft, 1, 8 in"
  })
  void aRowGoesOnInTheUnitOfItsFirstItemIfThatIsShort(
      String start, String spacing, int steps, String moved) {
    Amount first = new Amount(quantity(start), null);
    Amount last = Lengths.moved(first, quantity(spacing).si(), steps);
    assertThat(last.value().text()).isEqualTo(moved);
    assertThat(last.value().si())
        .isEqualTo(first.value().si().plus(quantity(spacing).si().times(Rational.of(steps))));
  }

  @Test
  void aRowKeepsTheToleranceOfItsFirstItem() {
    Amount first = new Amount(quantity("400 mm"), quantity("3 mm"));
    assertThat(Lengths.moved(first, Rational.ONE, 3).plusMinus()).isEqualTo(quantity("3 mm"));
    assertThat(Lengths.moved(first, Rational.ONE, 0)).isSameAs(first);
  }

  @ParameterizedTest
  @CsvSource({"1/1, 0", "1/2, 1", "1/8, 3", "1/5, 1", "1/40, 3", "1/3, -1", "7/6, -1", "3/1000, 3"})
  void decimalPlacesAreCounted(String fraction, int places) {
    int slash = fraction.indexOf('/');
    long above = Long.parseLong(fraction.substring(0, slash));
    long below = Long.parseLong(fraction.substring(slash + 1));
    assertThat(Lengths.places(Rational.of(above, below))).isEqualTo(places);
  }
}
