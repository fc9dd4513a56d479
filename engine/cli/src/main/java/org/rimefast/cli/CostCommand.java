package org.rimefast.cli;

import java.util.List;
import java.util.Optional;
import org.rimefast.check.Cost;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.rule.Standard;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.TextOptions;

/** {@code rimefast cost}. */
final class CostCommand {
  private final String name;
  private final Checks checks;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;

  CostCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    if (words.parameters().isEmpty()) {
      throw words.problem("no standard is named; name a shipped one or a file of rules.");
    }
    if (words.parameters().size() > 1) {
      throw words.problem("\"" + words.parameters().get(1) + "\" is one word too many.");
    }
    this.name = words.parameters().get(0);
    this.checks = checks;
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Lists the rules with their formulas, and gives the exit code. */
  int run() {
    Optional<Standard> standard = standard();
    if (standard.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    List<Cost> costs = checks.costs(standard.get());
    int width = costs.stream().mapToInt(cost -> cost.rule().id().length()).max().orElse(0);
    StringBuilder table = new StringBuilder();
    for (Cost cost : costs) {
      String id = cost.rule().id();
      String space = " ".repeat(width - id.length() + 2);
      table.append(id).append(space).append(cost.formula()).append('\n');
      for (String warning : cost.warnings()) {
        table.append(" ".repeat(width + 2)).append("warning: ").append(warning).append('\n');
      }
    }
    out.print(costs.isEmpty() ? "This standard has no rules.\n" : table.toString());
    return ExitCode.SOUND;
  }

  private Optional<Standard> standard() {
    Inputs.Read<Compilation> read = inputs.standard(name);
    read.unusable().ifPresent(input -> err.print(PlanFaultReport.write(input, layout)));
    if (read.value().isEmpty()) {
      return Optional.empty();
    }
    Compilation compilation = read.value().get();
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    return compilation.standard();
  }
}
