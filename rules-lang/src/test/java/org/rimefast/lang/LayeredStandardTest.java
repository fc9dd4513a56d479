package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;

/** Standards that build on each other, and the seals between them. */
final class LayeredStandardTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());
  private static final String BASE =
      "standard base edition 1\n  caution \"Base care.\"\n\nlet gap be 2 in\n\n"
          + SourceTexts.rule("a", "each box where its depth > 1 in must have clearance >= gap")
          + SourceTexts.rule("b", "box must touch a stud");
  private static final String HOUSE =
      "standard house edition 7\n  builds on base edition 1\n\n"
          + "in rule a, gap is 60 mm\n  because \"thick foam\"\n";

  private static Compilation compile(String base, String text) {
    return COMPILER.compile(
        new SourceText("house.rime", text), LayerTexts.of(Map.of("base.rime", base)));
  }

  /** The text with what its pins ask for. */
  private static String pinned(String base, String text) {
    Compilation compilation = compile(base, text);
    StringBuilder fixed = new StringBuilder(text);
    for (int i = compilation.pins().size() - 1; i >= 0; i--) {
      Pin pin = compilation.pins().get(i);
      fixed.replace(pin.place().start(), pin.place().end(), pin.line());
    }
    return fixed.toString();
  }

  private static String gap(Rule rule) {
    return RuleUses.ofSentence(rule).constants().values().stream()
        .filter(constant -> constant.name().equals("gap"))
        .map(constant -> constant.value().quantity().text())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPinnedAmendmentCompilesAndSaysWhoChangedWhat() {
    Compilation compilation = compile(BASE, pinned(BASE, HOUSE));
    assertThat(compilation.diagnostics()).isEmpty();
    Standard standard = compilation.standard().orElseThrow();
    Rule rule = standard.rule("a").orElseThrow();
    assertThat(rule.isAmended()).isTrue();
    Change change = rule.changes().get(0);
    assertThat(change.standard() + " " + change.edition()).isEqualTo("house 7");
    assertThat(change.text()).isEqualTo("in rule a, gap is 60 mm");
    assertThat(change.before()).isEqualTo("gap: 2 in");
    assertThat(change.after()).isEqualTo("gap: 60 mm");
    assertThat(change.effect()).isEqualTo(Change.Effect.STRICTER);
    assertThat(gap(rule)).isEqualTo("60 mm");
    // The constant itself, and the base, are as they were.
    assertThat(standard.constants().get(0).value().quantity().text()).isEqualTo("2 in");
    Rule below = standard.base().orElseThrow().rule("a").orElseThrow();
    assertThat(gap(below)).isEqualTo("2 in");
    assertThat(standard.caution()).isEqualTo("Base care.");
    assertThat(standard.rule("b").orElseThrow().isAmended()).isFalse();
  }

  @Test
  void aPinnedTextIsLaidOutAlready() {
    String text = pinned(BASE, HOUSE);
    assertThat(RuleFormatter.format(new SourceText("x", text))).isEqualTo(text);
    assertThat(pinned(BASE, text)).isEqualTo(text);
  }

  @Test
  void anyChangeOfMeaningBreaksTheSeal() {
    String house = pinned(BASE, HOUSE);
    Map<String, String> changes = new LinkedHashMap<>();
    changes.put(">= gap", "> gap");
    changes.put("let gap be 2 in", "let gap be 3 in");
    changes.put("its depth > 1 in", "its depth > 1 in and it touches a stud");
    changes.put("severity hold", "severity fix");
    changes.put("stage pre-foam", "stage foam");
    changes.forEach(
        (old, fresh) ->
            assertThat(compile(BASE.replaceFirst(old, fresh), house).diagnostics())
                .as(fresh)
                .extracting(Diagnostic::code)
                .containsExactly(DiagnosticCode.CHANGED_RULE));
  }

  @Test
  void otherWordsOfTheSameMeaningDoNot() {
    String house = pinned(BASE, HOUSE);
    for (String base :
        new String[] {
          BASE.replace("\n\nrule", "\n\n-- a comment\nrule"),
          BASE.replace("each box where", "each box\n    where"),
          BASE.replace("because \"reason\"", "because \"a better reason\""),
          BASE.replace("touch a stud", "not touch a stud")
        }) {
      assertThat(compile(base, house).diagnostics()).as(base).isEmpty();
    }
    Compilation reworded = compile(BASE.replace("must have", "must have   "), house);
    assertThat(reworded.pins().get(0).state()).isEqualTo(Pin.State.CURRENT);
    Compilation other =
        compile(BASE.replace("clearance >= gap", "clearance of at least gap"), house);
    assertThat(other.diagnostics()).isEmpty();
    assertThat(other.pins().get(0).state()).isEqualTo(Pin.State.REWORDED);
  }

  @Test
  void aCommentBehindAnAmendmentStaysBehindItsLine() {
    String text = HOUSE.stripTrailing() + " -- as tried\n";
    assertThat(pinned(BASE, text)).contains("because \"thick foam\" -- as tried\n  seen edition 1");
  }

  @Test
  void aFileWithWindowsLineEndsKeepsThem() {
    String text = pinned(BASE, HOUSE.replace("\n", "\r\n"));
    assertThat(text.replace("\r\n", "")).doesNotContain("\n");
    assertThat(compile(BASE, text).diagnostics()).isEmpty();
  }

  @Test
  void aFaultInAFileThatIsIncludedIsToldThere() {
    Compilation compilation =
        COMPILER.compile(
            new SourceText("house.rime", "standard s edition 1\n\ninclude \"parts/x.rime\""),
            LayerTexts.of(Map.of("parts/x.rime", "\nlet gap be 2 inn")));
    Diagnostic diagnostic = compilation.diagnostics().get(0);
    SourceText.Place place = compilation.source().place(diagnostic.span().start());
    assertThat(place.name() + ":" + place.line()).isEqualTo("parts/x.rime:2");
  }

  @Test
  void noStatementRunsOverTheEndOfAFile() {
    Compilation compilation =
        COMPILER.compile(
            new SourceText(
                "house.rime", "standard s edition 1\n\ninclude \"a.rime\"\ninclude \"b.rime\""),
            LayerTexts.of(Map.of("a.rime", "let gap be 2", "b.rime", "in let other be 3 mm")));
    assertThat(compilation.diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.STRAY_TEXT);
  }
}
