package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;

/** Texts made to break a compiler end in bounded time with a message. */
final class HostileTextTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());

  private static List<Diagnostic> compile(String text) {
    return assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> {
          Compilation compilation = COMPILER.compile(new SourceText("hostile.rime", text));
          compilation.diagnostics().stream()
              .limit(3)
              .forEach(d -> DiagnosticPrinter.print(d, compilation.source()));
          return compilation.diagnostics();
        });
  }

  private static List<Diagnostic> sentence(String sentence) {
    return compile(SourceTexts.withSentence(sentence).text());
  }

  private static void onlyCode(List<Diagnostic> diagnostics, DiagnosticCode code) {
    assertThat(diagnostics).extracting(Diagnostic::code).containsExactly(code);
  }

  @Test
  void fiftyMegabytesAreRefusedUnread() {
    onlyCode(compile("a ".repeat(25_000_000)), DiagnosticCode.TEXT_TOO_LONG);
  }

  @Test
  void aHundredThousandParenthesesAreTooDeep() {
    onlyCode(
        sentence("box where " + "(".repeat(100_000) + "mount is flush must touch a stud"),
        DiagnosticCode.TOO_DEEP);
  }

  @Test
  void deepParenthesesWithinTheLimitAreRead() {
    assertThat(
            sentence(
                "box where "
                    + "(".repeat(99)
                    + "mount is flush"
                    + ")".repeat(99)
                    + " must touch a stud"))
        .isEmpty();
    assertThat(sentence("box must have clearance >= " + "(".repeat(99) + "2 in" + ")".repeat(99)))
        .isEmpty();
  }

  @Test
  void deepGroupsAfterMustAreRead() {
    assertThat(sentence("box must " + "(".repeat(99) + "touch a stud" + ")".repeat(99))).isEmpty();
  }

  @Test
  void deepWhereWithTwoReadingsAtEachStepDoesNotDouble() {
    StringBuilder text = new StringBuilder("box where ");
    for (int i = 0; i < 40; i++) {
      text.append("reach of its bracket > smallest depth of boxes (where ");
    }
    text.append("mount is flush").append(")".repeat(40)).append(" must touch a stud");
    onlyCode(sentence(text.toString()), DiagnosticCode.AMBIGUOUS_PHRASE);
  }

  @Test
  void deepWhereIsRead() {
    StringBuilder text = new StringBuilder("box must touch ");
    for (int i = 0; i < 45; i++) {
      text.append("a stud (where it touches a box (where it touches ");
    }
    text.append("a stud").append(")".repeat(90));
    assertThat(sentence(text.toString())).isEmpty();
  }

  @Test
  void deepConditionsOfManyAreReadOrTooDeep() {
    String many = "(for each stud (where it touches the first box), ";
    assertThat(
            sentence(
                "box where "
                    + many.repeat(45)
                    + "depth > 2 in"
                    + ")".repeat(45)
                    + " must touch a stud"))
        .isEmpty();
    onlyCode(
        sentence(
            "box where " + "(for each stud, ".repeat(100_000) + "depth > 2 in must touch a stud"),
        DiagnosticCode.TOO_DEEP);
    onlyCode(
        sentence("for each box, " + "(".repeat(100_000) + "depth > 2 in must hold"),
        DiagnosticCode.TOO_DEEP);
  }

  @Test
  void longChainsOfAndAreRead() {
    assertThat(
            sentence(
                "box where mount is flush"
                    + " and mount is flush".repeat(99_999)
                    + " must touch a stud"))
        .isEmpty();
  }

  @Test
  void longChainsOfOrAfterMustAreRead() {
    assertThat(sentence("box must touch a stud" + " or touch a stud".repeat(99_999))).isEmpty();
  }

  @Test
  void longChainsOfNotAreOneFault() {
    onlyCode(
        sentence("box where " + "not ".repeat(100_000) + "mount is flush must touch a stud"),
        DiagnosticCode.UNCLEAR_NOT);
  }

  @Test
  void longSumsAreTooDeep() {
    onlyCode(
        sentence("box must have clearance >= 1 mm" + " + 1 mm".repeat(100_000)),
        DiagnosticCode.TOO_DEEP);
    onlyCode(
        sentence("box must have clearance >= 1 mm" + " times 2".repeat(100_000)),
        DiagnosticCode.TOO_DEEP);
  }

  @Test
  void longPhrasesAreOneFault() {
    onlyCode(
        sentence("box must touch" + " a stud".repeat(100_000)), DiagnosticCode.PHRASE_TOO_LONG);
    onlyCode(
        sentence("box must touch " + "room of ".repeat(100_000) + "it"),
        DiagnosticCode.PHRASE_TOO_LONG);
    onlyCode(sentence("box must " + "x".repeat(1_000_000)), DiagnosticCode.UNKNOWN_WORD);
  }

  @Test
  void longNumbersAreOneFault() {
    onlyCode(
        sentence("box must have clearance >= " + "9".repeat(1_000_000) + " mm"),
        DiagnosticCode.BAD_NUMBER);
    onlyCode(
        sentence("box must touch at least 99999999999999999999 studs"),
        DiagnosticCode.UNKNOWN_WORD);
  }

  @Test
  void manyWithAreRead() {
    assertThat(sentence("box must touch a stud" + " with clearance > 1 mm".repeat(50_000)))
        .isEmpty();
  }

  @Test
  void halfACharacterIsTold() {
    onlyCode(compile("standard s\ud83d edition 1"), DiagnosticCode.UNPAIRED_SURROGATE);
    onlyCode(compile("-- \udc00"), DiagnosticCode.UNPAIRED_SURROGATE);
    onlyCode(sentence("box must \ud83d\ude00 touch"), DiagnosticCode.UNKNOWN_CHARACTER);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u202e", "\u2066", "\u200f", "\u061c", "\u202a"})
  void turningTheTextIsTold(String control) {
    List<Diagnostic> diagnostics =
        compile(SourceTexts.HEADER + "-- harmless " + control + " comment\n");
    onlyCode(diagnostics, DiagnosticCode.BIDIRECTIONAL_CONTROL);
    String printed =
        DiagnosticPrinter.print(
            diagnostics.get(0), new SourceText("x", SourceTexts.HEADER + "-- harmless " + control));
    assertThat(printed).doesNotContain(control).contains("<U+");
  }

  @Test
  void manyFaultsAreCounted() {
    List<Diagnostic> diagnostics =
        compile(SourceTexts.HEADER + "rule r \"t\" box must\n".repeat(10_000));
    assertThat(diagnostics).hasSize(Limits.DEFAULT.errors() + 1);
    Diagnostic last = diagnostics.get(Limits.DEFAULT.errors());
    assertThat(last.code()).isEqualTo(DiagnosticCode.TOO_MANY_ERRORS);
    assertThat(last.headline()).startsWith("9900 more errors");
  }

  @Test
  void fourMillionCharactersOfBrokenStatementsEnd() {
    assertThat(compile("rule\n".repeat(799_999))).hasSize(Limits.DEFAULT.errors() + 1);
    assertThat(compile("\u0000".repeat(3_999_999))).hasSize(1);
    assertThat(compile("\"".repeat(3_999_999))).hasSize(1);
    assertThat(compile("(".repeat(3_999_999))).hasSize(1);
    assertThat(compile("rule r \"t\" " + "- ".repeat(1_900_000))).isNotEmpty();
  }

  @Test
  void anEmptyTextSaysWhatIsMissing() {
    onlyCode(compile(""), DiagnosticCode.MISSING_STANDARD);
    onlyCode(compile("-- nothing here\n"), DiagnosticCode.MISSING_STANDARD);
  }

  @Test
  void fiveThousandRulesAreReadInLinearTime() {
    timeOf(1_000);
    Duration few = timeOf(1_000);
    Duration many = timeOf(8_000);
    // Eight times the rules; a quadratic compiler would take 64 times as long.
    assertThat(many.toMillis()).isLessThan(Math.max(200, few.toMillis()) * 30);
    assertThat(timeOf(5_000)).isLessThan(Duration.ofSeconds(10));
  }

  private static Duration timeOf(int rules) {
    StringBuilder text = new StringBuilder(SourceTexts.HEADER);
    List<String> sentences = new ArrayList<>();
    sentences.add("box must sit in outer bay with clearance >= 50 mm");
    sentences.add("each box where mount is flush and its room is wet must not touch a stud");
    sentences.add("for each box, some bracket must hold it unless mount is surface");
    for (int i = 0; i < rules; i++) {
      text.append(SourceTexts.rule("r-" + i, sentences.get(i % 3)));
    }
    long start = System.nanoTime();
    assertThat(compile(text.toString())).isEmpty();
    return Duration.ofNanos(System.nanoTime() - start);
  }
}
