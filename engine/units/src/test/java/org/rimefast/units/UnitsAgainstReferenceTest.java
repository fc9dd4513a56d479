package org.rimefast.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Every conversion against the reference implementation of JSR 385 (indriya 2.2.3 and
 * systems-common 2.1).
 *
 * <p>Composed here from base units of those libraries: density, conductivity, thermal resistance,
 * U-value, heat loss, vapour resistance and permeance, psi, inHg, Btu. The libraries hold no Btu
 * and no inch of mercury that is exact, so the pound, the degree Fahrenheit and the numbers of NIST
 * Special Publication 811 (4186.8 J/(kg K); 13595.1 kg/m3; 9.80665 m/s2) make them.
 */
final class UnitsAgainstReferenceTest {
  private record Pair(Unit ours, javax.measure.Unit<?> theirs, javax.measure.Unit<?> si) {}

  private static final javax.measure.Unit<?> K = Units.KELVIN;
  private static final javax.measure.Unit<?> DEG_F = Units.KELVIN.multiply(5).divide(9);
  private static final javax.measure.Unit<?> M = Units.METRE;
  private static final javax.measure.Unit<?> FT = USCustomary.FOOT;
  private static final javax.measure.Unit<?> IN = USCustomary.INCH;
  private static final javax.measure.Unit<?> LB = USCustomary.POUND;
  private static final javax.measure.Unit<?> W = Units.WATT;
  private static final javax.measure.Unit<?> H = Units.HOUR;
  private static final javax.measure.Unit<?> J_PER_KG_K =
      Units.JOULE.divide(Units.KILOGRAM).divide(K);
  private static final javax.measure.Unit<?> BTU =
      J_PER_KG_K.multiply(4186.8).multiply(LB).multiply(DEG_F);
  private static final javax.measure.Unit<?> GRAVITY =
      Units.METRE_PER_SQUARE_SECOND.multiply(9.80665);
  private static final javax.measure.Unit<?> INCH_OF_MERCURY =
      Units.KILOGRAM.divide(M.pow(3)).multiply(13595.1).multiply(GRAVITY).multiply(IN);
  private static final javax.measure.Unit<?> VAPOUR_RESISTANCE =
      M.pow(2).multiply(Units.SECOND).multiply(Units.PASCAL).divide(Units.KILOGRAM);

  private static List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    add(pairs, "", AbstractUnit.ONE, AbstractUnit.ONE);
    add(pairs, "%", Units.PERCENT, AbstractUnit.ONE);
    add(pairs, "m", M, M);
    add(pairs, "mm", MetricPrefix.MILLI(Units.METRE), M);
    add(pairs, "cm", MetricPrefix.CENTI(Units.METRE), M);
    add(pairs, "in", IN, M);
    add(pairs, "ft", FT, M);
    add(pairs, "m2", M.pow(2), M.pow(2));
    add(pairs, "cm2", MetricPrefix.CENTI(Units.METRE).pow(2), M.pow(2));
    add(pairs, "mm2", MetricPrefix.MILLI(Units.METRE).pow(2), M.pow(2));
    add(pairs, "in2", IN.pow(2), M.pow(2));
    add(pairs, "ft2", USCustomary.SQUARE_FOOT, M.pow(2));
    add(pairs, "m3", Units.CUBIC_METRE, M.pow(3));
    add(pairs, "L", Units.LITRE, M.pow(3));
    add(pairs, "mL", MetricPrefix.MILLI(Units.LITRE), M.pow(3));
    add(pairs, "cm3", MetricPrefix.CENTI(Units.METRE).pow(3), M.pow(3));
    add(pairs, "mm3", MetricPrefix.MILLI(Units.METRE).pow(3), M.pow(3));
    add(pairs, "in3", USCustomary.CUBIC_INCH, M.pow(3));
    add(pairs, "ft3", USCustomary.CUBIC_FOOT, M.pow(3));
    add(pairs, "degC", Units.CELSIUS, K);
    add(pairs, "degF", USCustomary.FAHRENHEIT, K);
    add(pairs, "K", K, K);
    add(pairs, "degF-difference", DEG_F, K);
    add(pairs, "deg", USCustomary.DEGREE_ANGLE, USCustomary.DEGREE_ANGLE);
    add(pairs, "kg", Units.KILOGRAM, Units.KILOGRAM);
    add(pairs, "g", Units.GRAM, Units.KILOGRAM);
    add(pairs, "lb", LB, Units.KILOGRAM);
    javax.measure.Unit<?> density = Units.KILOGRAM.divide(M.pow(3));
    add(pairs, "kg/m3", density, density);
    add(pairs, "lb/ft3", LB.divide(FT.pow(3)), density);
    javax.measure.Unit<?> conductivity = W.divide(M.multiply(K));
    add(pairs, "W/(m K)", conductivity, conductivity);
    add(pairs, "Btu/(h ft degF)", BTU.divide(H.multiply(FT).multiply(DEG_F)), conductivity);
    add(
        pairs,
        "Btu in/(h ft2 degF)",
        BTU.multiply(IN).divide(H.multiply(FT.pow(2)).multiply(DEG_F)),
        conductivity);
    javax.measure.Unit<?> resistance = M.pow(2).multiply(K).divide(W);
    add(pairs, "m2 K/W", resistance, resistance);
    add(pairs, "h ft2 degF/Btu", H.multiply(FT.pow(2)).multiply(DEG_F).divide(BTU), resistance);
    javax.measure.Unit<?> transmittance = W.divide(M.pow(2).multiply(K));
    add(pairs, "W/(m2 K)", transmittance, transmittance);
    add(
        pairs,
        "Btu/(h ft2 degF)",
        BTU.divide(H.multiply(FT.pow(2)).multiply(DEG_F)),
        transmittance);
    add(pairs, "W/K", W.divide(K), W.divide(K));
    add(pairs, "Pa", Units.PASCAL, Units.PASCAL);
    add(pairs, "hPa", MetricPrefix.HECTO(Units.PASCAL), Units.PASCAL);
    add(pairs, "kPa", MetricPrefix.KILO(Units.PASCAL), Units.PASCAL);
    add(pairs, "psi", LB.multiply(GRAVITY).divide(IN.pow(2)), Units.PASCAL);
    add(pairs, "inHg", INCH_OF_MERCURY, Units.PASCAL);
    add(pairs, "m2 s Pa/kg", VAPOUR_RESISTANCE, VAPOUR_RESISTANCE);
    add(
        pairs,
        "MN s/g",
        MetricPrefix.MEGA(Units.NEWTON).multiply(Units.SECOND).divide(Units.GRAM),
        VAPOUR_RESISTANCE);
    javax.measure.Unit<?> permeance = VAPOUR_RESISTANCE.inverse();
    add(
        pairs,
        "ng/(Pa s m2)",
        MetricPrefix.NANO(Units.GRAM)
            .divide(Units.PASCAL.multiply(Units.SECOND).multiply(M.pow(2))),
        permeance);
    add(
        pairs,
        "perm",
        LB.divide(7000).divide(H.multiply(FT.pow(2)).multiply(INCH_OF_MERCURY)),
        permeance);
    add(pairs, "V", Units.VOLT, Units.VOLT);
    add(pairs, "kV", MetricPrefix.KILO(Units.VOLT), Units.VOLT);
    add(pairs, "A", Units.AMPERE, Units.AMPERE);
    add(pairs, "mA", MetricPrefix.MILLI(Units.AMPERE), Units.AMPERE);
    add(pairs, "ohm", Units.OHM, Units.OHM);
    add(pairs, "W", W, W);
    add(pairs, "kW", MetricPrefix.KILO(Units.WATT), W);
    add(pairs, "Btu/h", BTU.divide(H), W);
    add(pairs, "s", Units.SECOND, Units.SECOND);
    add(pairs, "min", Units.MINUTE, Units.SECOND);
    add(pairs, "h", H, Units.SECOND);
    add(pairs, "d", Units.DAY, Units.SECOND);
    return pairs;
  }

  private static void add(
      List<Pair> pairs, String symbol, javax.measure.Unit<?> theirs, javax.measure.Unit<?> si) {
    pairs.add(new Pair(org.rimefast.units.Units.find(symbol).orElseThrow(), theirs, si));
  }

  @TestFactory
  Stream<DynamicTest> everyUnitConvertsAsTheReferenceDoes() {
    return pairs().stream()
        .map(pair -> DynamicTest.dynamicTest("unit " + pair.ours(), () -> compare(pair)));
  }

  @Test
  void noUnitIsLeftOutButMoney() {
    Set<Unit> compared = pairs().stream().map(Pair::ours).collect(Collectors.toSet());
    assertThat(org.rimefast.units.Units.all())
        .filteredOn(unit -> !compared.contains(unit))
        .containsExactly(org.rimefast.units.Units.MONEY);
  }

  private static void compare(Pair pair) throws IncommensurableException {
    for (double number : new double[] {1, -38, 0.025, 1e6, 163}) {
      double expected = convert(pair, number);
      double actual = pair.ours().toSi(Rational.of(new java.math.BigDecimal(number))).toDouble();
      assertThat(actual).as("%s %s", number, pair.ours()).isCloseTo(expected, percent(expected));
      assertThat(pair.ours().fromSi(actual)).isCloseTo(number, Percentage.withPercentage(1e-9));
    }
  }

  /** 1e-12 relative. */
  private static Percentage percent(double expected) {
    assertThat(expected).isNotZero();
    return Percentage.withPercentage(1e-10);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the pair fixes both units' quantity at run time
  private static double convert(Pair pair, double number) throws IncommensurableException {
    javax.measure.Unit theirs = pair.theirs();
    javax.measure.Unit si = pair.si();
    Number value = theirs.getConverterToAny(si).convert(number);
    return value.doubleValue();
  }
}
