package org.rimefast.lang.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class DiagnosticPrinterTest {
  private static String print(String text, int start, int end) {
    Diagnostic diagnostic =
        new Diagnostic(
            DiagnosticCode.UNKNOWN_WORD,
            Diagnostic.Level.ERROR,
            new Span(start, end),
            "A headline.",
            "A help.",
            List.of(new Diagnostic.Related(new Span(0, 1), "a note")),
            List.of());
    return DiagnosticPrinter.print(diagnostic, new SourceText("shop.rime", text));
  }

  @Test
  void theMarkStandsUnderThePlace() {
    assertThat(print("first\nbox must tuch it\nlast", 15, 19))
        .isEqualTo(
            """
            shop.rime:2:10: error[unknown-word]: A headline.
              box must tuch it
                       ^^^^
              help: A help.
              shop.rime:1:1: a note
            """);
  }

  @Test
  void aPlaceAtTheEndHasOneMark() {
    assertThat(print("ab", 2, 2)).contains("  ab\n    ^\n");
  }

  @Test
  void anEmptyTextHasNoLine() {
    assertThat(print("", 0, 0))
        .startsWith("shop.rime:1:1: error[unknown-word]: A headline.\n  help");
  }

  @Test
  void aPlaceOverSeveralLinesIsMarkedOnTheFirst() {
    assertThat(print("ab\r\ncd", 1, 6)).contains("  ab\n   ^\n");
  }

  @Test
  void hiddenCharactersAreShownAndTheMarkStaysInPlace() {
    assertThat(print("a\u202eb\u0000c", 4, 5))
        .contains("  a<U+202E>b<U+0000>c\n                    ^\n");
  }

  @Test
  void aLongLineIsCut() {
    String printed = print("x".repeat(10_000), 5_000, 9_000);
    assertThat(printed.lines()).allMatch(line -> line.length() < 130);
    assertThat(printed).contains("  ...x").contains("x...\n");
  }

  @Test
  void everyCodeHasAStableName() {
    for (DiagnosticCode code : DiagnosticCode.values()) {
      assertThat(code.id()).matches("[a-z]+(-[a-z]+)*");
    }
  }
}
