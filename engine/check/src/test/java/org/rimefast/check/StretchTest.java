package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.plan.Plan;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/**
 * Words that are asked along a part of a cable's path. In the invented vocabulary each cable is 4 m
 * long, sags to the shell between 1 m and 2 m, passes box A at 1.5 m and box B at 3 m; where box C
 * is, nobody says.
 */
class StretchTest {
  private static final Noun CABLE = Given.DICTIONARY.noun("cable");
  private static final Noun BOX = Given.DICTIONARY.noun("box");
  private static final ValueType.Number LENGTH =
      new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE);
  private static final Dictionary DICTIONARY = dictionary();

  @Test
  void aRelationIsAskedOfItsStretchOnly() {
    assertThat(verdict("cable must stay off the shell by 25 mm from end to end"))
        .isEqualTo(Verdict.BROKEN);
    assertThat(verdict("each cable must stay off the shell by 25 mm after the box")).isNull();
    assertThat(
            verdict("cable must stay off the shell by 25 mm after a box (where its width > 60 mm)"))
        .isEqualTo(Verdict.MET);
    assertThat(verdict("cable must not sag before a box (where its width > 60 mm)"))
        .isEqualTo(Verdict.BROKEN);
    assertThat(verdict("cable must sag through a box (where its width < 60 mm)"))
        .isEqualTo(Verdict.MET);
    assertThat(
            verdict(
                "cable must sag between a box (where its width < 60 mm) and a box (where its width"
                    + " > 60 mm) and have diameter < 1 in"))
        .isEqualTo(Verdict.MET);
  }

  @Test
  void aPropertyIsMeasuredOverItsStretchOnly() {
    assertThat(verdict("cable must have gap from end to end >= 10 mm")).isEqualTo(Verdict.BROKEN);
    assertThat(verdict("cable must have gap after a box (where its width > 60 mm) >= 30 mm"))
        .isEqualTo(Verdict.MET);
  }

  @Test
  void aStretchThatThePlanDoesNotPlaceIsUndecided() {
    Finding finding =
        explain("cable must stay off the shell by 25 mm before a box (where its kind is junction)");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing())
        .extracting(MissingValue::description)
        .containsExactly("where cable R passes box C");
    assertThat(finding.reason())
        .contains("whether cable R stays off the shell by 25 mm before box C cannot be told");
  }

  @Test
  void theFindingShowsWhereAlongThePathItFails() {
    Finding finding = explain("cable must stay off the shell by 25 mm from end to end");
    assertThat(finding.reason())
        .isEqualTo("cable R does not stay off the shell by 25 mm from end to end");
    assertThat(finding.evidence().get(0).facts())
        .containsExactly(new Evidence.Fact("too near", "from 1.0 m to 2.0 m along it"));
  }

  @Test
  void aWrongStretchIsToldWithThoseThereAre() {
    assertThat(compile("cable must stay off the shell by 25 mm beyond a box").diagnostics())
        .extracting(Diagnostic::headline)
        .containsExactly("The word \"beyond\" is not in the vocabulary here.");
    assertThat(compile("cable must stay off the shell by 25 mm between a box").diagnostics())
        .hasSize(1);
    assertThat(compile("box must stay off the shell by 25 mm from end to end").diagnostics())
        .extracting(Diagnostic::help)
        .containsExactly("That is said of a cable.");
  }

  private static Compilation compile(String sentence) {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(
            new SourceText(
                "test.rime",
                """
                standard test edition 1

                rule r "A rule"
                  %s
                  severity hold
                  stage layout
                  because "a reason"
                  source "common practice, no source"
                """
                    .formatted(sentence)));
  }

  @SuppressWarnings("NullAway") // null stands for a sentence that is refused
  private static Verdict verdict(String sentence) {
    return compile(sentence).standard().isEmpty() ? null : explain(sentence).verdict();
  }

  private static Finding explain(String sentence) {
    Compilation compilation = compile(sentence);
    assertThat(compilation.diagnostics()).isEmpty();
    return new Checker(DICTIONARY, compilation.standard().orElseThrow())
        .explain("r", "R", new PlanFacts(plan(), DICTIONARY));
  }

  private static Plan plan() {
    String wide = Given.box("B", 1000).replace("'width': 54", "'width': 70");
    String junction =
        Given.box("C", 1500).replace("device", "junction").replace("'width': 54", "'width': 60");
    return Given.module(
        40,
        25,
        ", 'boxes': ["
            + Given.box("A", 500)
            + ", "
            + wide
            + ", "
            + junction
            + "], 'runs': [{'id': 'R', 'kind': 'armoured-cable', 'diameter': 13, 'path': ["
            + "{'face': 'left', 'along': 500, 'up': 1000, 'depth': 20},"
            + "{'face': 'left', 'along': 4500, 'up': 1000, 'depth': 20}]}]");
  }

  private static double at(int box) {
    return box == 0 ? 1.5 : box == 1 ? 3 : Double.NaN;
  }

  /** The least gap over a stretch: 0.03 m, but 0.005 m from 1 m to 2 m. */
  private static double gap(Stretches stretches) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < stretches.size(); i++) {
      boolean sags = stretches.from(i) <= 2 && stretches.to(i) >= 1;
      least = Math.min(least, sags ? 0.005 : 0.03);
    }
    return least;
  }

  private static Dictionary dictionary() {
    Slot along = new Slot.Along(CABLE);
    Slot box = new Slot.Element(BOX);
    Word.Explainer where =
        (facts, element, arguments, explanation) ->
            explanation.missing(
                new MissingValue(
                    "/boxes/2/along", "where cable R passes box C", java.util.Optional.empty()));
    return Given.DICTIONARY.toBuilder()
        .stretch(
            new Stretch("whole", "from end to end", CABLE, List.of()),
            (facts, element, arguments, found) -> found.add(0, 4),
            Word.Explainer.NONE)
        .stretch(
            new Stretch("before", "before _", CABLE, List.of(box)),
            (facts, element, arguments, found) -> add(found, 0, at(arguments.element(0))),
            where)
        .stretch(
            new Stretch("after", "after _", CABLE, List.of(box)),
            (facts, element, arguments, found) -> add(found, at(arguments.element(0)), 4),
            where)
        .stretch(
            new Stretch("through", "through _", CABLE, List.of(box)),
            (facts, element, arguments, found) ->
                add(found, at(arguments.element(0)) - 0.1, at(arguments.element(0)) + 0.1),
            where)
        .stretch(
            new Stretch("between", "between _ and _", CABLE, List.of(box, box)),
            (facts, element, arguments, found) ->
                add(
                    found,
                    Math.min(at(arguments.element(0)), at(arguments.element(1))),
                    Math.max(at(arguments.element(0)), at(arguments.element(1)))),
            where)
        .relation(
            new Relation(
                "clear",
                Relation.Form.VERB,
                "stay off the shell by _ _",
                "stays off the shell by _ _",
                CABLE,
                List.of(new Slot.Of(LENGTH), along)),
            (facts, element, arguments) ->
                Truth.of(gap(arguments.stretches(1)) >= arguments.number(0).most()),
            (facts, element, arguments, explanation) ->
                explanation.fact("too near", "from 1.0 m to 2.0 m along it"))
        .relation(
            new Relation("sag", Relation.Form.VERB, "sag _", "sags _", CABLE, List.of(along)),
            (facts, element, arguments) -> Truth.of(gap(arguments.stretches(0)) < 0.03),
            Word.Explainer.NONE)
        .number(
            new Property("cable.gap", "gap _", CABLE, List.of(along), LENGTH),
            (facts, element, arguments, out) -> out.exactly(gap(arguments.stretches(0))),
            Word.Explainer.NONE)
        .build();
  }

  private static void add(Stretches found, double from, double to) {
    if (Double.isNaN(from) || Double.isNaN(to)) {
      found.unknown();
    } else {
      found.add(from, to);
    }
  }
}
