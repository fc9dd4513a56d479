package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimefast.check.SentencePlans.A_BOX;
import static org.rimefast.check.SentencePlans.CABLE;
import static org.rimefast.check.SentencePlans.CONDUIT;
import static org.rimefast.check.SentencePlans.FACE;
import static org.rimefast.check.SentencePlans.LENGTH;
import static org.rimefast.check.SentencePlans.STUD;
import static org.rimefast.check.SentencePlans.box;
import static org.rimefast.check.SentencePlans.bracket;
import static org.rimefast.check.SentencePlans.module;
import static org.rimefast.check.SentencePlans.run;
import static org.rimefast.check.Verdict.BROKEN;
import static org.rimefast.check.Verdict.MET;
import static org.rimefast.check.Verdict.NOT_APPLICABLE;
import static org.rimefast.check.Verdict.UNDECIDED;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.plan.Part;
import org.rimefast.units.Units;

/**
 * What a standard must be able to say of runs without Java, each said and each seen met, broken and
 * undecided. Words that the steel vocabulary does not have are declared here, as a planner would;
 * plans and tables are invented. What the findings say is held whole by files under {@code
 * sentences/runs}.
 */
class SentencesOnRunsTest {
  @Test
  void aCableClearsTheShellAlongItsWholeLengthAndStaysBehindTheStuds() {
    Slot along = new Slot.Along(CABLE);
    InventedWords words =
        new InventedWords()
            .being(
                CABLE,
                "in _",
                List.of(new Slot.Element(FACE)),
                (facts, element, arguments) ->
                    Truth.of(
                        facts.run(element).path().stream()
                            .anyMatch(p -> p.face() == facts.face(arguments.element(0)))));
    words
        .words()
        .stretch(
            new Stretch("whole", "along its whole length", CABLE, List.of()),
            (facts, element, arguments, found) -> found.add(0, 100),
            Word.Explainer.NONE)
        .relation(
            new Relation(
                "clear",
                Relation.Form.VERB,
                "clear the shell by _ _",
                "clears the shell by _ _",
                CABLE,
                List.of(new Slot.Of(LENGTH), along)),
            (facts, element, arguments) -> {
              double gap = facts.geometry().runClearance(facts.runIndex(element)) / 1000;
              return Double.isNaN(gap)
                  ? Truth.UNKNOWN
                  : Truth.of(gap >= arguments.number(0).most() - 1e-9);
            },
            (facts, element, arguments, out) ->
                facts
                    .geometry()
                    .runMissingForClearance(facts.runIndex(element))
                    .forEach(pointer -> out.missing(facts.missing(pointer))));
    String diameter = ", 'diameter': 12";
    new Sentence(
            "runs/cable-clear",
            "each cable where it is in a wall or it is in a roof must"
                + " clear the shell by 25 mm along its whole length and not stand proud of the"
                + " studs")
        .in(words)
        .on(
            module(
                ", 'runs': [%s, %s, %s, %s, %s]"
                    .formatted(
                        run("in", "armoured-cable", diameter, "500 600 20", "900 600 20"),
                        run("at the steel", "armoured-cable", diameter, "500 600 20", "900 600 40"),
                        run("proud", "armoured-cable", diameter, "500 600 20", "900 600 3"),
                        run("unknown", "armoured-cable", "", "500 600 20", "900 600 20"),
                        run("on the floor", "armoured-cable", diameter, "500 900 0", "900 900 0")
                            .replace("left", "floor"))))
        .says(MET, "in")
        .says(BROKEN, "at the steel", "proud")
        .says(UNDECIDED, "unknown")
        .says(NOT_APPLICABLE, "on the floor")
        .isHeld();
  }

  @Test
  void aCableFromAboveHasADripLoop() {
    InventedWords words =
        new InventedWords()
            .verb(
                CABLE,
                "come to _ from above",
                "comes to _ from above",
                List.of(A_BOX),
                (facts, element, arguments) ->
                    PathWords.comesFromAbove(facts.run(element), facts.part(arguments.element(0))),
                (facts, element, arguments, out) -> PathWords.explainHeights(facts, element, out));
    words
        .words()
        .number(
            new Property("drip", "drip loop below _", CABLE, List.of(A_BOX), LENGTH),
            (facts, element, arguments, out) ->
                out.exactly(
                    PathWords.drip(facts.run(element), facts.part(arguments.element(0))) / 1000),
            (facts, element, arguments, out) -> PathWords.explainHeights(facts, element, out));
    String ends = ", 'diameter': 12, 'to': 'A'";
    new Sentence(
            "runs/drip-loop",
            "for each cable, (for each box (where the cable comes to it from above), drip loop"
                + " below it of the cable >= 25 mm) must hold")
        .in(words)
        .on(
            module(
                ", 'boxes': [%s], 'runs': [%s, %s, %s]"
                    .formatted(
                        box("A", 492),
                        run(
                            "looped",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 1100 20",
                            "492 1150 20"),
                        run(
                            "straight",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 2000 20",
                            "492 1240 20"),
                        run(
                            "unknown",
                            "armoured-cable",
                            ends,
                            "2000 2000 20",
                            "492 ? 20",
                            "492 1150 20"))))
        .says(MET, "looped")
        .says(BROKEN, "straight")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  /** Factors: NFPA 70, 330.24 and 334.24, from memory. */
  @Test
  void aBendIsNoSharperThanTheKindOfCableAllows() {
    InventedWords words =
        new InventedWords()
            .choice(
                CABLE,
                "make",
                List.of("interlocked-armour", "nonmetallic"),
                Map.of("A", "interlocked-armour", "B", "interlocked-armour", "C", "nonmetallic"))
            .number(
                CABLE,
                "inner bend radius",
                Units.MILLIMETRE,
                Map.of("A", 84.0, "B", 83.0, "C", 60.0, "D", 70.0, "E", 59.0));
    String diameter = ", 'diameter': 12";
    List<String> cables = new ArrayList<>();
    for (String id : List.of("A", "B", "C", "D", "E")) {
      cables.add(run(id, "armoured-cable", diameter, "500 600 20", "900 600 20"));
    }
    new Sentence(
            "runs/bend-radius",
            "cable must have inner bend radius >= its least bend factor times diameter")
        .with(
            """
            table least bend factor of a cable
              by its make
              | interlocked-armour | 7 |
              | nonmetallic        | 5 |

            """)
        .in(words)
        .on(module(", 'runs': [" + String.join(", ", cables) + "]"))
        .says(MET, "A", "C")
        .says(BROKEN, "B")
        .says(UNDECIDED, "D")
        .isHeld();
  }

  @Test
  void aCableIsSupportedOftenEnoughAndNearEachBox() {
    Noun support =
        new Noun("support", "support", "supports", List.of(Given.DICTIONARY.noun("bracket")));
    InventedWords words =
        new InventedWords()
            .noun(support, "strap")
            .number(
                CABLE,
                "support spacing",
                Units.FOOT,
                Map.of("sound", 5.0, "far", 7.0, "late", 5.0));
    String cables =
        run("sound", "armoured-cable", ", 'from': 'A', 'to': 'A'", "500 600 20", "500 900 20")
            + ", "
            + run("far", "armoured-cable", ", 'from': 'A', 'to': 'A'", "500 600 20", "500 900 20")
            + ", "
            + run("late", "armoured-cable", ", 'from': 'B', 'to': 'B'", "500 600 20", "500 900 20")
            + ", "
            + run(
                "unknown",
                "armoured-cable",
                ", 'from': 'A', 'to': 'A'",
                "500 600 20",
                "500 900 20");
    new Sentence(
            "runs/supports",
            "for each cable, (its support spacing <= 6 ft and (for each box (where the cable enters"
                + " it), its distance to the nearest support <= 12 in)) must hold")
        .in(words)
        .on(
            module(
                ", 'boxes': [%s, %s], 'brackets': [%s, %s], 'runs': [%s]"
                    .formatted(
                        box("A", 500),
                        box("B", 1500),
                        bracket("strap-1", 700, 30, ""),
                        bracket("brace", 1600, 30, ""),
                        cables)))
        .says(MET, "sound")
        .says(BROKEN, "far", "late")
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  @Test
  void aConduitPassesOnlyThroughServiceHolesThatLineUp() {
    InventedWords words =
        new InventedWords()
            .verb(
                CONDUIT,
                "pass through _",
                "passes through _",
                List.of(new Slot.Element(STUD)),
                (facts, element, arguments) ->
                    PathWords.passes(facts.run(element), facts.part(arguments.element(0))),
                (facts, element, arguments, out) ->
                    out.missing(facts.missing(arguments.element(0), "along")))
            .being(
                STUD,
                "level within _ of _",
                List.of(new Slot.Of(LENGTH), new Slot.Element(STUD)),
                SentencesOnRunsTest::isLevel);
    new Sentence(
            "runs/holes-line-up",
            "for each conduit, (for each stud (where the conduit passes through it), its number of"
                + " service holes >= 1 and (for each stud (where the conduit passes through it), it"
                + " is level within 3 mm of the first stud)) must hold")
        .in(words)
        .on(
            module(
                ", 'studs': [%s, %s, %s, %s], 'runs': [%s, %s, %s]"
                    .formatted(
                        stud("S1", "'along': 400, ", 610),
                        stud("S2", "'along': 800, ", 612),
                        stud("S3", "'along': 1200, ", 616),
                        "{'id': 'whole', 'face': 'left', 'along': 1600}",
                        run("through", "emt", "", "200 611 20", "1000 611 20"),
                        run("crooked", "emt", "", "200 611 20", "1400 611 20"),
                        run("no hole", "emt", "", "1400 611 20", "1800 611 20"))))
        .says(MET, "through")
        .says(BROKEN, "crooked", "no hole")
        .on(
            module(
                ", 'studs': [%s, %s], 'runs': [%s]"
                    .formatted(
                        stud("S1", "'along': 400, ", 610),
                        stud("S2", "", 616),
                        run("unknown", "emt", "", "200 611 20", "1000 611 20"))))
        .says(UNDECIDED, "unknown")
        .isHeld();
  }

  private static String stud(String id, String along, double hole) {
    return "{'id': '%s', 'face': 'left', %s'holes': [{'up': %s, 'width': 20, 'height': 100}]}"
        .formatted(id, along, hole);
  }

  /** Whether the first service holes of two studs are at one height. */
  private static Truth isLevel(PlanFacts facts, int element, Arguments arguments) {
    Part.Stud one = (Part.Stud) facts.part(element);
    Part.Stud other = (Part.Stud) facts.part(arguments.element(1));
    if (one == other) {
      return Truth.TRUE;
    }
    if (one.holes().isEmpty() || other.holes().isEmpty()) {
      return Truth.FALSE;
    }
    double off = one.holes().get(0).up().si() - other.holes().get(0).up().si();
    return Truth.of(Math.abs(off) <= arguments.number(0).least() + 1e-9);
  }

  @AfterAll
  static void everyHeldFileIsRead() {
    assertThat(Sentence.unread("runs")).isEmpty();
  }
}
