package org.rimefast.cli;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.RuleReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.TextOptions;

/** {@code rimefast explain}. */
final class ExplainCommand {
  private final CommandLineWords words;
  private final String name;
  private final Checks checks;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;

  ExplainCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    this.words = words;
    if (words.parameters().isEmpty()) {
      throw words.problem("no rule is named; name one or more rules of the standard.");
    }
    this.name = words.value("--standard").orElse("");
    if (name.isBlank()) {
      throw words.problem(
          "no standard is named; give --standard and a name or file. The command \"rimefast"
              + " standards\" lists the shipped names.");
    }
    this.checks = checks;
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Explains, and gives the exit code. */
  int run() throws UsageProblem {
    Inputs.Read<Compilation> read = inputs.standard(name);
    if (read.value().isEmpty()) {
      read.unusable().ifPresent(input -> err.print(PlanFaultReport.write(input, layout)));
      return ExitCode.UNUSABLE;
    }
    Compilation compilation = read.value().get();
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    if (compilation.standard().isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Standard standard = compilation.standard().get();
    StringBuilder text = new StringBuilder();
    for (String id : words.parameters()) {
      Optional<String> rule = RuleReport.write(standard, id, checks::readAs, layout);
      if (rule.isEmpty()) {
        throw unknown(id, standard);
      }
      text.append(text.isEmpty() ? "" : "\n").append(rule.get());
    }
    out.print(text.toString());
    return ExitCode.SOUND;
  }

  private UsageProblem unknown(String id, Standard standard) {
    List<String> known = standard.rules().stream().map(Rule::id).distinct().toList();
    return words.problem(
        "the standard "
            + standard.name()
            + " has no rule \""
            + id
            + "\""
            + NearestNames.ending(id, known));
  }
}
