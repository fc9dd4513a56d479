package org.rimefast.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.lang.rule.Standard;

/** How the work of a rule grows is told in numbers of elements. */
class CostTest {
  private static Cost cost(Standard standard) {
    return Cost.of(Given.DICTIONARY, standard).get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          box must have clearance >= 2 in | boxes
          box must touch a stud | boxes x (studs near)
          box must touch a stud or touch a bracket | boxes x (studs near) + boxes x (brackets near)
          box must touch a stud (where it is metal and it touches a bar) | boxes x (studs near) x (bars near)
          for each box, each stud must touch it | boxes x studs
          for each stud, number of boxes (where it touches the stud) must be at most 2 | studs x (boxes near)
          for each room, number of boxes must be at most 12 | rooms x boxes
          for each box, (for each wall, number of studs >= 2) must hold | boxes x walls x studs
          each box where largest depth of boxes >= 2 in must touch a stud | boxes x boxes + boxes x (studs near)
          """)
  void theFormulaNamesWhatIsLookedAtForEach(String sentence, String formula) {
    assertThat(cost(Given.rule(sentence)).formula()).isEqualTo(formula);
  }

  @Test
  void whatATermLooksAtIsCounted() {
    String term = "let held stud be a stud where it touches a bracket\n";
    assertThat(cost(Given.rule(term, "box must touch a held stud")).formula())
        .isEqualTo("boxes x (studs near) x (brackets near)");
  }

  @Test
  void onlyProductsThatGrowAndThatNoIndexServesAreWarnedOf() {
    assertThat(cost(Given.rule("for each box, each stud must touch it")).warnings())
        .containsExactly(
            "no index serves boxes x studs: twice as many of each make 4 times the work");
    assertThat(cost(Given.rule("box must touch a stud")).warnings()).isEmpty();
    assertThat(cost(Given.rule("for each room, number of boxes must be at most 12")).warnings())
        .isEmpty();
    assertThat(
            cost(Given.rule("for each box, (for each wall, number of studs >= 2) must hold"))
                .warnings())
        .hasSize(1);
  }
}
