package org.rimefast.check.internal.hot;

import org.jspecify.annotations.Nullable;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Answers;
import org.rimefast.check.internal.Intervals;
import org.rimefast.lang.rule.Question;
import org.rimefast.plan.Amount;
import org.rimefast.plan.InspectReading;

/** Tells whether a question was answered on site as it should be. */
record Answered(
    String inspect,
    boolean answer,
    Question.@Nullable Limit limit,
    double number,
    Nodes.Find subject)
    implements Nodes.Test {

  @Override
  public Truth test(Frame frame) {
    int element = subject.find(frame);
    InspectReading reading = element < 0 ? null : frame.facts.reading(inspect, element);
    if (reading == null) {
      return Truth.UNKNOWN;
    }
    Truth answered = Truth.of(reading.answer() == answer);
    return limit == null ? answered : answered.and(keeps(limit, reading.value()));
  }

  private Truth keeps(Question.Limit limit, @Nullable Amount value) {
    if (value == null || !Answers.isComparable(limit, value)) {
      return Truth.UNKNOWN;
    }
    return Intervals.compare(
        limit.comparison(),
        value.si() - value.siTolerance(),
        value.si() + value.siTolerance(),
        number,
        number);
  }
}
