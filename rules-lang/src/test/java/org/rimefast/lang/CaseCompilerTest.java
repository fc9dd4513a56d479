package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;

/** Cases in a file of their own. */
final class CaseCompilerTest {
  private static final Standard STANDARD =
      new RuleCompiler(Words.vocabulary())
          .compile(SourceTexts.withSentence("box must have clearance >= 50 mm"))
          .standard()
          .orElseThrow();
  private static final String CASE = "case \"a box\" of r-1\n  plan \"p.json\"\n  expect met\n";

  @Test
  void aFileOfCasesIsReadForItsStandard() {
    CaseCompilation compiled = compile("cases for shop-standard\n\n" + CASE);
    assertThat(compiled.diagnostics()).isEmpty();
    assertThat(compiled.isUsable()).isTrue();
    assertThat(compiled.cases())
        .singleElement()
        .satisfies(
            found -> {
              assertThat(found.file()).isEqualTo("shop.cases.rime");
              assertThat(found.line()).isEqualTo(3);
              assertThat(found.rule()).contains("r-1");
            });
  }

  @Test
  void aCaseInTheStandardsOwnTextIsOfTheStandard() {
    SourceText text = SourceTexts.withSentence("box must have clearance >= 50 mm");
    Standard standard =
        new RuleCompiler(Words.vocabulary())
            .compile(new SourceText("own.rime", text.text() + CASE))
            .standard()
            .orElseThrow();
    assertThat(standard.cases()).extracting(Case::name).containsExactly("a box");
    assertThat(STANDARD.cases()).isEmpty();
  }

  @Test
  void casesForAnotherStandardAreRefused() {
    assertThat(printed("cases for other-standard\n\n" + CASE))
        .isEqualTo(
            """
            shop.cases.rime:1:11: error[wrong-file]: These cases are for other-standard, and the standard beside them is shop-standard.
              cases for other-standard
                        ^^^^^^^^^^^^^^
              help: Write cases for shop-standard, or give the file the name of its standard.
            """);
  }

  @Test
  void theStandardOfTheCasesMustBeNamedOnce() {
    assertThat(printed(CASE))
        .contains(
            "1:1: error[missing-standard]: The text does not say for which standard its cases are.",
            "help: Begin with: cases for shop-standard");
    assertThat(printed("cases for shop-standard\ncases for shop-standard\n" + CASE))
        .contains("2:1: error[wrong-file]: A file of cases says once for which standard they are.");
  }

  @Test
  void nothingButCasesStandsInAFileOfCases() {
    assertThat(printed("cases for shop-standard\n\nlet foam be 2 in\n\n" + CASE))
        .contains("3:1: error[wrong-file]: A file of cases holds nothing but cases.");
  }

  @Test
  void aRuleThatTheStandardDoesNotHaveIsRefusedAndNoCaseIsGiven() {
    CaseCompilation compiled =
        compile("cases for shop-standard\n\n" + CASE + "\n" + CASE.replace("r-1", "r-2"));
    assertThat(compiled.diagnostics())
        .extracting(diagnostic -> diagnostic.code().id())
        .containsExactly("repeated-name", "unknown-rule");
    assertThat(compiled.isUsable()).isFalse();
    assertThat(compiled.cases()).isEmpty();
  }

  @Test
  void aStatementThatCannotBeReadHidesNoneOfTheOthers() {
    assertThat(printed("case box\n\ncase \"b\" of r-1\n  expect met\n"))
        .contains("1:6: error[unreadable]", "3:6: error[missing-part]")
        .doesNotContain("missing-standard");
  }

  @Test
  void aTextThatIsTooLongIsNotRead() {
    CaseCompilation compiled = compile(" ".repeat(Limits.DEFAULT.characters() + 1));
    assertThat(compiled.diagnostics())
        .extracting(diagnostic -> diagnostic.code().id())
        .containsExactly("text-too-long");
  }

  private static String printed(String text) {
    CaseCompilation compiled = compile(text);
    assertThat(compiled.cases()).isEmpty();
    return compiled.diagnostics().stream()
        .map(diagnostic -> DiagnosticPrinter.print(diagnostic, compiled.source()))
        .collect(Collectors.joining());
  }

  private static CaseCompilation compile(String text) {
    return CaseCompiler.compile(new SourceText("shop.cases.rime", text), STANDARD);
  }
}
