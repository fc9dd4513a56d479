package org.rimefast.units;

import static org.rimefast.units.Dimension.ANGLE;
import static org.rimefast.units.Dimension.AREA;
import static org.rimefast.units.Dimension.CONDUCTIVITY;
import static org.rimefast.units.Dimension.CURRENT;
import static org.rimefast.units.Dimension.DENSITY;
import static org.rimefast.units.Dimension.HEAT_LOSS;
import static org.rimefast.units.Dimension.LENGTH;
import static org.rimefast.units.Dimension.MASS;
import static org.rimefast.units.Dimension.POWER;
import static org.rimefast.units.Dimension.PRESSURE;
import static org.rimefast.units.Dimension.RESISTANCE;
import static org.rimefast.units.Dimension.TEMPERATURE;
import static org.rimefast.units.Dimension.TEMPERATURE_DIFFERENCE;
import static org.rimefast.units.Dimension.THERMAL_RESISTANCE;
import static org.rimefast.units.Dimension.THERMAL_TRANSMITTANCE;
import static org.rimefast.units.Dimension.TIME;
import static org.rimefast.units.Dimension.VAPOUR_PERMEANCE;
import static org.rimefast.units.Dimension.VAPOUR_RESISTANCE;
import static org.rimefast.units.Dimension.VOLTAGE;
import static org.rimefast.units.Dimension.VOLUME;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units that plans and rules may use, by spelling. Spellings are case sensitive: {@code mm},
 * never {@code MM}.
 *
 * <p>Every factor is exact. SI prefixes and coherent units: SI Brochure, 9th edition, sections 2
 * and 3. Yard, foot, inch and pound: international yard and pound agreement of 1959. The British
 * thermal unit is the International Table one, 1 Btu/(lb degF) = 4186.8 J/(kg K) exactly (NIST
 * Special Publication 811, B.8 and footnote 9); the inch of mercury is the conventional one,
 * 13595.1 kg/m3 and 9.80665 m/s2 (the same, B.8).
 */
public final class Units {
  private static final Rational FIVE_NINTHS = Rational.of(5, 9);
  private static final Rational HOUR_SECONDS = Rational.of(3600);
  private static final Rational INCH_METRES = Rational.of("0.0254");
  private static final Rational FOOT_METRES = Rational.of("0.3048");
  private static final Rational FOOT2 = FOOT_METRES.times(FOOT_METRES);
  private static final Rational FOOT3 = FOOT2.times(FOOT_METRES);
  private static final Rational INCH2 = INCH_METRES.times(INCH_METRES);
  private static final Rational POUND_KILOGRAMS = Rational.of("0.45359237");
  private static final Rational GRAIN_KILOGRAMS = Rational.of("0.00006479891"); // lb/7000
  private static final Rational GRAVITY = Rational.of("9.80665"); // m/s2, CGPM 1901
  private static final Rational BTU_JOULES =
      POUND_KILOGRAMS.times(FIVE_NINTHS).times(Rational.of("4186.8")); // 1055.05585262
  private static final Rational BTU_PER_HOUR = BTU_JOULES.dividedBy(HOUR_SECONDS);
  private static final Rational INCH_OF_MERCURY =
      INCH_METRES.times(Rational.of("13595.1")).times(GRAVITY);

  /** A plain number: no unit. */
  public static final Unit ONE = unit("", Dimension.NUMBER, "1");

  public static final Unit PERCENT = unit("%", Dimension.PERCENT, "0.01");

  public static final Unit METRE = unit("m", LENGTH, "1");
  public static final Unit MILLIMETRE = unit("mm", LENGTH, "0.001");
  public static final Unit CENTIMETRE = unit("cm", LENGTH, "0.01");
  public static final Unit INCH = unit("in", LENGTH, INCH_METRES);
  public static final Unit FOOT = unit("ft", LENGTH, FOOT_METRES);

  public static final Unit SQUARE_METRE = unit("m2", AREA, "1");
  public static final Unit SQUARE_CENTIMETRE = unit("cm2", AREA, "0.0001");
  public static final Unit SQUARE_MILLIMETRE = unit("mm2", AREA, "0.000001");
  public static final Unit SQUARE_INCH = unit("in2", AREA, INCH2);
  public static final Unit SQUARE_FOOT = unit("ft2", AREA, FOOT2);

  public static final Unit CUBIC_METRE = unit("m3", VOLUME, "1");
  public static final Unit LITRE = unit("L", VOLUME, "0.001");
  public static final Unit MILLILITRE = unit("mL", VOLUME, "0.000001");
  public static final Unit CUBIC_CENTIMETRE = unit("cm3", VOLUME, "0.000001");
  public static final Unit CUBIC_MILLIMETRE = unit("mm3", VOLUME, "0.000000001");
  public static final Unit CUBIC_INCH = unit("in3", VOLUME, INCH2.times(INCH_METRES));
  public static final Unit CUBIC_FOOT = unit("ft3", VOLUME, FOOT3);

  public static final Unit DEGREE_CELSIUS =
      new Unit("degC", TEMPERATURE, Rational.ONE, Rational.of("273.15"));
  public static final Unit DEGREE_FAHRENHEIT =
      new Unit("degF", TEMPERATURE, FIVE_NINTHS, Rational.of("459.67").times(FIVE_NINTHS));

  /** A difference of temperatures; the rule language also lets it be a temperature. */
  public static final Unit KELVIN = unit("K", TEMPERATURE_DIFFERENCE, "1");

  public static final Unit FAHRENHEIT_DIFFERENCE =
      unit("degF-difference", TEMPERATURE_DIFFERENCE, FIVE_NINTHS);

  public static final Unit DEGREE = unit("deg", ANGLE, "1");

  public static final Unit KILOGRAM = unit("kg", MASS, "1");
  public static final Unit GRAM = unit("g", MASS, "0.001");
  public static final Unit POUND = unit("lb", MASS, POUND_KILOGRAMS);

  public static final Unit KILOGRAM_PER_CUBIC_METRE = unit("kg/m3", DENSITY, "1");
  public static final Unit POUND_PER_CUBIC_FOOT =
      unit("lb/ft3", DENSITY, POUND_KILOGRAMS.dividedBy(FOOT3));

  public static final Unit WATT_PER_METRE_KELVIN = unit("W/(m K)", CONDUCTIVITY, "1");
  public static final Unit BTU_PER_HOUR_FOOT_FAHRENHEIT =
      unit("Btu/(h ft degF)", CONDUCTIVITY, BTU_PER_HOUR.dividedBy(FOOT_METRES.times(FIVE_NINTHS)));
  public static final Unit BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT =
      unit(
          "Btu in/(h ft2 degF)",
          CONDUCTIVITY,
          BTU_PER_HOUR.times(INCH_METRES).dividedBy(FOOT2.times(FIVE_NINTHS)));

  public static final Unit SQUARE_METRE_KELVIN_PER_WATT = unit("m2 K/W", THERMAL_RESISTANCE, "1");
  public static final Unit HOUR_SQUARE_FOOT_FAHRENHEIT_PER_BTU =
      unit("h ft2 degF/Btu", THERMAL_RESISTANCE, FOOT2.times(FIVE_NINTHS).dividedBy(BTU_PER_HOUR));

  public static final Unit WATT_PER_SQUARE_METRE_KELVIN =
      unit("W/(m2 K)", THERMAL_TRANSMITTANCE, "1");
  public static final Unit BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT =
      unit(
          "Btu/(h ft2 degF)",
          THERMAL_TRANSMITTANCE,
          BTU_PER_HOUR.dividedBy(FOOT2.times(FIVE_NINTHS)));

  public static final Unit WATT_PER_KELVIN = unit("W/K", HEAT_LOSS, "1");

  public static final Unit PASCAL = unit("Pa", PRESSURE, "1");
  public static final Unit HECTOPASCAL = unit("hPa", PRESSURE, "100");
  public static final Unit KILOPASCAL = unit("kPa", PRESSURE, "1000");
  public static final Unit POUND_PER_SQUARE_INCH =
      unit("psi", PRESSURE, POUND_KILOGRAMS.times(GRAVITY).dividedBy(INCH2));
  public static final Unit INCH_OF_MERCURY_CONVENTIONAL = unit("inHg", PRESSURE, INCH_OF_MERCURY);

  public static final Unit SQUARE_METRE_SECOND_PASCAL_PER_KILOGRAM =
      unit("m2 s Pa/kg", VAPOUR_RESISTANCE, "1");
  public static final Unit MEGANEWTON_SECOND_PER_GRAM =
      unit("MN s/g", VAPOUR_RESISTANCE, "1000000000");

  public static final Unit NANOGRAM_PER_PASCAL_SECOND_SQUARE_METRE =
      unit("ng/(Pa s m2)", VAPOUR_PERMEANCE, "0.000000000001");

  /** One grain an hour, through a square foot, for an inch of mercury. */
  public static final Unit PERM =
      unit(
          "perm",
          VAPOUR_PERMEANCE,
          GRAIN_KILOGRAMS.dividedBy(HOUR_SECONDS.times(FOOT2).times(INCH_OF_MERCURY)));

  public static final Unit VOLT = unit("V", VOLTAGE, "1");
  public static final Unit KILOVOLT = unit("kV", VOLTAGE, "1000");
  public static final Unit AMPERE = unit("A", CURRENT, "1");
  public static final Unit MILLIAMPERE = unit("mA", CURRENT, "0.001");
  public static final Unit OHM = unit("ohm", RESISTANCE, "1");
  public static final Unit WATT = unit("W", POWER, "1");
  public static final Unit KILOWATT = unit("kW", POWER, "1000");
  public static final Unit BTU_PER_HOUR_POWER = unit("Btu/h", POWER, BTU_PER_HOUR);

  public static final Unit SECOND = unit("s", TIME, "1");
  public static final Unit MINUTE = unit("min", TIME, "60");
  public static final Unit HOUR = unit("h", TIME, HOUR_SECONDS);
  public static final Unit DAY = unit("d", TIME, "86400");

  /** One unit of whatever money the shop counts in. */
  public static final Unit MONEY = unit("money", Dimension.MONEY, "1");

  private static final List<Unit> ALL =
      List.of(
          ONE,
          PERCENT,
          METRE,
          MILLIMETRE,
          CENTIMETRE,
          INCH,
          FOOT,
          SQUARE_METRE,
          SQUARE_CENTIMETRE,
          SQUARE_MILLIMETRE,
          SQUARE_INCH,
          SQUARE_FOOT,
          CUBIC_METRE,
          LITRE,
          MILLILITRE,
          CUBIC_CENTIMETRE,
          CUBIC_MILLIMETRE,
          CUBIC_INCH,
          CUBIC_FOOT,
          DEGREE_CELSIUS,
          DEGREE_FAHRENHEIT,
          KELVIN,
          FAHRENHEIT_DIFFERENCE,
          DEGREE,
          KILOGRAM,
          GRAM,
          POUND,
          KILOGRAM_PER_CUBIC_METRE,
          POUND_PER_CUBIC_FOOT,
          WATT_PER_METRE_KELVIN,
          BTU_PER_HOUR_FOOT_FAHRENHEIT,
          BTU_INCH_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
          SQUARE_METRE_KELVIN_PER_WATT,
          HOUR_SQUARE_FOOT_FAHRENHEIT_PER_BTU,
          WATT_PER_SQUARE_METRE_KELVIN,
          BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
          WATT_PER_KELVIN,
          PASCAL,
          HECTOPASCAL,
          KILOPASCAL,
          POUND_PER_SQUARE_INCH,
          INCH_OF_MERCURY_CONVENTIONAL,
          SQUARE_METRE_SECOND_PASCAL_PER_KILOGRAM,
          MEGANEWTON_SECOND_PER_GRAM,
          NANOGRAM_PER_PASCAL_SECOND_SQUARE_METRE,
          PERM,
          VOLT,
          KILOVOLT,
          AMPERE,
          MILLIAMPERE,
          OHM,
          WATT,
          KILOWATT,
          BTU_PER_HOUR_POWER,
          SECOND,
          MINUTE,
          HOUR,
          DAY,
          MONEY);

  private static final Map<String, Unit> BY_SPELLING = bySpelling();

  private Units() {}

  private static Unit unit(String symbol, Dimension dimension, String factor) {
    return unit(symbol, dimension, Rational.of(factor));
  }

  private static Unit unit(String symbol, Dimension dimension, Rational factor) {
    return new Unit(symbol, dimension, factor, Rational.ZERO);
  }

  private static Map<String, Unit> bySpelling() {
    Map<String, Unit> bySpelling = new LinkedHashMap<>();
    for (Unit unit : ALL) {
      bySpelling.put(unit.symbol(), unit);
    }
    bySpelling.put("day", DAY);
    bySpelling.put("days", DAY);
    return bySpelling;
  }

  /**
   * The unit spelt so, with single spaces, if there is one. The empty spelling is that of a plain
   * number.
   */
  public static Optional<Unit> find(String spelling) {
    return Optional.ofNullable(BY_SPELLING.get(spelling));
  }

  /** Every unit, in a fixed order. */
  public static List<Unit> all() {
    return ALL;
  }

  /**
   * The unit of a dimension whose factor is one: the one of {@link #all()} if there is one,
   * otherwise one whose symbol is made of base units, such as {@code m4} or {@code kg/(m s)}.
   */
  public static Unit coherent(Dimension dimension) {
    for (Unit unit : ALL) {
      if (unit.dimension().equals(dimension)
          && (unit.factor().equals(Rational.ONE) || unit.equals(PERCENT))) {
        return unit;
      }
    }
    return new Unit(CoherentSymbol.of(dimension), dimension, Rational.ONE, Rational.ZERO);
  }
}
