package org.rimefast.check.internal.reference;

import java.util.List;
import org.rimefast.check.Arguments;
import org.rimefast.check.Evidence;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.vocabulary.ValueType;

/** Works out a condition and says why it came out so. */
final class ConditionExplainer implements Condition.Visitor<Evidence> {
  private final Scope scope;
  private final boolean wanted;
  private final Describer describer;

  /**
   * An explainer.
   *
   * @param wanted false if the rule asks for the opposite of the condition
   */
  ConditionExplainer(Scope scope, boolean wanted) {
    this.scope = scope;
    this.wanted = wanted;
    describer = new Describer(scope);
  }

  Evidence explain(Condition condition) {
    Evidence evidence = condition.accept(this);
    scope.observer().accept(condition, evidence);
    return evidence;
  }

  @Override
  public Evidence visitAnd(Condition.And and) {
    List<Evidence> parts = and.parts().stream().map(this::explain).toList();
    Truth result = parts.stream().map(Evidence::truth).reduce(Truth.TRUE, Truth::and);
    return Reasons.of(result, parts, true);
  }

  @Override
  public Evidence visitOr(Condition.Or or) {
    List<Evidence> parts = or.parts().stream().map(this::explain).toList();
    Truth result = parts.stream().map(Evidence::truth).reduce(Truth.FALSE, Truth::or);
    return Reasons.of(result, parts, false);
  }

  @Override
  public Evidence visitNot(Condition.Not not) {
    return Reasons.turned(new ConditionExplainer(scope, !wanted).explain(not.part()));
  }

  @Override
  public Evidence visitCompare(Condition.Compare compare) {
    return compare.left().type() instanceof ValueType.Number
        ? new NumberComparison(scope, wanted).explain(compare)
        : words(compare);
  }

  private Evidence words(Condition.Compare compare) {
    ValueFinder values = new ValueFinder(scope);
    Outcome<String> left = values.text(compare.left());
    Outcome<String> right = values.text(compare.right());
    String what = describer.value(compare.left());
    Outcome<String> both = left.and(right);
    if (left.value().isEmpty() || right.value().isEmpty()) {
      String question = left.value().isEmpty() ? what : describer.value(compare.right());
      return Reasons.unknown(question, both);
    }
    boolean equal = left.value().get().equals(right.value().get());
    String statement =
        what + " is " + left.value().get() + (equal ? "" : ", not " + right.value().get());
    return Reasons.plain(
        statement, Truth.of(equal == (compare.comparison() == Comparison.EQUAL)), both);
  }

  @Override
  public Evidence visitHolds(Condition.Holds holds) {
    Outcome<Integer> subject = ElementFinder.find(holds.subject(), scope);
    if (subject.value().isEmpty()) {
      return Reasons.unknown(question(holds), Outcome.without(subject));
    }
    int element = subject.value().get();
    if (scope.words().relation(holds.relation()) instanceof Word.ChainWord chain) {
      return new ChainExplainer(scope, chain, holds).explain(element, question(holds));
    }
    Outcome<Arguments> arguments = new ValueFinder(scope).arguments(element, holds.arguments());
    if (arguments.value().isEmpty()) {
      return Reasons.unknown(question(holds), Outcome.without(arguments));
    }
    Word.RelationWord word = (Word.RelationWord) scope.words().relation(holds.relation());
    Truth truth = word.function().decide(scope.facts(), element, arguments.value().get());
    Outcome<Void> explained =
        ElementFinder.explained(word, element, arguments.value().get(), scope);
    if (truth == Truth.UNKNOWN) {
      return explained.missing().isEmpty() && explained.notes().isEmpty()
          ? Reasons.plain(
              question(holds) + " is not certain within the plan's tolerance", truth, explained)
          : Reasons.unknown(question(holds), explained);
    }
    return Reasons.plain(describer.holds(holds, truth == Truth.TRUE), truth, explained);
  }

  private String question(Condition.Holds holds) {
    return "whether " + describer.holds(holds, true);
  }

  @Override
  public Evidence visitIsA(Condition.IsA isA) {
    Outcome<Integer> subject = ElementFinder.find(isA.subject(), scope);
    if (subject.value().isEmpty()) {
      return Reasons.unknown("whether " + describer.isA(isA, true), Outcome.without(subject));
    }
    int element = subject.value().get();
    if (!scope.facts().isMember(isA.noun(), element)) {
      return Reasons.plain(describer.isA(isA, false), Truth.FALSE, subject);
    }
    if (isA.term().isEmpty()) {
      return Reasons.plain(describer.isA(isA, true), Truth.TRUE, subject);
    }
    Evidence why =
        new ConditionExplainer(scope.alone(element), wanted).explain(isA.term().get().condition());
    String said =
        why.truth() == Truth.UNKNOWN
            ? "whether " + describer.isA(isA, true) + " cannot be told"
            : describer.isA(isA, why.truth() == Truth.TRUE);
    return new Evidence(
        said + ": " + why.statement(),
        why.truth(),
        why.measurement(),
        why.facts(),
        why.missing(),
        why.parts());
  }

  @Override
  public Evidence visitSame(Condition.Same same) {
    Outcome<Integer> left = ElementFinder.find(same.left(), scope);
    Outcome<Integer> right = ElementFinder.find(same.right(), scope);
    if (left.value().isEmpty() || right.value().isEmpty()) {
      return Reasons.unknown("whether " + describer.same(same), Outcome.without(left).and(right));
    }
    boolean so = left.value().get().equals(right.value().get());
    return Reasons.plain(describer.same(same, so), Truth.of(so), left.and(right));
  }

  @Override
  public Evidence visitAnswered(Condition.Answered answered) {
    return new AnswerExplainer(scope, wanted).explain(answered);
  }

  @Override
  public Evidence visitQuantified(Condition.Quantified quantified) {
    return new QuantifiedExplainer(scope, wanted).explain(quantified);
  }
}
