package org.rimefast.check.internal.reference;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.Evidence;
import org.rimefast.check.Measurement;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Value;
import org.rimefast.plan.Plan;
import org.rimefast.units.Unit;

/** Explains a comparison of two numbers. */
final class NumberComparison {
  private final Scope scope;
  private final boolean wanted;
  private final Describer describer;

  /**
   * An explainer.
   *
   * @param wanted false if the rule asks for the opposite, so that margins count the other way
   */
  NumberComparison(Scope scope, boolean wanted) {
    this.scope = scope;
    this.wanted = wanted;
    describer = new Describer(scope);
  }

  Evidence explain(Condition.Compare compare) {
    ValueFinder values = new ValueFinder(scope);
    Outcome<Outcome.Interval> left = values.number(compare.left());
    Outcome<Outcome.Interval> right = values.number(compare.right());
    String quantity = describer.value(compare.left());
    Outcome<Outcome.Interval> both = left.and(right);
    if (left.value().isEmpty() || right.value().isEmpty()) {
      String question = left.value().isEmpty() ? quantity : describer.value(compare.right());
      return Reasons.unknown(question, both);
    }
    Outcome.Interval a = left.value().get();
    Outcome.Interval b = right.value().get();
    Truth truth = Intervals.compare(compare.comparison(), a.least(), a.most(), b.least(), b.most());
    Unit unit = Printing.unit(compare, scope.facts().plan());
    Measurement measurement =
        measurement(compare.comparison(), compare.right(), unit, quantity, a, b);
    return evidence(measurement, truth, both);
  }

  /** What a value that was read on site has to say about its limit. */
  Evidence read(String quantity, Outcome<Outcome.Interval> value, Question.Limit limit) {
    Outcome.Interval a = value.value().orElseThrow();
    Outcome.Interval b = new ValueFinder(scope).number(limit.value()).value().orElseThrow();
    Truth truth = Intervals.compare(limit.comparison(), a.least(), a.most(), b.least(), b.most());
    Unit unit =
        Printing.unitOf(limit.value(), limit.type().dimension()).orElse(limit.type().example());
    Measurement measurement = measurement(limit.comparison(), limit.value(), unit, quantity, a, b);
    return evidence(measurement, truth, value);
  }

  private Evidence evidence(Measurement measurement, Truth truth, Outcome<Outcome.Interval> both) {
    return new Evidence(
        statement(measurement, truth, both.missing()),
        truth,
        Optional.of(measurement),
        both.facts(),
        truth == Truth.UNKNOWN ? both.missing() : List.of(),
        List.of());
  }

  private Measurement measurement(
      Comparison comparison,
      Value limit,
      Unit unit,
      String quantity,
      Outcome.Interval a,
      Outcome.Interval b) {
    Plan plan = scope.facts().plan();
    Comparison asked = wanted ? comparison : opposite(comparison);
    double margin = margin(asked, a, b);
    return new Measurement(
        quantity,
        a.least(),
        a.most(),
        Printing.interval(a, unit),
        Printing.inPlanUnits(a, unit, plan),
        asked,
        b.least(),
        limitText(limit, b, unit),
        limitName(limit),
        margin,
        Printing.amount(margin, unit));
  }

  private static String limitText(Value limit, Outcome.Interval interval, Unit unit) {
    if (limit instanceof Value.Literal literal) {
      return literal.quantity().text();
    }
    return limit instanceof Value.Named named
        ? named.constant().value().quantity().text()
        : Printing.interval(interval, unit);
  }

  private Optional<String> limitName(Value limit) {
    return limit instanceof Value.Literal ? Optional.empty() : Optional.of(describer.limit(limit));
  }

  private static double margin(Comparison asked, Outcome.Interval a, Outcome.Interval b) {
    double margin =
        switch (asked) {
          case AT_LEAST, MORE_THAN -> a.least() - b.most();
          case AT_MOST, LESS_THAN -> b.least() - a.most();
          case EQUAL, NOT_EQUAL -> 0;
        };
    return Math.abs(margin) <= Intervals.guard(a.least(), b.most()) ? 0 : margin;
  }

  private static Comparison opposite(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> Comparison.LESS_THAN;
      case MORE_THAN -> Comparison.AT_MOST;
      case AT_MOST -> Comparison.MORE_THAN;
      case LESS_THAN -> Comparison.AT_LEAST;
      case EQUAL -> Comparison.NOT_EQUAL;
      case NOT_EQUAL -> Comparison.EQUAL;
    };
  }

  private String statement(Measurement measured, Truth truth, List<MissingValue> missing) {
    String limit =
        measured
            .limitName()
            .map(name -> measured.limitText() + " (" + name + ")")
            .orElse(measured.limitText());
    String asked = Describer.words(measured.comparison()) + limit;
    String value = measured.quantity() + " is " + measured.measured();
    if (truth == Truth.UNKNOWN && !missing.isEmpty()) {
      return value + ", so " + asked + " cannot be told: " + Reasons.missingWords(missing);
    }
    if (truth == Truth.UNKNOWN) {
      return value + " within the plan's tolerance, so " + asked + " is not certain";
    }
    return truth == Truth.of(wanted) ? value + ", " + asked : value + ", not " + asked;
  }
}
