package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Rational;

final class RuleCompilerTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());

  @Test
  void everyPartOfAStandardIsKept() {
    SourceText source =
        new SourceText(
            "shop.rime",
            """
            standard shop-standard edition 2026-11
              title "Our standard"
              caution "Supports and does not replace local codes."

            let foam cover be 2 in
              because "one lift"
              source "common practice, no source"

            rule box-clear "A box leaves room"
              box must have clearance >= foam cover
              severity fix
              stage rough-in
              because "foam needs room"
              source "common practice, no source"
            """);
    Standard standard = COMPILER.compile(source).standard().orElseThrow();
    assertThat(standard.name()).isEqualTo("shop-standard");
    assertThat(standard.edition()).isEqualTo("2026-11");
    assertThat(standard.title()).isEqualTo("Our standard");
    assertThat(standard.caution()).startsWith("Supports");
    assertThat(standard.constants()).hasSize(1);
    assertThat(standard.constants().get(0).because()).contains("one lift");
    Rule rule = standard.rules().get(0);
    assertThat(rule.id()).isEqualTo("box-clear");
    assertThat(rule.title()).isEqualTo("A box leaves room");
    assertThat(rule.severity()).isEqualTo(Severity.FIX);
    assertThat(rule.stage()).isEqualTo("rough-in");
    assertThat(rule.because()).isEqualTo("foam needs room");
    assertThat(source.textOf(rule.sentenceSpan())).isEqualTo(rule.sentence());
    assertThat(source.textOf(rule.span())).startsWith("rule box-clear").endsWith("no source\"");
  }

  @Test
  void inchesAndMillimetresStayWhatTheyWere() {
    Rule rule = rule("box must have clearance >= 2 in");
    Condition.Compare compare = (Condition.Compare) rule.requirement();
    assertThat(((Value.Literal) compare.right()).quantity().text()).isEqualTo("2 in");
    assertThat(((Value.Literal) compare.right()).quantity().si()).isEqualTo(Rational.of("0.0508"));
    Rule metric = rule("box must have clearance >= 50 mm");
    Value.Literal limit = (Value.Literal) ((Condition.Compare) metric.requirement()).right();
    assertThat(limit.quantity().si()).isEqualTo(Rational.of("0.05"));
  }

  @Test
  void aConstantMayBeUsedBeforeItIsSet() {
    String text =
        SourceTexts.HEADER
            + SourceTexts.rule("r-1", "box must have clearance >= foam cover")
            + "let foam cover be 2 in\n";
    assertThat(COMPILER.compile(new SourceText("x", text)).diagnostics()).isEmpty();
  }

  @Test
  void windowsLineEndsAreRead() {
    String text = SourceTexts.withSentence("box must touch a stud").text().replace("\n", "\r\n");
    assertThat(COMPILER.compile(new SourceText("x", text)).diagnostics()).isEmpty();
  }

  @Test
  void faultsComeInTheOrderOfTheText() {
    String text =
        SourceTexts.HEADER
            + SourceTexts.rule("r-1", "box must touch a stub")
            + SourceTexts.rule("r-2", "box must")
            + SourceTexts.rule("r-3", "bax must touch a stud");
    List<Integer> places =
        COMPILER.compile(new SourceText("x", text)).diagnostics().stream()
            .map(diagnostic -> diagnostic.span().start())
            .toList();
    assertThat(places).hasSize(3).isSorted();
  }

  @Test
  void manyThreadsGetTheSameAnswer() {
    SourceText source = SourceTexts.withSentence("box must touch a stud (where depth > 2 in)");
    Compilation one = COMPILER.compile(source);
    assertThat(IntStream.range(0, 200).parallel().mapToObj(i -> COMPILER.compile(source)))
        .allMatch(one::equals);
  }

  @Test
  void theLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    SourceText source = SourceTexts.withSentence("Box must have fill <= 1.5 % and depth < I in");
    try {
      Locale.setDefault(Locale.ROOT);
      List<Diagnostic> expected = COMPILER.compile(source).diagnostics();
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(COMPILER.compile(source).diagnostics()).isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aNarrowerPropertyHidesABroaderOne() {
    Noun part = new Noun("part", "part", "parts", List.of());
    Noun bar = new Noun("bar", "bar", "bars", List.of(part));
    Vocabulary vocabulary =
        Vocabulary.builder()
            .stages(List.of("pre-foam"))
            .noun(part)
            .noun(bar)
            .property(new Property("part.depth", "depth", part, List.of(), Words.LENGTH))
            .property(new Property("bar.depth", "depth", bar, List.of(), Words.LENGTH))
            .build();
    RuleCompiler compiler = new RuleCompiler(vocabulary);
    String dump =
        RuleDump.of(
            compiler
                .compile(SourceTexts.withSentence("bar must have depth > 2 in"))
                .standard()
                .orElseThrow());
    assertThat(dump).contains("bar.depth of bar#0").doesNotContain("part.depth");
  }

  @Test
  void twoWordsThatCannotBeToldApartAreShownWithTheirIds() {
    Vocabulary vocabulary =
        Words.vocabulary().toBuilder()
            .property(new Property("box.gap-one", "gap", Words.BOX, List.of(), Words.LENGTH))
            .property(new Property("box.gap-two", "gap", Words.BOX, List.of(), Words.LENGTH))
            .build();
    List<Diagnostic> diagnostics =
        new RuleCompiler(vocabulary)
            .compile(SourceTexts.withSentence("box must have gap > 2 in"))
            .diagnostics();
    assertThat(diagnostics)
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.AMBIGUOUS_PHRASE);
    assertThat(diagnostics.get(0).help()).contains("box.gap-one").contains("box.gap-two");
  }

  @Test
  void aVocabularyCannotTakeWordsOfTheLanguage() {
    for (String pattern : List.of("run with _", "Touch _", "be near _", "touch  _", "2-way _")) {
      Relation relation =
          new Relation(
              "x",
              Relation.Form.VERB,
              pattern,
              pattern,
              Words.BOX,
              List.of(new org.rimefast.lang.vocabulary.Slot.Element(Words.STUD)));
      Vocabulary vocabulary = Words.vocabulary().toBuilder().relation(relation).build();
      assertThatThrownBy(() -> new RuleCompiler(vocabulary))
          .as(pattern)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  private static Rule rule(String sentence) {
    return COMPILER
        .compile(SourceTexts.withSentence(sentence))
        .standard()
        .orElseThrow()
        .rules()
        .get(0);
  }
}
