package org.rimefast.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Formatting;
import org.rimefast.lang.Limits;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.TextOptions;
import org.rimefast.report.UnusableInput;

/** {@code rimefast format}. A file that cannot be read or written keeps no other from its turn. */
final class FormatCommand {
  private final List<String> files;
  private final boolean checkOnly;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;
  private boolean anyUnusable;
  private boolean anyChanged;

  FormatCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    this.files = words.parameters();
    if (files.isEmpty()) {
      throw words.problem("no file is named; name one or more files of rules.");
    }
    if (files.contains("-")) {
      throw words.problem(
          "files are formatted in place, and standard input has none; name a file.");
    }
    this.checkOnly = words.has("--check");
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Formats, and gives the exit code. */
  int run() {
    for (String name : files) {
      Inputs.Read<Inputs.RuleFile> read = inputs.rules(name);
      read.unusable().ifPresent(this::tell);
      read.value().ifPresent(this::format);
    }
    if (anyUnusable) {
      return ExitCode.UNUSABLE;
    }
    return checkOnly && anyChanged ? ExitCode.FINDINGS : ExitCode.SOUND;
  }

  private void format(Inputs.RuleFile file) {
    Formatting formatting = RuleFormatter.formatting(file.source());
    if (!formatting.diagnostics().isEmpty()) {
      err.print(leftAlone(file, formatting.diagnostics()));
    }
    if (formatting.text().equals(file.source().text())) {
      return;
    }
    anyChanged = true;
    String name = file.source().name();
    if (checkOnly) {
      out.print(name + ": would be formatted\n");
      return;
    }
    Optional<UnusableInput> fault = write(file, formatting.text());
    if (fault.isPresent()) {
      tell(fault.get());
    } else {
      out.print(name + ": formatted\n");
    }
  }

  private static Optional<UnusableInput> write(Inputs.RuleFile file, String text) {
    try {
      FileReplacement.write(file.path(), (file.mark() + text).getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(Inputs.unwritable(file.source().name(), e));
    }
  }

  private static String leftAlone(Inputs.RuleFile file, List<Diagnostic> diagnostics) {
    StringBuilder told = new StringBuilder();
    int count = diagnostics.size();
    for (Diagnostic diagnostic : diagnostics.subList(0, Math.min(count, Limits.DEFAULT.errors()))) {
      told.append(DiagnosticPrinter.print(diagnostic, file.source()));
    }
    return told.append(file.source().name())
        .append(": what cannot be read is left as it stands: ")
        .append(count == 1 ? "1 fault.\n" : count + " faults.\n")
        .toString();
  }

  private void tell(UnusableInput input) {
    anyUnusable = true;
    err.print(PlanFaultReport.write(input, layout));
  }
}
