package org.rimefast.units;

/**
 * What a quantity measures: exponents of the base quantities, and the kind of scale.
 *
 * <p>Base units are those of SI (metre, kilogram, second, ampere, kelvin), the degree of angle, and
 * one unit of money. The degree stands in for the radian because pi/180 is no fraction, and every
 * conversion here is exact; "SI value" of an angle therefore means degrees.
 *
 * @param length exponent of length
 * @param mass exponent of mass
 * @param time exponent of time
 * @param current exponent of electric current
 * @param temperature exponent of temperature
 * @param angle exponent of angle
 * @param money exponent of money
 * @param scale what kind of scale the value stands on
 */
public record Dimension(
    int length,
    int mass,
    int time,
    int current,
    int temperature,
    int angle,
    int money,
    Scale scale) {

  /** The kind of scale a value stands on. */
  public enum Scale {
    /** An ordinary amount: amounts add up, and zero means none. */
    AMOUNT,
    /** A point on a scale without a natural zero: 20 degC. Only differences of points add up. */
    POINT,
    /**
     * A share, written in percent; kept apart from plain numbers so that 60 is not taken for 60 %.
     */
    SHARE
  }

  /** A plain number or a count. */
  public static final Dimension NUMBER = of(0, 0, 0, 0, 0);

  /** A share in percent. */
  public static final Dimension PERCENT = new Dimension(0, 0, 0, 0, 0, 0, 0, Scale.SHARE);

  public static final Dimension LENGTH = of(1, 0, 0, 0, 0);
  public static final Dimension AREA = of(2, 0, 0, 0, 0);
  public static final Dimension VOLUME = of(3, 0, 0, 0, 0);
  public static final Dimension MASS = of(0, 1, 0, 0, 0);
  public static final Dimension DENSITY = of(-3, 1, 0, 0, 0);
  public static final Dimension TIME = of(0, 0, 1, 0, 0);
  public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 0, 1, 0, Scale.AMOUNT);

  /** A temperature: a point on its scale. */
  public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 0, 1, 0, 0, Scale.POINT);

  public static final Dimension TEMPERATURE_DIFFERENCE = of(0, 0, 0, 0, 1);

  /** W/(m K). */
  public static final Dimension CONDUCTIVITY = of(1, 1, -3, 0, -1);

  /** m2 K/W. */
  public static final Dimension THERMAL_RESISTANCE = of(0, -1, 3, 0, 1);

  /** W/(m2 K). */
  public static final Dimension THERMAL_TRANSMITTANCE = of(0, 1, -3, 0, -1);

  /** W/K. */
  public static final Dimension HEAT_LOSS = of(2, 1, -3, 0, -1);

  public static final Dimension PRESSURE = of(-1, 1, -2, 0, 0);

  /** m2 s Pa/kg. */
  public static final Dimension VAPOUR_RESISTANCE = of(1, 0, -1, 0, 0);

  /** kg/(m2 s Pa). */
  public static final Dimension VAPOUR_PERMEANCE = of(-1, 0, 1, 0, 0);

  public static final Dimension VOLTAGE = of(2, 1, -3, -1, 0);
  public static final Dimension CURRENT = of(0, 0, 0, 1, 0);
  public static final Dimension RESISTANCE = of(2, 1, -3, -2, 0);
  public static final Dimension POWER = of(2, 1, -3, 0, 0);
  public static final Dimension MONEY = new Dimension(0, 0, 0, 0, 0, 0, 1, Scale.AMOUNT);

  private static Dimension of(int length, int mass, int time, int current, int temperature) {
    return new Dimension(length, mass, time, current, temperature, 0, 0, Scale.AMOUNT);
  }

  /**
   * The dimension of a product. A share drops out: 40 % of a length is a length.
   *
   * @throws IllegalArgumentException if either side is a point on a scale
   */
  public Dimension times(Dimension other) {
    return combine(other, 1);
  }

  /**
   * The dimension of a quotient.
   *
   * @throws IllegalArgumentException if either side is a point on a scale
   */
  public Dimension dividedBy(Dimension other) {
    return combine(other, -1);
  }

  /** True if this is a point on a scale, such as a temperature. */
  public boolean isPoint() {
    return scale == Scale.POINT;
  }

  private Dimension combine(Dimension other, int sign) {
    if (isPoint() || other.isPoint()) {
      throw new IllegalArgumentException("a point on a scale cannot be multiplied or divided");
    }
    return new Dimension(
        length + sign * other.length,
        mass + sign * other.mass,
        time + sign * other.time,
        current + sign * other.current,
        temperature + sign * other.temperature,
        angle + sign * other.angle,
        money + sign * other.money,
        Scale.AMOUNT);
  }
}
