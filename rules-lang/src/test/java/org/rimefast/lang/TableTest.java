package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.lang.internal.meaning.RuleMeaning;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;

/** What is said of tables, and tables of standards that build on each other. */
final class TableTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());
  private static final Paraphrase PARAPHRASE = new Paraphrase(Words.vocabulary());

  private static final String TABLE =
      """
      let deep box be a box where its depth > 2 in

      table cover needed of a box
        by its mount, number of deep boxes, (if it is a deep box then its clearance otherwise 1 in)
        | flush or on the lining | 0      | any                  | 1 in     |
        | on the lining or flush | 1 or 2 | < 2 in               | 2-1/2 in |
        | flush                  | at least 3 | 2 in or < 1 in   | 3 in     |
        otherwise 4 in

      """;

  private static final String RULE =
      SourceTexts.rule("r-1", "box must have clearance >= its cover needed");

  private static Standard compiled(String text) {
    Compilation compilation = COMPILER.compile(new SourceText("x", SourceTexts.HEADER + text));
    assertThat(compilation.diagnostics()).as(text).isEmpty();
    return compilation.standard().orElseThrow();
  }

  @Test
  void aTableIsSaidInOneWay() {
    Table table = compiled(TABLE).tables().get(0);
    assertThat(PARAPHRASE.ofTable(table).text().orElseThrow())
        .isEqualTo(
            """
            table cover needed of a box by its mount, number of deep boxes, (if it is a deep box then \
            its clearance otherwise 1 in)
            | flush or on the lining | 0 | any | 1 in |
            | flush or on the lining | 1 or 2 | < 2 in | 2-1/2 in |
            | flush | >= 3 | < 1 in or 2 in | 3 in |
            otherwise 4 in""");
  }

  @Test
  void theMeaningOfARuleHoldsTheTablesThatItStandsOn() {
    Rule rule = compiled(TABLE + RULE).rules().get(0);
    assertThat(PARAPHRASE.meaning(rule).text().orElseThrow())
        .startsWith("let deep box be a box where its depth is more than 2 in\ntable cover needed")
        .contains("\notherwise 4 in\neach box must have clearance of at least cover needed\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2-1/2 in -> 2-3/4 in",
        "< 2 in  -> <= 2 in",
        "otherwise 4 in -> otherwise 4 ft",
        "its clearance otherwise 1 in -> its clearance otherwise 2 in",
        "its depth > 2 in -> its depth > 3 in",
        "| 1 or 2 -> | 1"
      })
  void anotherTableMakesAnotherRule(String change) {
    String[] parts = change.split(" -> ");
    String before = parts[0].strip();
    assertThat(TABLE).contains(before);
    String other = TABLE.replace(before, parts[1].strip());
    assertThat(RuleMeaning.hash(compiled(other + RULE).rules().get(0)))
        .isNotEqualTo(RuleMeaning.hash(compiled(TABLE + RULE).rules().get(0)));
  }

  @Test
  void layoutAndReasonsOfATableAreNoMeaning() {
    String other =
        TABLE
            .replace("  | flush ", "-- a comment\n|flush ")
            .replace("4 in\n", "4 in because \"b\"\n");
    assertThat(RuleMeaning.hash(compiled(other + RULE).rules().get(0)))
        .isEqualTo(RuleMeaning.hash(compiled(TABLE + RULE).rules().get(0)));
  }

  @Test
  void tablesOfTheBaseHoldAboveIt() {
    SourceText base =
        new SourceText("base.rime", "standard base-standard edition 1\n" + TABLE + RULE);
    String upper =
        """
        standard upper-standard edition 1
          builds on base-standard edition 1

        table room cover of a room by largest depth of boxes
          | < 2 in  | 1 in |
          | >= 2 in | 2 in |

        """
            + SourceTexts.rule(
                "r-2", "box must have depth <= cover needed + room cover of its room");
    Compilation compilation =
        COMPILER.compile(
            new SourceText("upper.rime", upper),
            new SourceFinder() {
              @Override
              public Optional<SourceText> include(String name) {
                return Optional.empty();
              }

              @Override
              public Optional<SourceText> base(String name, String edition) {
                return Optional.of(base);
              }
            });
    assertThat(compilation.diagnostics()).isEmpty();
    Standard standard = compilation.standard().orElseThrow();
    assertThat(standard.tables())
        .extracting(Table::name)
        .containsExactly("cover needed", "room cover");
    assertThat(standard.base().orElseThrow().tables()).hasSize(1);
  }
}
