package org.rimefast.check.internal;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.rimefast.check.Reading;
import org.rimefast.check.Truth;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Value;

/**
 * Whatever the true numbers are within their intervals, what is said of the intervals holds of
 * them.
 */
class IntervalLawsTest {
  @Property(tries = 5_000)
  void aCertainComparisonHoldsForEveryPairOfTrueNumbers(
      @ForAll Comparison comparison,
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = 0, max = 3) double widthOfA,
      @ForAll @DoubleRange(min = -10, max = 10) double b,
      @ForAll @DoubleRange(min = 0, max = 3) double widthOfB,
      @ForAll @DoubleRange(min = 0, max = 1) double s,
      @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Truth said = Intervals.compare(comparison, a, a + widthOfA, b, b + widthOfB);
    double left = a + s * widthOfA;
    double right = b + t * widthOfB;
    if (said != Truth.UNKNOWN && Math.abs(left - right) > 1e-6) {
      assertThat(said).isEqualTo(Truth.of(plainly(comparison, left, right)));
    }
  }

  @Property(tries = 2_000)
  void twoExactNumbersAreAlwaysDecided(
      @ForAll Comparison comparison,
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = -10, max = 10) double b) {
    assertThat(Intervals.compare(comparison, a, a, b, b)).isNotEqualTo(Truth.UNKNOWN);
  }

  @Property(tries = 2_000)
  void aLimitIsItsOwnLimitWhateverTheRounding(@ForAll @DoubleRange(min = 0, max = 10) double a) {
    double reached = (a / 3 + a / 3) + a / 3;
    assertThat(Intervals.compare(Comparison.AT_LEAST, reached, reached, a, a))
        .isEqualTo(Truth.TRUE);
    assertThat(Intervals.compare(Comparison.AT_MOST, reached, reached, a, a)).isEqualTo(Truth.TRUE);
    assertThat(Intervals.compare(Comparison.MORE_THAN, reached, reached, a, a))
        .isEqualTo(Truth.FALSE);
  }

  @Property(tries = 5_000)
  void arithmeticOnIntervalsHoldsWhatArithmeticOnTheTrueNumbersGives(
      @ForAll Value.Arithmetic.Operator operator,
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = 0, max = 3) double widthOfA,
      @ForAll @DoubleRange(min = -10, max = 10) double b,
      @ForAll @DoubleRange(min = 0, max = 3) double widthOfB,
      @ForAll @DoubleRange(min = 0, max = 1) double s,
      @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Reading left = reading(a, a + widthOfA);
    Arithmetics.combine(operator, left, reading(b, b + widthOfB));
    double x = a + s * widthOfA;
    double y = b + t * widthOfB;
    if (operator == Value.Arithmetic.Operator.DIVIDED_BY && b <= 0 && b + widthOfB >= 0) {
      assertThat(left.isFailed()).isTrue();
      return;
    }
    if (!left.isPresent()) {
      // Only a quotient beyond the range of numbers has no value.
      assertThat(left.isFailed()).isTrue();
      assertThat(Math.min(Math.abs(b), Math.abs(b + widthOfB))).isLessThan(1e-290);
      return;
    }
    double exact =
        switch (operator) {
          case PLUS -> x + y;
          case MINUS -> x - y;
          case TIMES -> x * y;
          case DIVIDED_BY -> x / y;
        };
    double slack = 1e-9 * Math.max(1, Math.abs(exact));
    assertThat(exact).isBetween(left.least() - slack, left.most() + slack);
  }

  private static boolean plainly(Comparison comparison, double a, double b) {
    return switch (comparison) {
      case AT_LEAST -> a >= b;
      case MORE_THAN -> a > b;
      case AT_MOST -> a <= b;
      case LESS_THAN -> a < b;
      case EQUAL -> a == b;
      case NOT_EQUAL -> a != b;
    };
  }

  private static Reading reading(double least, double most) {
    Reading reading = new Reading();
    reading.between(least, most);
    return reading;
  }
}
