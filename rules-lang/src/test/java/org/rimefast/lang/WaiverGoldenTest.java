package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;

/**
 * Each file of waivers {@code NAME.rime} has a file {@code NAME.expected} beside it: the typed
 * waivers, or what is wrong with it where the name begins with {@code wrong}. A missing one is
 * written and the test still fails, so that somebody reads it.
 */
final class WaiverGoldenTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "waivers");
  private static final Standard STANDARD = standard();

  @TestFactory
  Stream<DynamicTest> everyFileOfWaiversMeansWhatItSays() throws IOException {
    return names(".rime").stream().map(name -> DynamicTest.dynamicTest(name, () -> check(name)));
  }

  @Test
  void noGoldenIsWithoutItsText() throws IOException {
    assertThat(names(".expected")).isSubsetOf(names(".rime"));
    assertThat(names(".rime")).hasSizeGreaterThan(45);
  }

  /** What a fix says is believed: putting it in must take that fault away. */
  @Test
  void everyFixTakesItsFaultAway() throws IOException {
    int fixes = 0;
    for (String name : names(".rime")) {
      WaiverCompilation before = compile(name);
      for (Diagnostic diagnostic : before.diagnostics()) {
        for (Diagnostic.Fix fix : diagnostic.fixes()) {
          StringBuilder fixed = new StringBuilder(before.source().text());
          fixed.replace(fix.span().start(), fix.span().end(), fix.replacement());
          WaiverCompilation after = compile(new SourceText(name, fixed.toString()));
          assertThat(after.diagnostics())
              .as(name)
              .noneMatch(d -> d.headline().equals(diagnostic.headline()));
          fixes++;
        }
      }
    }
    assertThat(fixes).isGreaterThan(1);
  }

  @Test
  void layingOutAFileOfWaiversChangesNothingOfIt() throws IOException {
    for (String name : names(".rime")) {
      SourceText source = source(name);
      FormattingLaws.hold(source.text());
      SourceText laidOut = new SourceText(source.name(), RuleFormatter.format(source));
      assertThat(compile(laidOut).diagnostics())
          .as(name)
          .extracting(Diagnostic::headline)
          .containsExactlyElementsOf(
              compile(source).diagnostics().stream().map(Diagnostic::headline).toList());
    }
  }

  @Test
  void aTextThatNoCompilerTakesOnIsRefusedWhole() {
    WaiverCompilation compiled = compile(new SourceText("x", "waivers for \u202e"));
    assertThat(compiled.isUsable()).isFalse();
    assertThat(compiled.waivers()).isEmpty();
    assertThat(compiled.diagnostics()).hasSize(1);
  }

  /** The codes that are told in files of waivers, for the test that misses none. */
  static Set<org.rimefast.lang.source.DiagnosticCode> codes() {
    try {
      return names(".rime").stream()
          .flatMap(name -> compile(name).diagnostics().stream())
          .map(Diagnostic::code)
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void check(String name) throws IOException {
    WaiverCompilation compiled = compile(name);
    assertThat(compiled.isUsable()).isEqualTo(!name.startsWith("wrong"));
    String printed =
        compiled.isUsable()
            ? print(compiled)
            : compiled.diagnostics().stream()
                .map(diagnostic -> DiagnosticPrinter.print(diagnostic, compiled.source()))
                .collect(Collectors.joining());
    Path golden = FOLDER.resolve(name + ".expected");
    if (!Files.exists(golden)) {
      Files.writeString(golden, printed);
      fail("wrote " + golden + ": read it, then run again");
    }
    assertThat(printed).isEqualTo(Files.readString(golden));
  }

  private static String print(WaiverCompilation compiled) {
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(compiled.title()).append('\n');
    for (Waiver waiver : compiled.waivers()) {
      text.append("waive ").append(waiver.rule()).append(" for ").append(waiver.target());
      text.append("\n  elements: ").append(waiver.elements());
      waiver
          .selection()
          .ifPresent(
              selection -> {
                text.append("\n  each ").append(selection.subject().noun().id());
                selection
                    .where()
                    .ifPresent(
                        where ->
                            text.append(" where ")
                                .append(org.rimefast.lang.internal.message.Readings.exact(where)));
              });
      waiver.plan().ifPresent(plan -> text.append("\n  plan ").append(plan));
      text.append("\n  because ").append(waiver.because());
      text.append("\n  approved by ").append(waiver.approvedBy());
      text.append("\n  ").append(waiver.from()).append(" to ").append(waiver.until());
      waiver
          .bound()
          .ifPresent(
              bound ->
                  text.append("\n  ")
                      .append(bound.words())
                      .append(": ")
                      .append(org.rimefast.lang.internal.message.Readings.of(bound.kept())));
      text.append('\n');
    }
    return text.toString();
  }

  private static WaiverCompilation compile(String name) {
    return compile(source(name));
  }

  private static WaiverCompilation compile(SourceText source) {
    return new WaiverCompiler(Words.vocabulary(), new Limits(100_000, 20, 12))
        .compile(source, STANDARD);
  }

  private static SourceText source(String name) {
    try {
      return new SourceText(name + ".rime", Files.readString(FOLDER.resolve(name + ".rime")));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Standard standard() {
    StringBuilder text = new StringBuilder();
    text.append(
        """
        standard shop-standard edition 2026-11

        let foam cover be 50 mm

        let flush box be a box where its mount is flush

        inspect steel-warm "The steel is warm"
          for each room ask "Is it warm?" answer yes reading at least 5 degC
          severity hold stage pre-foam because "b" source "s"
        """);
    for (String rule :
        List.of(
            "foam-behind-box: box must sit in outer bay with clearance >= foam cover",
            "box-held: box must be held by a bracket",
            "not-near: box must not have clearance < 40 mm",
            "few-boxes: for each room, number of boxes must be at most 12",
            "each-bracket-long: for each box, each bracket (where it holds the box) must have reach >="
                + " 30 mm",
            "warm-box: box must have surface temperature >= 10 degC",
            "two-limits: box must have clearance >= 2 in and have depth >= 2 in")) {
      int colon = rule.indexOf(':');
      text.append("\nrule ").append(rule, 0, colon).append(" \"A title\"\n  ");
      text.append(rule.substring(colon + 2));
      text.append("\n  severity hold stage pre-foam because \"b\" source \"s\"\n");
    }
    Compilation compiled =
        new RuleCompiler(Words.vocabulary()).compile(new SourceText("s.rime", text.toString()));
    assertThat(compiled.diagnostics()).isEmpty();
    return compiled.standard().orElseThrow();
  }

  private static Set<String> names(String ending) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(ending))
          .map(name -> name.substring(0, name.length() - ending.length()))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
