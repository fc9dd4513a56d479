package org.rimefast.lang.tooling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Dimension;
import org.rimefast.units.Units;

/** What an editor asks of a vocabulary of one's own. */
class AnalysisTest {
  private static final Noun SHELF = new Noun("shelf", "shelf", "shelves", List.of());
  private static final ValueType LENGTH = new ValueType.Number(Dimension.LENGTH, Units.MILLIMETRE);
  private static final RuleAnalyser ANALYSER =
      new RuleAnalyser(
          Vocabulary.builder()
              .stages(List.of("layout"))
              .noun(SHELF)
              .property(new Property("depth", "depth", SHELF, List.of(), LENGTH))
              .relation(
                  new Relation(
                      "hang",
                      Relation.Form.VERB,
                      "hang over _",
                      "hangs over _",
                      SHELF,
                      List.of(new Slot.Element(SHELF))))
              .build());
  private static final String TEXT =
      """
      standard s edition 1

      let gap be 2 in

      let deep shelf be a shelf where depth > gap

      rule r "t" deep shelf must not hang over another deep shelf if depth > gap
        severity fix stage layout because "b" source "s"
      """;

  private static Analysis analysis(String text) {
    return ANALYSER.analyse(new SourceText("s.rime", text));
  }

  private static List<String> proposed(String marked) {
    return analysis(marked.replace("|", "")).proposals(marked.indexOf('|')).proposals().stream()
        .map(Proposal::text)
        .toList();
  }

  @Test
  void everyUseOfANameIsMentioned() {
    Analysis analysis = analysis(TEXT);
    assertThat(analysis.diagnostics()).isEmpty();
    assertThat(analysis.mentions())
        .filteredOn(m -> m.meaning() instanceof Meaning.OfTerm)
        .extracting(m -> analysis.source().textOf(m.span()) + " " + m.declaration())
        .containsExactly("deep shelf true", "deep shelf false", "deep shelf false");
    assertThat(analysis.mentions())
        .filteredOn(m -> m.meaning() instanceof Meaning.OfConstant)
        .extracting(m -> analysis.source().textOf(m.span()) + " " + m.declaration())
        .containsExactly("gap true", "gap false", "gap false");
  }

  @Test
  void theNarrowestMentionIsAtAPlace() {
    Analysis analysis = analysis(TEXT);
    int verb = TEXT.indexOf("hang over");
    assertThat(analysis.mentionAt(verb).orElseThrow().meaning())
        .isInstanceOf(Meaning.OfRelation.class);
    int term = TEXT.indexOf("deep shelf if");
    assertThat(analysis.mentionAt(term + 1).orElseThrow().meaning())
        .isInstanceOf(Meaning.OfTerm.class);
    assertThat(analysis.mentionAt(TEXT.indexOf("severity") + 1)).isEmpty();
  }

  @Test
  void whatIsRightIsKnownBesideWhatIsWrong() {
    Analysis analysis = analysis(TEXT + "\nrule q \"t\" shelf must\n\nlet wide be\n");
    assertThat(analysis.standard()).isEmpty();
    assertThat(analysis.rules()).extracting(rule -> rule.id()).containsExactly("r");
    assertThat(analysis.constants()).extracting(c -> c.name()).containsExactly("gap");
    assertThat(analysis.outline())
        .extracting(OutlineEntry::name)
        .containsExactly("s", "gap", "deep shelf", "r", "q", "wide");
  }

  @Test
  void proposalsComeFromTheVocabularyInTheFormThatFits() {
    assertThat(proposed(TEXT + "\nrule q \"t\" shelf must |"))
        .contains("hang over", "have")
        .doesNotContain("hangs over");
    assertThat(proposed(TEXT + "\nrule q \"t\" shelf where it |"))
        .contains("hangs over", "has")
        .doesNotContain("hang over");
    assertThat(proposed(TEXT + "\nrule q \"t\" shelf must hang |")).containsExactly("over");
    assertThat(proposed(TEXT + "\nrule q \"t\" shelf must have depth > |"))
        .contains("gap", "depth");
    assertThat(proposed(TEXT + "\nrule q \"t\" shelf must have depth > 2 |"))
        .contains("mm", "in")
        .doesNotContain("degC");
  }

  @Test
  void aTextThatNobodyReadsHasNoAnswers() {
    Analysis analysis = analysis(TEXT + "\u202e");
    assertThat(analysis.mentions()).isEmpty();
    assertThat(analysis.outline()).isEmpty();
    assertThat(analysis.proposals(3).proposals()).isEmpty();
    assertThat(analysis.diagnostics()).hasSize(1);
  }
}
