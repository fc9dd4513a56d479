package org.rimefast.check.internal.reference;

import java.util.Optional;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Plan;
import org.rimefast.units.Dimension;
import org.rimefast.units.QuantityFormat;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Chooses the unit that a number is printed in, and prints it. */
final class Printing {
  private Printing() {}

  /** The unit that the author of a comparison wrote, else the plan's or the vocabulary's. */
  static Unit unit(Condition.Compare compare, Plan plan) {
    ValueType.Number type = (ValueType.Number) compare.left().type();
    return unitOf(compare.right(), type.dimension())
        .or(() -> unitOf(compare.left(), type.dimension()))
        .orElse(type.dimension().equals(Dimension.LENGTH) ? plan.units() : type.example());
  }

  /** The first unit of a dimension that is written in a value. */
  static Optional<Unit> unitOf(Value value, Dimension dimension) {
    if (value instanceof Value.Literal literal) {
      return Optional.of(literal.quantity().unit())
          .filter(unit -> unit.dimension().equals(dimension));
    }
    if (value instanceof Value.Named named) {
      return unitOf(named.constant().value(), dimension);
    }
    if (value instanceof Value.Arithmetic arithmetic) {
      return unitOf(arithmetic.left(), dimension).or(() -> unitOf(arithmetic.right(), dimension));
    }
    if (value instanceof Value.Lookup lookup) {
      return unitOf(lookup.table().rows().get(0).result(), dimension);
    }
    if (value instanceof Value.Conditional conditional) {
      return unitOf(conditional.then(), dimension)
          .or(() -> unitOf(conditional.otherwise(), dimension));
    }
    return Optional.empty();
  }

  /** {@code 0.252 in}, or {@code 1.9 in to 2.1 in}. */
  static String interval(Outcome.Interval interval, Unit unit) {
    String least = QuantityFormat.format(interval.least(), unit);
    String most = QuantityFormat.format(interval.most(), unit);
    return least.equals(most) ? least : least + " to " + most;
  }

  /**
   * A difference of two values in {@code unit}, without sign; never printed as none if it is some.
   */
  static String amount(double difference, Unit unit) {
    Unit own = differenceUnit(unit);
    String text = QuantityFormat.format(Math.abs(difference), own);
    if (difference == 0 || !text.equals(QuantityFormat.format(0, own))) {
      return text;
    }
    return "less than " + QuantityFormat.format(step(own), own);
  }

  /** The least amount of a unit that does not print as none. */
  private static double step(Unit unit) {
    String none = QuantityFormat.format(0, unit);
    double number = 1;
    while (!QuantityFormat.format(number / 10 * unit.factor().toDouble(), unit).equals(none)) {
      number /= 10;
    }
    return number * unit.factor().toDouble();
  }

  private static Unit differenceUnit(Unit unit) {
    if (!unit.dimension().isPoint()) {
      return unit;
    }
    String name = unit.symbol().equals("degF") ? "degF-difference" : "K";
    return Units.find(name)
        .orElseThrow(() -> new IllegalStateException("no unit is called " + name));
  }

  /** The value in the plan's own unit, if it is a length and that is another unit. */
  static Optional<String> inPlanUnits(Outcome.Interval interval, Unit unit, Plan plan) {
    return unit.dimension().equals(Dimension.LENGTH) && !unit.equals(plan.units())
        ? Optional.of(interval(interval, plan.units()))
        : Optional.empty();
  }
}
