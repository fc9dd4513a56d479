package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.plan.Plan;

/**
 * Chains from box to box in invented plans. What is certain is compared with a search through every
 * world that the plan leaves possible.
 */
class ChainTest {
  private static final Noun BOX = Given.DICTIONARY.noun("box");
  private static final String BARS = "box (where its depth > 40 mm)";

  /** Steps between boxes by their place in the plan: 0 no, 1 certain, 2 perhaps. */
  private record Graph(int[][] steps) {
    void neighbours(int element, Neighbours found) {
      for (int to = 0; to < steps.length; to++) {
        if (steps[element][to] == 1) {
          found.add(to);
        } else if (steps[element][to] == 2) {
          found.addPossible(to);
        }
      }
    }
  }

  @Test
  void aBrokenRuleShowsTheShortestChain() {
    Finding finding =
        explain(
            "box must not reach a box (where its mount is surface)",
            graph(5, 0, 1, 1, 2, 2, 4, 0, 3, 3, 4),
            plan("....s"),
            "B0");
    assertThat(finding.verdict()).isEqualTo(Verdict.BROKEN);
    assertThat(finding.reason()).isEqualTo("box B0 reaches box B4");
    assertThat(finding.evidence().get(0).parts().get(0).facts())
        .containsExactly(new Evidence.Fact("chain", "box B0 -> box B3 -> box B4"));
  }

  @Test
  void aMetRuleShowsWhatBlocksTheChain() {
    Finding finding =
        explain(
            "box must not reach a box (where its mount is surface) without passing a " + BARS,
            graph(4, 0, 1, 1, 2, 2, 3),
            plan("..xs"),
            "B0");
    assertThat(finding.verdict()).isEqualTo(Verdict.MET);
    Evidence fact = finding.evidence().get(0);
    assertThat(finding.reason()).isEqualTo(fact.statement());
    Evidence body = leaf(fact);
    assertThat(body.statement())
        .isEqualTo("box B0 does not reach box B3 without passing a " + BARS);
    assertThat(body.facts())
        .containsExactly(
            new Evidence.Fact("blocked by", "box B2"),
            new Evidence.Fact("but for that", "box B0 -> box B1 -> box B2 -> box B3"));
  }

  @Test
  void whereNothingLeadsOnItIsSaidHowFarOneComes() {
    Finding finding =
        explain(
            "box must not reach a box (where its mount is surface)",
            graph(3, 2, 0),
            plan(".xs"),
            "B0");
    assertThat(finding.verdict()).isEqualTo(Verdict.MET);
    assertThat(leaf(finding.evidence().get(0)).facts())
        .containsExactly(new Evidence.Fact("leads on to", "nothing"));
  }

  @Test
  void aStepThatMayBeIsUndecidedAndNamed() {
    Finding finding =
        explain(
            "box must not reach a box (where its mount is surface)",
            graph(3, 0, 1, 1, -2),
            plan("..s"),
            "B0");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    Evidence evidence = leaf(finding.evidence().get(0));
    assertThat(evidence.facts())
        .containsExactly(
            new Evidence.Fact("possible chain", "box B0 -> box B1 -> box B2"),
            new Evidence.Fact("not certain", "box B1 -> box B2"));
    assertThat(evidence.statement())
        .isEqualTo("whether box B0 reaches box B2 cannot be told: box B1 may be loose");
  }

  @Test
  void anElementThatMayBarIsUndecidedForWantOfItsValue() {
    Finding finding =
        explain(
            "box must not reach a box (where its mount is surface) without passing a " + BARS,
            graph(3, 0, 1, 1, 2),
            plan(".?s"),
            "B0");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(finding.missing()).extracting(MissingValue::pointer).contains("/boxes/1/depth");
  }

  @Test
  void certainMeansInEveryPossibleWorldAndNeverMeansInNone() {
    Random random = new Random(20261125);
    int[] seen = new int[Verdict.values().length];
    for (int round = 0; round < 400; round++) {
      int size = 3 + random.nextInt(4);
      int[][] steps = new int[size][size];
      StringBuilder kinds = new StringBuilder();
      int doubts = 0;
      for (int from = 0; from < size; from++) {
        for (int to = 0; to < size; to++) {
          int step = random.nextInt(10);
          boolean perhaps = step >= 8 && doubts < 6;
          doubts += perhaps ? 1 : 0;
          steps[from][to] = from == to ? 0 : step < 3 ? 1 : perhaps ? 2 : 0;
        }
        kinds.append(from == size - 1 ? 's' : ".?x..".charAt(random.nextInt(5)));
      }
      Graph graph = new Graph(steps);
      Checker checker =
          checker(
              "box must not reach a box (where its mount is surface) without passing a " + BARS,
              graph);
      PlanFacts facts = new PlanFacts(plan(kinds.toString()), dictionary(graph));
      Verdict[] verdicts = checker.verdicts("r", facts);
      for (int from = 0; from < size - 1; from++) {
        Verdict expected = byWorlds(steps, kinds.toString(), from, size - 1);
        assertThat(verdicts[from]).as("%s %s from %d", round, kinds, from).isEqualTo(expected);
        assertThat(checker.explain("r", from, facts).verdict()).isEqualTo(expected);
        seen[expected.ordinal()]++;
      }
    }
    assertThat(seen[Verdict.MET.ordinal()]).isGreaterThan(100);
    assertThat(seen[Verdict.BROKEN.ordinal()]).isGreaterThan(100);
    assertThat(seen[Verdict.UNDECIDED.ordinal()]).isGreaterThan(50);
  }

  /** Goes through every way in which doubtful steps and doubtful bars can turn out. */
  private static Verdict byWorlds(int[][] steps, String kinds, int from, int to) {
    List<int[]> doubtful = new ArrayList<>();
    for (int a = 0; a < steps.length; a++) {
      for (int b = 0; b < steps.length; b++) {
        if (steps[a][b] == 2) {
          doubtful.add(new int[] {a, b});
        }
      }
      if (kinds.charAt(a) == '?') {
        doubtful.add(new int[] {a, -1});
      }
    }
    int reached = 0;
    int worlds = 1 << doubtful.size();
    for (int world = 0; world < worlds; world++) {
      boolean[][] open = new boolean[steps.length][steps.length];
      boolean[] bars = new boolean[steps.length];
      for (int a = 0; a < steps.length; a++) {
        bars[a] = kinds.charAt(a) == 'x';
        for (int b = 0; b < steps.length; b++) {
          open[a][b] = steps[a][b] == 1;
        }
      }
      for (int i = 0; i < doubtful.size(); i++) {
        int[] doubt = doubtful.get(i);
        boolean so = (world >> i & 1) == 1;
        if (doubt[1] < 0) {
          bars[doubt[0]] = so;
        } else {
          open[doubt[0]][doubt[1]] = so;
        }
      }
      reached += comes(open, bars, from, to, new boolean[steps.length]) ? 1 : 0;
    }
    return reached == worlds ? Verdict.BROKEN : reached == 0 ? Verdict.MET : Verdict.UNDECIDED;
  }

  private static boolean comes(
      boolean[][] open, boolean[] bars, int from, int to, boolean[] before) {
    before[from] = true;
    for (int next = 0; next < open.length; next++) {
      if (open[from][next]
          && !before[next]
          && (next == to || (!bars[next] && comes(open, bars, next, to, before)))) {
        return true;
      }
    }
    return false;
  }

  @Test
  void onlyAChainCanHaveAKind() {
    Relation odd =
        new Relation(
            "odd", Relation.Form.VERB, "avoid _", "avoids _", BOX, List.of(new Slot.Kind(BOX)));
    assertThatThrownBy(
            () ->
                Given.DICTIONARY.toBuilder()
                    .relation(odd, (f, e, a) -> Truth.TRUE, Word.Explainer.NONE))
        .hasMessage("odd has a slot for a kind, which only a chain can have");
    assertThatThrownBy(
            () ->
                Given.DICTIONARY.toBuilder()
                    .chain(odd, (f, e, found) -> {}, Word.StepExplainer.NONE))
        .hasMessage("odd has other slots than an element and perhaps a kind");
  }

  private static Evidence leaf(Evidence evidence) {
    return evidence.parts().isEmpty() ? evidence : leaf(evidence.parts().get(0));
  }

  /** Steps in pairs; a negative second one is a step that may be. */
  private static Graph graph(int size, int... pairs) {
    int[][] steps = new int[size][size];
    for (int i = 0; i < pairs.length; i += 2) {
      steps[pairs[i]][Math.abs(pairs[i + 1])] = pairs[i + 1] < 0 ? 2 : 1;
    }
    return new Graph(steps);
  }

  /**
   * A plan with a box for each letter: x deep enough to bar, s on the surface, ? without a depth.
   */
  private static Plan plan(String kinds) {
    StringBuilder boxes = new StringBuilder();
    for (int i = 0; i < kinds.length(); i++) {
      char kind = kinds.charAt(i);
      boxes
          .append(i == 0 ? "" : ", ")
          .append(
              Given.box("B" + i, 400 + 200 * i)
                  .replace("flush", kind == 's' ? "surface" : "flush")
                  .replace("'depth': 47.6, ", depth(kind)));
    }
    return Given.module(40, 25, ", 'boxes': [" + boxes + "]");
  }

  private static String depth(char kind) {
    return switch (kind) {
      case '?' -> "";
      case 'x' -> "'depth': 45, ";
      default -> "'depth': 30, ";
    };
  }

  private static Finding explain(String sentence, Graph graph, Plan plan, String element) {
    return checker(sentence, graph).explain("r", element, new PlanFacts(plan, dictionary(graph)));
  }

  private static Checker checker(String sentence, Graph graph) {
    Dictionary dictionary = dictionary(graph);
    Standard standard =
        new RuleCompiler(dictionary.vocabulary())
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
                        .formatted(sentence)))
            .standard()
            .orElseThrow();
    return new Checker(dictionary, standard);
  }

  private static Dictionary dictionary(Graph graph) {
    Slot box = new Slot.Element(BOX);
    Slot bars = new Slot.Kind(BOX);
    Word.NeighbourFunction steps = (facts, element, found) -> graph.neighbours(element, found);
    Word.StepExplainer why =
        (facts, from, to, explanation) ->
            explanation.reason(facts.name(from).label() + " may be loose");
    return Given.DICTIONARY.toBuilder()
        .chain(
            new Relation("reach", Relation.Form.VERB, "reach _", "reaches _", BOX, List.of(box)),
            steps,
            why)
        .chain(
            new Relation(
                "reach-past",
                Relation.Form.VERB,
                "reach _ without passing _",
                "reaches _ without passing _",
                BOX,
                List.of(box, bars)),
            steps,
            why)
        .build();
  }
}
