package org.rimefast.units;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

final class RationalLawsTest {
  @Property(seed = "20261125")
  void sumsDoNotCareForOrderOrGrouping(
      @ForAll("rationals") Rational a,
      @ForAll("rationals") Rational b,
      @ForAll("rationals") Rational c) {
    assertThat(a.plus(b)).isEqualTo(b.plus(a));
    assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
    assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
  }

  @Property(seed = "20261125")
  void takingAwayAndDividingUndo(@ForAll("rationals") Rational a, @ForAll("rationals") Rational b) {
    assertThat(a.plus(b).minus(b)).isEqualTo(a);
    Assume.that(b.signum() != 0);
    assertThat(a.times(b).dividedBy(b)).isEqualTo(a);
  }

  @Property(seed = "20261125")
  void orderIsThatOfTheDifference(
      @ForAll("rationals") Rational a, @ForAll("rationals") Rational b) {
    assertThat(a.compareTo(b)).isEqualTo(a.minus(b).signum());
    assertThat(a.equals(b)).isEqualTo(a.compareTo(b) == 0);
  }

  @Test
  void dimensionsOfNamedUnitsFollowFromTheirParts() {
    Dimension power = Dimension.POWER;
    Dimension kelvin = Dimension.TEMPERATURE_DIFFERENCE;
    assertThat(power.dividedBy(Dimension.LENGTH.times(kelvin))).isEqualTo(Dimension.CONDUCTIVITY);
    assertThat(Dimension.AREA.times(kelvin).dividedBy(power))
        .isEqualTo(Dimension.THERMAL_RESISTANCE);
    assertThat(power.dividedBy(Dimension.AREA.times(kelvin)))
        .isEqualTo(Dimension.THERMAL_TRANSMITTANCE);
    assertThat(power.dividedBy(kelvin)).isEqualTo(Dimension.HEAT_LOSS);
    assertThat(Dimension.VOLTAGE.times(Dimension.CURRENT)).isEqualTo(power);
    assertThat(Dimension.RESISTANCE.times(Dimension.CURRENT)).isEqualTo(Dimension.VOLTAGE);
    assertThat(
            Dimension.AREA
                .times(Dimension.TIME)
                .times(Dimension.PRESSURE)
                .dividedBy(Dimension.MASS))
        .isEqualTo(Dimension.VAPOUR_RESISTANCE);
    assertThat(Dimension.NUMBER.dividedBy(Dimension.VAPOUR_RESISTANCE))
        .isEqualTo(Dimension.VAPOUR_PERMEANCE);
  }

  @Test
  void aDimensionWithoutANamedUnitGetsASymbolOfBaseUnits() {
    assertThat(Units.coherent(Dimension.AREA.times(Dimension.AREA)).symbol()).isEqualTo("m4");
    assertThat(Units.coherent(Dimension.NUMBER.dividedBy(Dimension.LENGTH)).symbol())
        .isEqualTo("1/m");
    assertThat(Units.coherent(Dimension.LENGTH)).isEqualTo(Units.METRE);
    assertThat(Units.coherent(Dimension.PERCENT)).isEqualTo(Units.PERCENT);
  }

  @Provide
  Arbitrary<Rational> rationals() {
    return Combinators.combine(Arbitraries.longs(), Arbitraries.longs().between(1, 1L << 40))
        .as(Rational::of);
  }
}
