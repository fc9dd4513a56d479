package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Plan;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/** A planner adds words of its own, and not all of them are good. */
class OwnWordsTest {
  private static final Noun BOX = Given.DICTIONARY.noun("box");
  private static final Plan PLAN =
      Given.module(40, 25, ", 'boxes': [" + Given.box("A", 400) + ", " + Given.box("B", 800) + "]");

  @Test
  void aWordOfItsOwnIsAskedOfEachElement() {
    assertThat(verdicts((facts, element, arguments, out) -> out.exactly(0.010 * (element + 1))))
        .containsExactly(Verdict.BROKEN, Verdict.MET);
  }

  @Test
  void aWordThatSaysNothingIsUndecidedAndNeverTheLastElementsNumber() {
    assertThat(
            verdicts(
                (facts, element, arguments, out) -> {
                  if (element == 0) {
                    out.exactly(1);
                  }
                }))
        .containsExactly(Verdict.MET, Verdict.UNDECIDED);
  }

  @Test
  void anInfiniteNumberIsAnErrorNotAVerdict() {
    assertThat(
            verdicts(
                (facts, element, arguments, out) ->
                    out.between(
                        element == 0 ? Double.NEGATIVE_INFINITY : 0, element == 0 ? 1 : 1 / 0.0)))
        .containsExactly(Verdict.ERROR, Verdict.ERROR);
  }

  @Test
  void aWordMayGiveItsReason() {
    Checker checker =
        checker(
            (facts, element, arguments, out) -> out.missing(),
            (facts, element, arguments, out) -> out.reason("no price list is at hand"));
    assertThat(checker.check(PLAN, CheckOptions.DEFAULT).findings().get(0).reason())
        .isEqualTo("price of box A cannot be told: no price list is at hand");
  }

  @Test
  void aWordThatThrowsIsNamedByRuleAndElement() {
    Checker checker =
        checker(
            (facts, element, arguments, out) -> {
              throw new IllegalStateException("no price list");
            },
            Word.Explainer.NONE);
    assertThatThrownBy(() -> checker.check(PLAN, CheckOptions.DEFAULT))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("rule r on box A: a word of the vocabulary failed")
        .hasRootCauseMessage("no price list");
  }

  @Test
  void aStandardOfAnotherVocabularyIsRefusedBeforeAnythingIsChecked() {
    Dictionary own = dictionary((facts, element, arguments, out) -> {}, Word.Explainer.NONE);
    assertThatThrownBy(() -> new Checker(Given.DICTIONARY, standard(own)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "the standard was compiled with another vocabulary: \"price\" is not in this one");
  }

  @Test
  void aWordOfTheSameNameButAnotherTypeIsAnotherWord() {
    Dictionary bareFirst = finish(List.of("bare", "painted"));
    Dictionary paintedFirst = finish(List.of("painted", "bare"));
    Standard standard = compiled(bareFirst, "for each box, its finish must be bare");
    assertThat(new Checker(bareFirst, standard).verdicts("r", new PlanFacts(PLAN, bareFirst)))
        .containsOnly(Verdict.MET);
    assertThatThrownBy(() -> new Checker(paintedFirst, standard))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Dictionary finish(List<String> words) {
    Property property =
        new Property("box.finish", "finish", BOX, List.of(), new ValueType.Choice("finish", words));
    return Given.DICTIONARY.toBuilder()
        .choice(property, (facts, element, arguments) -> 0, Word.Explainer.NONE)
        .build();
  }

  @Test
  void aFactCannotPassForAFailure() {
    assertThatThrownBy(() -> new Explanation().fact(Explanation.FAILURE, "x"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anElementThatTheRuleDoesNotSpeakOfIsRefusedByName() {
    Plan plan =
        Given.module(
            40,
            25,
            ", 'boxes': ["
                + Given.box("A", 400)
                + "], 'studs': [{'id': 'S', 'face': 'left', 'along': 600}]");
    assertThatThrownBy(() -> Given.explain("box must not touch the shell", plan, "S"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("rule r speaks of boxes, and this is none: stud S");
  }

  private static Verdict[] verdicts(Word.NumberFunction price) {
    Dictionary own = dictionary(price, Word.Explainer.NONE);
    Verdict[] verdicts = new Checker(own, standard(own)).verdicts("r", new PlanFacts(PLAN, own));
    // The reference must agree, and explain without failing.
    assertThat(new Checker(own, standard(own)).check(PLAN, CheckOptions.DEFAULT).rules())
        .hasSize(1);
    return verdicts;
  }

  private static Checker checker(Word.NumberFunction price, Word.Explainer explainer) {
    Dictionary own = dictionary(price, explainer);
    return new Checker(own, standard(own));
  }

  private static Dictionary dictionary(Word.NumberFunction price, Word.Explainer explainer) {
    Property property =
        new Property(
            "box.price",
            "price",
            BOX,
            List.of(),
            new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE));
    return Given.DICTIONARY.toBuilder().number(property, price, explainer).build();
  }

  private static Standard standard(Dictionary own) {
    return compiled(own, "box must have price >= 15 mm");
  }

  private static Standard compiled(Dictionary own, String sentence) {
    return new RuleCompiler(own.vocabulary())
        .compile(
            new SourceText(
                "own.rime",
                """
                standard own edition 1
                rule r "Price"
                  %s
                  severity hold
                  stage layout
                  because "x"
                  source "x"
                """
                    .formatted(sentence)))
        .standard()
        .orElseThrow();
  }
}
