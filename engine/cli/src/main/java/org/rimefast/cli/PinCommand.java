package org.rimefast.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;
import org.rimefast.report.PlanFaultReport;
import org.rimefast.report.TextOptions;
import org.rimefast.report.UnusableInput;

/**
 * {@code rimefast pin}: writes beside each amendment the rule that it was written for, and tells
 * what it accepted. A file that has other faults is left as it is.
 */
final class PinCommand {
  private final List<String> files;
  private final boolean checkOnly;
  private final Inputs inputs;
  private final Output out;
  private final Output err;
  private final TextOptions layout;
  private boolean anyUnusable;
  private boolean anyChanged;

  PinCommand(
      CommandLineWords words, Checks checks, Surroundings surroundings, Output out, Output err)
      throws UsageProblem {
    this.files = words.parameters();
    if (files.isEmpty()) {
      throw words.problem("no file is named; name one or more files of rules.");
    }
    if (files.contains("-")) {
      throw words.problem("files are changed in place, and standard input has none; name a file.");
    }
    this.checkOnly = words.has("--check");
    this.inputs = new Inputs(checks, surroundings.in());
    this.out = out;
    this.err = err;
    this.layout = Layouts.of(surroundings);
  }

  /** Pins, and gives the exit code. */
  int run() {
    for (String name : files) {
      Inputs.Read<Inputs.RuleFile> read = inputs.rules(name);
      read.unusable().ifPresent(this::tell);
      read.value().ifPresent(this::pin);
    }
    if (anyUnusable) {
      return ExitCode.UNUSABLE;
    }
    return checkOnly && anyChanged ? ExitCode.FINDINGS : ExitCode.SOUND;
  }

  private void pin(Inputs.RuleFile file) {
    Compilation compilation = inputs.compiled(file);
    List<Diagnostic> others =
        compilation.diagnostics().stream()
            .filter(d -> d.level() == Diagnostic.Level.ERROR && !isOfPin(d, compilation))
            .toList();
    if (!others.isEmpty()) {
      anyUnusable = true;
      for (Diagnostic diagnostic : others) {
        err.print(DiagnosticPrinter.print(diagnostic, compilation.source()));
      }
      err.print(file.source().name() + ": is left as it is until this is put right.\n");
      return;
    }
    List<Pin> due =
        compilation.pins().stream().filter(pin -> pin.state() != Pin.State.CURRENT).toList();
    if (due.isEmpty()) {
      return;
    }
    anyChanged = true;
    if (checkOnly || write(file, compilation.source(), due)) {
      due.forEach(pin -> out.print(told(pin, compilation.source())));
    }
  }

  /** What this command puts right; in a base, only the base's own file can be pinned. */
  private static boolean isOfPin(Diagnostic diagnostic, Compilation compilation) {
    if (diagnostic.code() == DiagnosticCode.TOO_MANY_ERRORS) {
      // Those that are shown say whether there is another fault.
      return true;
    }
    return (diagnostic.code() == DiagnosticCode.MISSING_SEEN
            || diagnostic.code() == DiagnosticCode.CHANGED_RULE)
        && compilation.pins().stream()
            .anyMatch(
                pin -> diagnostic.fixes().stream().anyMatch(fix -> fix.span().equals(pin.place())));
  }

  private boolean write(Inputs.RuleFile file, SourceText source, List<Pin> due) {
    Map<Integer, List<Pin>> byPart = new TreeMap<>();
    for (Pin pin : due) {
      byPart
          .computeIfAbsent(source.partAt(pin.place().start()), part -> new ArrayList<>())
          .add(pin);
    }
    for (Map.Entry<Integer, List<Pin>> part : byPart.entrySet()) {
      int number = part.getKey();
      String name = source.parts().get(number).name();
      Inputs.RuleFile target = file;
      if (number > 0) {
        Inputs.Read<Inputs.RuleFile> read = inputs.rules(name);
        read.unusable().ifPresent(this::tell);
        if (read.value().isEmpty()) {
          return false;
        }
        target = read.value().get();
      }
      try {
        FileReplacement.write(
            target.path(),
            (target.mark() + pinned(source, number, part.getValue()))
                .getBytes(StandardCharsets.UTF_8));
      } catch (IOException e) {
        tell(Inputs.unwritable(name, e));
        return false;
      }
    }
    return true;
  }

  private static String pinned(SourceText source, int part, List<Pin> pins) {
    StringBuilder text = new StringBuilder(source.parts().get(part).text());
    int start = source.spanOf(part).start();
    List<Pin> lastFirst = new ArrayList<>(pins);
    lastFirst.sort(Comparator.comparingInt((Pin pin) -> pin.place().start()).reversed());
    for (Pin pin : lastFirst) {
      text.replace(pin.place().start() - start, pin.place().end() - start, pin.line());
    }
    return text.toString();
  }

  private String told(Pin pin, SourceText source) {
    SourceText.Place place = source.place(pin.place().start());
    String head = place.name() + ": " + pin.amendment() + ": ";
    String would = checkOnly ? "would be " : "";
    return switch (pin.state()) {
      case MISSING -> head + would + "pinned to the rule as it is\n  " + pin.after() + "\n";
      case CHANGED ->
          head
              + would
              + "accepted with a rule that changed\n  old: "
              + pin.before()
              + "\n  new: "
              + pin.after()
              + "\n";
      case REWORDED -> head + would + "renewed; the rule means the same\n  " + pin.after() + "\n";
      case CURRENT -> throw new IllegalStateException("nothing to pin: " + pin);
    };
  }

  private void tell(UnusableInput input) {
    anyUnusable = true;
    err.print(PlanFaultReport.write(input, layout));
  }
}
