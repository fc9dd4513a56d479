package org.rimefast.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.StandardPage;
import org.rimefast.report.TextOptions;

/**
 * {@code rimefast document}. A page never leaves out what could not be read: then there is none.
 */
final class DocumentCommand {
  private final String name;
  private final Optional<String> page;
  private final Checks checks;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;

  DocumentCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    if (words.parameters().isEmpty()) {
      throw words.problem(
          "no standard is named; name a shipped one or a file of rules. The command \"rimefast"
              + " standards\" lists the shipped names.");
    }
    if (words.parameters().size() > 1) {
      throw words.problem("\"" + words.parameters().get(1) + "\" is one word too many.");
    }
    this.name = words.parameters().get(0);
    this.page = words.value("--out");
    if (page.isPresent() && page.get().endsWith(CaseFiles.END)) {
      throw words.problem(
          "--out "
              + page.get()
              + " would replace a file of rules; name a file that ends in .html.");
    }
    this.checks = checks;
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Writes the page, and gives the exit code. */
  int run() {
    Inputs.Read<Compilation> read = inputs.standard(name);
    read.unusable().ifPresent(input -> err.print(PlanFaultReport.write(input, layout)));
    if (read.value().isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Compilation compilation = read.value().get();
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    return compilation.standard().flatMap(this::results).map(this::write).orElse(ExitCode.UNUSABLE);
  }

  private Optional<CaseResults> results(Standard standard) {
    boolean shipped = checks.shippedNames().contains(name);
    CaseFiles files = new CaseFiles(checks, inputs, err, layout);
    Optional<List<Case>> cases =
        shipped ? files.ofShipped(name, standard) : files.ofFile(name, standard);
    return cases.map(
        all -> shipped ? checks.runShippedCases(standard, all) : checks.runCases(standard, all));
  }

  private int write(CaseResults results) {
    String html = StandardPage.write(results, checks.vocabulary());
    if (!results.areAsExpected()) {
      err.print(
          "rimefast: some cases of "
              + results.standard().name()
              + " did not come out as expected; the page says which, and so does the command"
              + " \"rimefast cases\".\n");
    }
    if (page.isEmpty()) {
      out.print(html);
      return ExitCode.SOUND;
    }
    try {
      Files.write(Path.of(page.get()), html.getBytes(StandardCharsets.UTF_8));
      return ExitCode.SOUND;
    } catch (IOException | InvalidPathException e) {
      err.print("rimefast: " + page.get() + " cannot be written: " + e.getMessage() + "\n");
      return ExitCode.UNUSABLE;
    }
  }
}
