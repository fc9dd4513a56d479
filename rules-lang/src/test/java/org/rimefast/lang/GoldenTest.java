package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;

/**
 * Each file {@code NAME.rime} has a file {@code NAME.expected} beside it. A missing one is written
 * and the test still fails, so that somebody reads it.
 */
final class GoldenTest {
  private static final Path RESOURCES = Path.of("src", "test", "resources");
  private static final RuleCompiler COMPILER =
      new RuleCompiler(Words.vocabulary(), new Limits(100_000, 20, 12, 6, 3));

  /** Words of the parser generator, which no reader of a rule should ever see. */
  private static final List<String> FOREIGN =
      List.of("mismatched", "token", "EOF", "viable", "expecting", "<missing", "extraneous");

  @TestFactory
  Stream<DynamicTest> everyFaultIsTold() {
    return each("diagnostics", GoldenTest::diagnostics);
  }

  @TestFactory
  Stream<DynamicTest> everySentenceMeansWhatItSays() {
    return each("rules", GoldenTest::rules);
  }

  @Test
  void noGoldenIsWithoutItsText() {
    for (String folder : List.of("diagnostics", "rules")) {
      Set<String> texts = names(folder, ".rime");
      assertThat(names(folder, ".expected")).isSubsetOf(texts);
      assertThat(texts.size()).isGreaterThan(folder.equals("rules") ? 24 : 69);
    }
  }

  @Test
  void everyCodeIsInSomeGolden() {
    Set<DiagnosticCode> seen = EnumSet.noneOf(DiagnosticCode.class);
    for (String name : names("diagnostics", ".rime")) {
      compile("diagnostics", name).diagnostics().forEach(d -> seen.add(d.code()));
    }
    seen.addAll(WaiverGoldenTest.codes());
    // Text that is not valid UTF-16 cannot be kept in a file; HostileTextTest has it.
    seen.add(DiagnosticCode.UNPAIRED_SURROGATE);
    assertThat(seen).containsExactlyInAnyOrder(DiagnosticCode.values());
  }

  @Test
  void everyFaultHasAHeadlineAndAHelpInPlainWords() {
    for (String name : names("diagnostics", ".rime")) {
      for (Diagnostic diagnostic : compile("diagnostics", name).diagnostics()) {
        String said = diagnostic.headline() + diagnostic.help();
        FOREIGN.forEach(word -> assertThat(said).as(name).doesNotContain(word));
        assertThat(diagnostic.headline()).as(name).matches("(?s)[A-Z\"0-9=<>!(\\-].*[.]");
        assertThat(diagnostic.help()).as(name).isNotBlank();
      }
    }
  }

  /** What a fix says is believed: putting it in must take that fault away. */
  @Test
  void everyFixTakesItsFaultAway() {
    int fixes = 0;
    for (String name : names("diagnostics", ".rime")) {
      Compilation before = compile("diagnostics", name);
      for (Diagnostic diagnostic : before.diagnostics()) {
        for (Diagnostic.Fix fix : diagnostic.fixes()) {
          if (before.source().partAt(fix.span().start()) > 0) {
            continue; // In a file that others use too.
          }
          Compilation after =
              COMPILER.compile(
                  LayerTexts.fixed(before.source(), fix.span(), fix.replacement()),
                  LayerTexts.FINDER);
          assertThat(after.diagnostics())
              .as(name)
              .noneMatch(
                  d ->
                      d.code() == diagnostic.code()
                          && d.span().start() == diagnostic.span().start()
                          && d.headline().equals(diagnostic.headline()));
          fixes++;
        }
      }
    }
    assertThat(fixes).isGreaterThan(20);
  }

  private static String diagnostics(String name) {
    Compilation compilation = compile("diagnostics", name);
    assertThat(compilation.standard()).isEmpty();
    StringBuilder printed = new StringBuilder();
    for (Diagnostic diagnostic : compilation.diagnostics()) {
      printed.append(DiagnosticPrinter.print(diagnostic, compilation.source()));
    }
    return printed.toString();
  }

  private static String rules(String name) {
    Compilation compilation = compile("rules", name);
    assertThat(compilation.diagnostics()).isEmpty();
    return RuleDump.of(compilation.standard().orElseThrow());
  }

  private static Compilation compile(String folder, String name) {
    Path file = RESOURCES.resolve(folder).resolve(name + ".rime");
    return COMPILER.compile(new SourceText(name + ".rime", read(file)), LayerTexts.FINDER);
  }

  private static Stream<DynamicTest> each(String folder, Function<String, String> print) {
    List<DynamicTest> tests = new ArrayList<>();
    for (String name : names(folder, ".rime")) {
      tests.add(
          DynamicTest.dynamicTest(
              name,
              () -> {
                Path golden = RESOURCES.resolve(folder).resolve(name + ".expected");
                String printed = print.apply(name);
                if (!Files.exists(golden)) {
                  Files.writeString(golden, printed);
                  fail("wrote " + golden + ": read it, then run again");
                }
                assertThat(printed).isEqualTo(read(golden));
              }));
    }
    return tests.stream();
  }

  private static Set<String> names(String folder, String end) {
    String[] files = RESOURCES.resolve(folder).toFile().list();
    assertThat(files).as(folder).isNotNull();
    Set<String> names = new TreeSet<>();
    Arrays.stream(files)
        .filter(file -> file.endsWith(end))
        .forEach(file -> names.add(file.substring(0, file.length() - end.length())));
    return names;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
