package org.rimefast.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.TextOptions;

/** Finds the cases of a standard: those in it, then those beside it. */
final class CaseFiles {
  static final String END = ".rime";
  static final String CASES_END = ".cases.rime";

  private final Checks checks;
  private final Inputs inputs;
  private final Output err;
  private final TextOptions layout;

  /**
   * A finder.
   *
   * @param err is told what is wrong with cases
   */
  CaseFiles(Checks checks, Inputs inputs, Output err, TextOptions layout) {
    this.checks = checks;
    this.inputs = inputs;
    this.err = err;
    this.layout = layout;
  }

  /** The file beside a standard's file that may hold cases. */
  static String beside(String file) {
    return (file.endsWith(END) ? file.substring(0, file.length() - END.length()) : file)
        + CASES_END;
  }

  /** The cases of a standard in a file; empty if any of them cannot be used, and why is told. */
  Optional<List<Case>> ofFile(String file, Standard standard) {
    String beside = beside(file);
    if (!Files.exists(Path.of(beside))) {
      return Optional.of(standard.cases());
    }
    Inputs.Read<Inputs.RuleFile> read = inputs.rules(beside);
    read.unusable().ifPresent(input -> err.print(PlanFaultReport.write(input, layout)));
    return read.value().flatMap(found -> with(found.source(), standard));
  }

  /** The cases of a shipped standard. */
  Optional<List<Case>> ofShipped(String name, Standard standard) {
    return checks
        .shippedCases(name)
        .map(text -> with(text, standard))
        .orElse(Optional.of(standard.cases()));
  }

  private Optional<List<Case>> with(SourceText text, Standard standard) {
    CaseCompilation compilation = checks.compileCases(text, standard);
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    if (!compilation.isUsable()) {
      return Optional.empty();
    }
    List<Case> all = new ArrayList<>(standard.cases());
    all.addAll(compilation.cases());
    return Optional.of(all);
  }
}
