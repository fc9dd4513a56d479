package org.rimefast.check.internal.strength;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityFormat;
import org.rimefast.units.Rational;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/**
 * The smallest step by which a limit can be off in the way it is written: 1/8 in for inches (or the
 * fraction that is written, if it is finer), 1 in for feet, otherwise one in the last place
 * written: 1 mm for {@code 50 mm}, 0.001 for {@code 0.025 W/(m K)}.
 */
public final class Steps {
  private static final Map<Unit, Unit> OTHER =
      Map.ofEntries(
          Map.entry(Units.MILLIMETRE, Units.INCH),
          Map.entry(Units.CENTIMETRE, Units.INCH),
          Map.entry(Units.INCH, Units.MILLIMETRE),
          Map.entry(Units.METRE, Units.FOOT),
          Map.entry(Units.FOOT, Units.METRE),
          Map.entry(Units.DEGREE_CELSIUS, Units.DEGREE_FAHRENHEIT),
          Map.entry(Units.DEGREE_FAHRENHEIT, Units.DEGREE_CELSIUS),
          Map.entry(Units.KELVIN, Units.FAHRENHEIT_DIFFERENCE),
          Map.entry(Units.FAHRENHEIT_DIFFERENCE, Units.KELVIN));

  private Steps() {}

  /** The step of a limit, in SI units. */
  public static double si(Quantity quantity) {
    return of(quantity).times(scale(quantity.unit())).toDouble();
  }

  /** How many SI units one of a unit is, as a difference. */
  private static Rational scale(Unit unit) {
    Rational one = new Quantity(Rational.ONE, unit, "1").si();
    return one.minus(new Quantity(Rational.ZERO, unit, "0").si());
  }

  /** The step of a limit, in its own unit. */
  static Rational of(Quantity quantity) {
    Unit unit = quantity.unit();
    if (unit.equals(Units.FOOT)) {
      return Rational.of(1, 12);
    }
    if (unit.equals(Units.INCH)) {
      Rational eighth = Rational.of(1, 8);
      Rational written = lastPlace(quantity.number());
      return written.compareTo(eighth) < 0 ? written : eighth;
    }
    return lastPlace(quantity.number());
  }

  /** One in the last decimal place that a number needs; one of its parts if it has no end. */
  private static Rational lastPlace(Rational number) {
    BigInteger denominator = number.denominator();
    Rational place = Rational.ONE;
    for (int digits = 0; digits < 12; digits++) {
      if (number.dividedBy(place).isWhole()) {
        return place;
      }
      place = place.dividedBy(Rational.of(10));
    }
    return Rational.ONE.dividedBy(Rational.of(denominator.longValueExact()));
  }

  /** The limit moved one step up and one step down. */
  static List<Value.Literal> moved(Value.Literal literal) {
    Quantity quantity = literal.quantity();
    Rational step = of(quantity);
    return List.of(
        with(literal, quantity.number().plus(step), quantity.unit()),
        with(literal, quantity.number().minus(step), quantity.unit()));
  }

  /** The same number in the unit that it is easily mistaken for. */
  static Optional<Value.Literal> otherUnit(Value.Literal literal) {
    Quantity quantity = literal.quantity();
    Unit other = OTHER.get(quantity.unit());
    return other == null
            || !other.dimension().equals(quantity.unit().dimension())
            || quantity.number().signum() == 0
        ? Optional.empty()
        : Optional.of(with(literal, quantity.number(), other));
  }

  static Dimension dimension(Value value) {
    return ((ValueType.Number) value.type()).dimension();
  }

  private static Value.Literal with(Value.Literal literal, Rational number, Unit unit) {
    String text = QuantityFormat.format(new Quantity(number, unit, "").siDouble(), unit);
    return new Value.Literal(new Quantity(number, unit, text), literal.type(), literal.span());
  }
}
