package org.rimefast.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.check.CheckResult;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.plan.Plan;
import org.rimefast.plan.PlanReading;
import org.rimefast.report.JsonReport;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.StandardFaultReport;
import org.rimefast.report.TextOptions;
import org.rimefast.report.TextReport;
import org.rimefast.report.UnusableInput;

/**
 * {@code rimefast check}. One plan after the other, so that a plan that cannot be used hides
 * nothing of the others.
 */
final class CheckCommand {
  private final CheckArguments arguments;
  private final Checks checks;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;
  private final boolean progress;
  private final List<CheckResult> results = new ArrayList<>();
  private final List<UnusableInput> unusable = new ArrayList<>();

  CheckCommand(
      CheckArguments arguments, Checks checks, Surroundings surroundings, Output out, Output err) {
    this.arguments = arguments;
    this.checks = checks;
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
    this.progress = surroundings.terminal() && arguments.plans().size() > 1;
  }

  /** Checks, reports, and gives the exit code. */
  int run() {
    Optional<Standard> standard = standard();
    Optional<List<Waiver>> waivers = standard.flatMap(this::waivers);
    int number = 0;
    for (String name : arguments.plans()) {
      number++;
      if (progress) {
        err.print("plan " + number + " of " + arguments.plans().size() + "\n");
      }
      Optional<Plan> plan = plan(name);
      if (standard.isPresent() && waivers.isPresent() && plan.isPresent()) {
        report(checks.check(standard.get(), plan.get(), arguments.options(), waivers.get()));
      }
    }
    if (standard.isEmpty()) {
      err.print("No plan was checked, because there is no standard to check it against.\n");
    } else if (waivers.isEmpty()) {
      err.print("No plan was checked, because not all waivers can be used.\n");
    }
    if (arguments.json()) {
      out.print(JsonReport.write(results, unusable));
    } else if (arguments.plans().size() > 1 && waivers.isPresent()) {
      out.print((results.isEmpty() ? "" : "\n") + TextReport.overview(results, unusable, layout));
    }
    return unusable.isEmpty()
        ? ExitCode.of(results, arguments.least(), arguments.strict())
        : ExitCode.UNUSABLE;
  }

  private void report(CheckResult result) {
    if (!arguments.json()) {
      out.print((results.isEmpty() ? "" : "\n") + TextReport.write(result, layout));
    }
    results.add(result);
  }

  private Optional<Standard> standard() {
    Inputs.Read<Compilation> read = inputs.standard(arguments.standard());
    if (read.unusable().isPresent()) {
      tell(read.unusable().get());
    }
    if (read.value().isEmpty()) {
      return Optional.empty();
    }
    Compilation compilation = read.value().get();
    if (!compilation.diagnostics().isEmpty()) {
      err.print(StandardFaultReport.write(compilation, layout));
    }
    if (compilation.standard().isEmpty()) {
      unusable.add(UnusableInput.standard(compilation));
    }
    return compilation.standard();
  }

  /** All waivers; empty if one of the files cannot be used. */
  private Optional<List<Waiver>> waivers(Standard standard) {
    List<Waiver> waivers = new ArrayList<>();
    boolean usable = true;
    for (String name : arguments.waivers()) {
      Inputs.Read<Inputs.RuleFile> read = inputs.rules(name, UnusableInput.Kind.WAIVERS);
      if (read.unusable().isPresent()) {
        tell(read.unusable().get());
      }
      if (read.value().isEmpty()) {
        usable = false;
        continue;
      }
      WaiverCompilation compilation = checks.compileWaivers(read.value().get().source(), standard);
      if (!compilation.diagnostics().isEmpty()) {
        err.print(StandardFaultReport.write(compilation, layout));
      }
      if (!compilation.isUsable()) {
        unusable.add(UnusableInput.waivers(compilation));
        usable = false;
      }
      waivers.addAll(compilation.waivers());
    }
    return usable ? Optional.of(waivers) : Optional.empty();
  }

  private Optional<Plan> plan(String name) {
    Inputs.Read<PlanReading> read = inputs.plan(name);
    if (read.unusable().isPresent()) {
      tell(read.unusable().get());
    }
    if (read.value().isEmpty()) {
      return Optional.empty();
    }
    PlanReading reading = read.value().get();
    if (reading.plan().isEmpty()) {
      tell(UnusableInput.plan(Inputs.nameOf(name), reading.faults()));
    }
    return reading.plan();
  }

  private void tell(UnusableInput input) {
    unusable.add(input);
    err.print(PlanFaultReport.write(input, layout));
  }
}
