package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;

/** The fast pass and the reference evaluator are two programs; on random input they must agree. */
class BothEvaluatorsAgreeTest {
  private static final int RULES = 600;
  private static final int PLANS = 12;

  /** Forms of the language that must not be left out by chance. */
  private static final List<String> FORMS =
      List.of(
          "(if ",
          "otherwise if ",
          " % of ",
          "all but 1 ",
          "all but 2 ",
          " per face",
          "distance to the nearest ",
          "its room is room of the ",
          "its room is not room of the ",
          "its cover needed",
          "its fit material",
          "its stud cover",
          "is a special ");

  @Test
  void onRandomRulesOverRandomPlansBothGiveTheSameVerdict() {
    Random random = new Random(20261125);
    RandomSentences sentences = new RandomSentences(random);
    List<PlanFacts> plans = new ArrayList<>();
    for (int i = 0; i < PLANS; i++) {
      plans.add(new PlanFacts(new RandomPlans(random, 4).plan(), Given.DICTIONARY));
    }
    Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < RULES; i++) {
      String terms = sentences.terms();
      String sentence = sentences.sentence();
      all.append(terms).append(sentence);
      Standard standard = Given.rule(terms, sentence);
      Checker checker = new Checker(Given.DICTIONARY, standard);
      for (PlanFacts facts : plans) {
        compare(checker, standard.rules().get(0), facts, terms + sentence, seen);
      }
    }
    assertThat(all).contains(FORMS);
    assertThat(seen.keySet()).containsExactlyInAnyOrder(Verdict.values());
    assertThat(seen.values()).allMatch(count -> count >= 50, "each verdict is seen often");
  }

  private static void compare(
      Checker checker, Rule rule, PlanFacts facts, String sentence, Map<Verdict, Integer> seen) {
    Verdict[] fast = checker.verdicts(rule.id(), facts);
    int[] elements = facts.members(rule.subject().noun());
    List<Finding> asked = new ArrayList<>();
    for (int i = 0; i < elements.length; i++) {
      Finding slow = checker.explain("r", facts.name(elements[i]).id(), facts);
      assertThat(fast[i])
          .as("%s\non %s: %s", sentence, slow.element(), slow.reason())
          .isEqualTo(slow.verdict());
      seen.merge(fast[i], 1, Integer::sum);
      if (fast[i] != Verdict.MET && fast[i] != Verdict.NOT_APPLICABLE) {
        asked.add(slow);
      }
    }
    // A check asks only the elements that no index rules out; it says what asking all says.
    assertThat(checker.check(facts, CheckOptions.DEFAULT).findings())
        .as(sentence)
        .containsExactlyInAnyOrderElementsOf(asked);
  }
}
