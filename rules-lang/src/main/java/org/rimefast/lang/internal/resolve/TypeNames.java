package org.rimefast.lang.internal.resolve;

import java.util.Map;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/** What the kinds of value are called in messages. */
public final class TypeNames {
  private static final Map<Dimension, String> NAMES =
      Map.ofEntries(
          Map.entry(Dimension.NUMBER, "a plain number"),
          Map.entry(Dimension.PERCENT, "a percentage"),
          Map.entry(Dimension.LENGTH, "a length"),
          Map.entry(Dimension.AREA, "an area"),
          Map.entry(Dimension.VOLUME, "a volume"),
          Map.entry(Dimension.MASS, "a mass"),
          Map.entry(Dimension.DENSITY, "a density"),
          Map.entry(Dimension.TIME, "a time"),
          Map.entry(Dimension.ANGLE, "an angle"),
          Map.entry(Dimension.TEMPERATURE, "a temperature"),
          Map.entry(Dimension.TEMPERATURE_DIFFERENCE, "a difference of temperatures"),
          Map.entry(Dimension.CONDUCTIVITY, "a conductivity"),
          Map.entry(Dimension.THERMAL_RESISTANCE, "a thermal resistance"),
          Map.entry(Dimension.THERMAL_TRANSMITTANCE, "a U-value"),
          Map.entry(Dimension.HEAT_LOSS, "a heat loss"),
          Map.entry(Dimension.PRESSURE, "a pressure"),
          Map.entry(Dimension.VAPOUR_RESISTANCE, "a vapour resistance"),
          Map.entry(Dimension.VAPOUR_PERMEANCE, "a vapour permeance"),
          Map.entry(Dimension.VOLTAGE, "a voltage"),
          Map.entry(Dimension.CURRENT, "a current"),
          Map.entry(Dimension.RESISTANCE, "a resistance"),
          Map.entry(Dimension.POWER, "a power"),
          Map.entry(Dimension.MONEY, "an amount of money"));

  private TypeNames() {}

  /** With its article: {@code a length}. */
  public static String of(ValueType type) {
    if (type instanceof ValueType.Number number) {
      String name = NAMES.get(number.dimension());
      return name != null ? name : "a value in " + Units.coherent(number.dimension());
    }
    if (type instanceof ValueType.Choice choice) {
      return English.withArticle(choice.name());
    }
    return "a text";
  }
}
