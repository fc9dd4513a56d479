package org.rimefast.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.report.CaseReport;
import org.rimefast.report.JunitXml;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.StrengthReport;
import org.rimefast.report.TextOptions;
import org.rimefast.report.UnusableInput;

/** {@code rimefast cases}. A standard that cannot be used keeps no other from its turn. */
final class CasesCommand {
  private final List<String> files;
  private final Optional<String> xml;
  private final boolean strength;
  private final Checks checks;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;
  private final List<CaseResults> results = new ArrayList<>();
  private boolean anyUnusable;

  CasesCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    this.files = words.parameters();
    if (files.isEmpty()) {
      throw words.problem("no file is named; name one or more files of rules.");
    }
    for (String file : files) {
      if (file.equals("-")) {
        throw words.problem("cases stand in files and beside them; name a file.");
      }
      if (file.endsWith(CaseFiles.CASES_END)) {
        String stem = file.substring(0, file.length() - CaseFiles.CASES_END.length());
        throw words.problem(
            "name the standard, " + stem + CaseFiles.END + "; its cases are found by it.");
      }
    }
    this.xml = words.value("--junit");
    this.strength = words.value("--strength").isPresent();
    this.checks = checks;
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Runs the cases, reports, and gives the exit code. */
  int run() {
    for (String file : files) {
      standard(file)
          .ifPresent(standard -> cases(file, standard).ifPresent(all -> run(standard, all)));
    }
    if (xml.isPresent() && !written(xml.get())) {
      return ExitCode.UNUSABLE;
    }
    if (anyUnusable) {
      return ExitCode.UNUSABLE;
    }
    return results.stream().allMatch(CaseResults::areAsExpected)
        ? ExitCode.SOUND
        : ExitCode.FINDINGS;
  }

  private void run(Standard standard, List<Case> cases) {
    CaseResults came = checks.runCases(standard, cases);
    out.print((results.isEmpty() ? "" : "\n") + CaseReport.write(came, layout));
    if (strength) {
      out.print("\n" + StrengthReport.write(checks.strength(standard, cases), layout));
    }
    results.add(came);
  }

  private Optional<Standard> standard(String file) {
    Inputs.Read<Inputs.RuleFile> read = inputs.rules(file);
    read.unusable().ifPresent(this::tell);
    if (read.value().isEmpty()) {
      return Optional.empty();
    }
    Compilation compilation = inputs.compiled(read.value().get());
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    anyUnusable |= compilation.standard().isEmpty();
    return compilation.standard();
  }

  /** The cases in a standard's file and those beside it; empty if any of them cannot be used. */
  private Optional<List<Case>> cases(String file, Standard standard) {
    Optional<List<Case>> all = new CaseFiles(checks, inputs, err, layout).ofFile(file, standard);
    anyUnusable |= all.isEmpty();
    if (all.isPresent() && all.get().isEmpty()) {
      anyUnusable = true;
      err.print(
          file
              + ": this standard has no case; write one in it, or in "
              + CaseFiles.beside(file)
              + " beside it.\n");
      return Optional.empty();
    }
    return all;
  }

  private boolean written(String file) {
    try {
      Files.write(Path.of(file), JunitXml.write(results).getBytes(StandardCharsets.UTF_8));
      return true;
    } catch (IOException | InvalidPathException e) {
      err.print("rimefast: " + file + " cannot be written: " + e.getMessage() + "\n");
      return false;
    }
  }

  private void tell(UnusableInput input) {
    anyUnusable = true;
    err.print(PlanFaultReport.write(input, layout));
  }
}
