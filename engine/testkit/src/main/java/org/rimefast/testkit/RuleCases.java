package org.rimefast.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardFiles;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;
import org.rimefast.report.CaseReport;
import org.rimefast.report.TextOptions;

/**
 * The cases of a standard as tests. They stand in the standard's own file {@code NAME.rime}, or in
 * {@code NAME.cases.rime} beside it. What it includes stands beside it too; what it builds on is a
 * shipped standard, or stands beside it.
 *
 * <p>Use:
 *
 * <pre>{@code
 * @TestFactory
 * Stream<DynamicTest> everyCaseComesOut() {
 *   return RuleCases.of(Path.of("house.rime"));
 * }
 * }</pre>
 */
public final class RuleCases {
  private static final String END = ".rime";

  private final CaseRunner runner;
  private final Checker checker;
  private final Standard standard;
  private final List<Case> cases;

  private RuleCases(Dictionary dictionary, Standard standard, List<Case> cases) {
    this.runner = new CaseRunner(dictionary, RuleCases::plan);
    this.checker = new Checker(dictionary, standard);
    this.standard = standard;
    this.cases = List.copyOf(cases);
  }

  /**
   * A test for each case of a standard for steel modules.
   *
   * @param standard the standard's file
   * @throws AssertionError if the standard or its cases do not compile, or it has no case
   * @throws UncheckedIOException if a file cannot be read
   */
  public static Stream<DynamicTest> of(Path standard) {
    return of(standard, SteelModules.dictionary());
  }

  /** The same for a standard that is written in the words of {@code dictionary}. */
  public static Stream<DynamicTest> of(Path standard, Dictionary dictionary) {
    RuleCases read = read(standard, dictionary);
    return read.cases.stream().map(read::test);
  }

  /**
   * The ids of the rules that no case expects to be broken, in the order of the standard: nothing
   * shows that they find anything. Of a standard that builds on another, only the rules that it
   * added or amended.
   *
   * @throws AssertionError if the standard or its cases do not compile, or it has no case
   * @throws UncheckedIOException if a file cannot be read
   */
  public static List<String> neverBroken(Path standard) {
    RuleCases read = read(standard, SteelModules.dictionary());
    List<CaseResult> unasked =
        read.cases.stream().map(one -> new CaseResult(one, List.of(), List.of())).toList();
    return new CaseResults(read.standard, unasked).neverBroken().stream().map(Rule::id).toList();
  }

  private DynamicTest test(Case example) {
    return DynamicTest.dynamicTest(
        example.name() + " [" + example.rule().orElse("every rule") + "]",
        () -> {
          CaseResult result = runner.run(checker, runner.prepare(example));
          if (!result.isAsExpected()) {
            CaseResults alone = new CaseResults(standard, List.of(result));
            Assertions.fail(CaseReport.one(result, alone, TextOptions.PLAIN));
          }
        });
  }

  private static RuleCases read(Path file, Dictionary dictionary) {
    Compilation compilation =
        new RuleCompiler(dictionary.vocabulary()).compile(text(file), StandardFiles.beside(file));
    Standard standard =
        compilation
            .standard()
            .orElseThrow(
                () -> new AssertionError(printed(compilation.diagnostics(), compilation.source())));
    List<Case> cases = new ArrayList<>(standard.cases());
    Path beside = beside(file);
    if (Files.exists(beside)) {
      CaseCompilation found = CaseCompiler.compile(text(beside), standard);
      if (!found.isUsable()) {
        throw new AssertionError(printed(found.diagnostics(), found.source()));
      }
      cases.addAll(found.cases());
    }
    if (cases.isEmpty()) {
      throw new AssertionError(
          file + " has no case; write one in it or in " + beside.getFileName() + " beside it");
    }
    return new RuleCases(dictionary, standard, cases);
  }

  private static Optional<byte[]> plan(String caseFile, String name) throws IOException {
    Path file = Path.of(caseFile).resolveSibling(name);
    return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
  }

  private static Path beside(Path file) {
    String name = String.valueOf(file.getFileName());
    String stem = name.endsWith(END) ? name.substring(0, name.length() - END.length()) : name;
    return file.resolveSibling(stem + ".cases" + END);
  }

  private static SourceText text(Path file) {
    try {
      String text = Files.readString(file);
      // Some editors put a byte order mark first.
      return new SourceText(file.toString(), text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String printed(List<Diagnostic> diagnostics, SourceText source) {
    return diagnostics.stream()
        .map(diagnostic -> DiagnosticPrinter.print(diagnostic, source))
        .collect(Collectors.joining("", "\n", ""));
  }
}
