package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.Evidence;
import org.rimefast.check.MissingValue;
import org.rimefast.check.Truth;
import org.rimefast.check.internal.Answers;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Value;
import org.rimefast.plan.Amount;
import org.rimefast.plan.InspectReading;
import org.rimefast.plan.PlanSource;

/** Explains what was answered on site, and what was read there. */
final class AnswerExplainer {
  private final Scope scope;
  private final boolean wanted;

  /**
   * An explainer.
   *
   * @param wanted false if the rule asks for the opposite
   */
  AnswerExplainer(Scope scope, boolean wanted) {
    this.scope = scope;
    this.wanted = wanted;
  }

  Evidence explain(Condition.Answered answered) {
    Question question = answered.question();
    String label = ElementFinder.label(answered.subject(), scope);
    String asked = "the answer to \"" + question.ask() + "\" for " + label;
    Outcome<Integer> subject = ElementFinder.find(answered.subject(), scope);
    if (subject.value().isEmpty()) {
      return Reasons.unknown(asked, Outcome.without(subject));
    }
    InspectReading reading = scope.facts().reading(question.inspect(), subject.value().get());
    if (reading == null) {
      return Reasons.unknown(
          asked, lacking("/readings/-", "a reading of " + question.inspect() + " for " + label));
    }
    Evidence answer = answer(question, reading, label);
    if (question.limit().isEmpty()) {
      return answer;
    }
    Evidence value = value(question, question.limit().get(), reading, label);
    return Reasons.of(answer.truth().and(value.truth()), List.of(answer, value), true);
  }

  private static Evidence answer(Question question, InspectReading reading, String label) {
    boolean right = reading.answer() == question.answer();
    String statement =
        "\""
            + question.ask()
            + "\" is answered "
            + (reading.answer() ? "yes" : "no")
            + " for "
            + label
            + (right ? "" : ", not " + question.answerWord());
    return Reasons.plain(statement, Truth.of(right), seen(reading));
  }

  private Evidence value(
      Question question, Question.Limit limit, InspectReading reading, String label) {
    String quantity = "the value read at " + question.inspect() + " for " + label;
    Amount value = reading.value();
    if (value == null) {
      return Reasons.unknown(
          quantity,
          lacking(
              reading.pointer() + "/value",
              "value of the reading of " + question.inspect() + " for " + label));
    }
    if (!Answers.isComparable(limit, value)) {
      return Reasons.unknown(
          quantity,
          Outcome.none("it is " + value + ", which cannot be compared with " + number(limit))
              .and(seen(reading)));
    }
    Outcome.Interval interval =
        new Outcome.Interval(value.si() - value.siTolerance(), value.si() + value.siTolerance());
    return new NumberComparison(scope, wanted)
        .read(quantity, Outcome.of(interval).and(seen(reading)), limit);
  }

  private static String number(Question.Limit limit) {
    return limit.value() instanceof Value.Named named
        ? named.constant().value().quantity().text()
        : ((Value.Literal) limit.value()).quantity().text();
  }

  /** Who looked, when, and what else was seen. */
  private static Outcome<Void> seen(InspectReading reading) {
    List<Evidence.Fact> facts = new ArrayList<>();
    facts.add(new Evidence.Fact("looked at by", reading.who()));
    facts.add(new Evidence.Fact("on", reading.when().toString()));
    if (reading.note() != null) {
      facts.add(new Evidence.Fact("note", reading.note()));
    }
    return new Outcome<>(Optional.empty(), Optional.empty(), facts, List.of(), List.of());
  }

  private Outcome<Void> lacking(String pointer, String description) {
    PlanSource source = scope.facts().plan().source();
    MissingValue missing =
        new MissingValue(pointer, description, Optional.ofNullable(source.placeOf(pointer)));
    return new Outcome<>(
        Optional.empty(), Optional.empty(), List.of(), List.of(missing), List.of());
  }
}
