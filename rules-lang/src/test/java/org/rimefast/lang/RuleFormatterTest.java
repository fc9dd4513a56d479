package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;

/**
 * Each file {@code NAME.rime} is laid out as {@code NAME.expected} beside it. A missing one is
 * written and the test still fails, so that somebody reads it.
 */
final class RuleFormatterTest {
  private static final Path RESOURCES = Path.of("src", "test", "resources");

  /** With the limits that the faulty texts were written for. */
  private static final RuleCompiler STRICT =
      new RuleCompiler(Words.vocabulary(), new Limits(100_000, 20, 12, 6, 3));

  private static final Path FORMAT = RESOURCES.resolve("format");

  @TestFactory
  Stream<DynamicTest> everyTextIsLaidOutAsShown() throws IOException {
    return files("format", ".rime").stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> compare(file)));
  }

  @Test
  void noGoldenIsWithoutItsText() throws IOException {
    Set<String> texts = names("format", ".rime");
    assertThat(names("format", ".expected")).isSubsetOf(texts);
    assertThat(texts).hasSizeGreaterThan(24);
  }

  @TestFactory
  Stream<DynamicTest> everyFaultyTextIsLaidOutAndStaysFaulty() throws IOException {
    return files("diagnostics", ".rime").stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> faulty(file)));
  }

  @TestFactory
  Stream<DynamicTest> everySentenceKeepsItsMeaning() throws IOException {
    return files("rules", ".rime").stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> sound(file)));
  }

  @Test
  void whyAStatementIsLeftAsItStandsIsTold() {
    String text =
        "standard s edition 1\n\nrule   a\n\nlet b be 2 in\n\nrule c \"t\" box  should x\n";
    Formatting formatting = RuleFormatter.formatting(new SourceText("x", text));
    assertThat(formatting.text()).isEqualTo(text);
    assertThat(formatting.diagnostics())
        .extracting(diagnostic -> diagnostic.span().start())
        .containsExactly(text.indexOf("rule   a") + "rule   a".length(), text.indexOf("should"));
  }

  @Test
  void aTextThatNoCompilerTakesOnIsLeftAsItStands() {
    for (String text :
        List.of(
            "let   a be 2 in -- \u202e",
            "let   a be 2 in -- \ud83d",
            " ".repeat(Limits.DEFAULT.characters() + 1))) {
      Formatting formatting = RuleFormatter.formatting(new SourceText("x", text));
      assertThat(formatting.text()).isEqualTo(text);
      assertThat(formatting.diagnostics())
          .extracting(diagnostic -> diagnostic.code())
          .containsAnyOf(
              DiagnosticCode.BIDIRECTIONAL_CONTROL,
              DiagnosticCode.UNPAIRED_SURROGATE,
              DiagnosticCode.TEXT_TOO_LONG);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rule\n",
        "\u0000",
        "\"",
        "(",
        "-- c\n",
        "\r",
        "let a be 2 in ",
        "let a be - - ",
        "--"
      })
  void longTextsEndInBoundedTime(String part) {
    String text = part.repeat(Limits.DEFAULT.characters() / 16 / part.length());
    String once = format(text);
    assertThat(format(once)).isEqualTo(once);
  }

  @Test
  void aSentenceOfManyWordsIsBrokenIntoManyLines() {
    String sentence = "box where mount is flush" + " and mount is flush".repeat(20_000);
    String text = SourceTexts.withSentence(sentence + " must touch a stud").text();
    String once = format(text);
    assertThat(once.lines().mapToInt(String::length).max().orElseThrow()).isLessThanOrEqualTo(100);
    assertThat(once.lines().count()).isGreaterThan(4_000);
    assertThat(format(once)).isEqualTo(once);
  }

  private static void compare(Path file) throws IOException {
    String written = Files.readString(file);
    String laidOut = format(written);
    String name = file.getFileName().toString().replace(".rime", ".expected");
    Path golden = FORMAT.resolve(name);
    if (!Files.exists(golden)) {
      Files.writeString(golden, laidOut);
      fail("wrote " + golden + ": read it, then run again");
    }
    assertThat(laidOut).isEqualTo(Files.readString(golden));
    FormattingLaws.hold(written);
  }

  private static void faulty(Path file) throws IOException {
    String written = Files.readString(file);
    FormattingLaws.hold(written);
    assertThat(codes(format(written))).isEqualTo(codes(written)).isNotEmpty();
  }

  private static void sound(Path file) throws IOException {
    String written = Files.readString(file);
    FormattingLaws.hold(written);
    assertThat(
            FormattingLaws.COMPILER
                .compile(new SourceText("x", written), LayerTexts.FINDER)
                .standard())
        .isPresent();
  }

  private static List<DiagnosticCode> codes(String text) {
    return STRICT.compile(new SourceText("x", text), LayerTexts.FINDER).diagnostics().stream()
        .map(diagnostic -> diagnostic.code())
        .toList();
  }

  private static String format(String text) {
    return RuleFormatter.format(new SourceText("x", text));
  }

  private static Set<String> names(String folder, String end) throws IOException {
    return files(folder, end).stream()
        .map(file -> file.getFileName().toString().replace(end, ""))
        .collect(Collectors.toSet());
  }

  private static List<Path> files(String folder, String end) throws IOException {
    List<Path> found = new ArrayList<>();
    try (Stream<Path> all = Files.list(RESOURCES.resolve(folder))) {
      all.filter(file -> file.toString().endsWith(end)).sorted().forEach(found::add);
    }
    return found;
  }
}
