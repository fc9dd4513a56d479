package org.rimefast.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The commands as the command-line library sees them: for help, and for what is wrong. */
final class Commands {
  private static final int WIDTH = 80;

  private Commands() {}

  static CommandLine check() {
    CommandSpec spec = spec("rimefast check", Option.CHECK);
    spec.addPositional(several("PLAN", "Plan file (JSON); - reads standard input."));
    spec.usageMessage()
        .customSynopsis("rimefast check PLAN... --standard NAME-or-FILE [options]")
        .description(
            "",
            "Checks plans against a standard: what is broken, what is undecided for want of a"
                + " value, and why. Reports go to standard output; what is wrong with a plan or"
                + " standard goes to standard error.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.check())
        .footer(
            "",
            "Example:",
            "  rimefast check wet-lab.json --standard cold-steel-modules --stage pre-foam",
            "",
            "What is reported supports and does not replace local codes, the authority having"
                + " jurisdiction, product data sheets and licensed trades.");
    return new CommandLine(spec);
  }

  static CommandLine format() {
    CommandSpec spec = spec("rimefast format", Option.FORMAT);
    spec.addPositional(several("FILE", "File of rules."));
    spec.usageMessage()
        .customSynopsis("rimefast format FILE... [--check]")
        .description(
            "",
            "Lays files of rules out in one way, in place, and names each file that it changes."
                + " Only white space and line ends change. A statement that cannot be read is left"
                + " as it stands, and why is told on standard error.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.format())
        .footer("", "Example:", "  rimefast format house.rime");
    return new CommandLine(spec);
  }

  static CommandLine cases() {
    CommandSpec spec = spec("rimefast cases", Option.CASES);
    spec.addPositional(several("FILE", "File of rules."));
    spec.usageMessage()
        .customSynopsis("rimefast cases FILE... [--junit FILE] [--strength]")
        .description(
            "",
            "Runs the cases of standards: examples of plans, and of what rules must say of them."
                + " They stand in the standard's own file, NAME.rime, or in NAME.cases.rime beside"
                + " it. Tells each that did not come out as expected, with what came out instead and"
                + " why, and the rules that no case expects to be broken.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.cases())
        .footer("", "Example:", "  rimefast cases house.rime --junit cases.xml");
    return new CommandLine(spec);
  }

  static CommandLine pin() {
    CommandSpec spec = spec("rimefast pin", Option.PIN);
    spec.addPositional(several("FILE", "File of rules that amends another standard."));
    spec.usageMessage()
        .customSynopsis("rimefast pin FILE... [--check]")
        .description(
            "",
            "Writes beside each amendment the rule that it was written for, in place, so that a"
                + " later change of that rule is seen. Tells what it accepted: the rule as it was"
                + " and as it is. A file with other faults is left as it is.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.pin())
        .footer("", "Example:", "  rimefast pin house.rime");
    return new CommandLine(spec);
  }

  static CommandLine document() {
    CommandSpec spec = spec("rimefast document", Option.DOCUMENT);
    spec.addPositional(several("STANDARD", "Name of a shipped standard, or a file of rules."));
    spec.usageMessage()
        .customSynopsis("rimefast document STANDARD [--out FILE]")
        .description(
            "",
            "Writes a standard as one HTML page for people, to read on a screen or in print: each"
                + " rule with its limits, reasons, sources and changes, and its cases with what"
                + " came of them. The page stands alone and runs no script.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.document())
        .footer("", "Example:", "  rimefast document house.rime --out house.html");
    return new CommandLine(spec);
  }

  static CommandLine explain() {
    CommandSpec spec = spec("rimefast explain", Option.EXPLAIN);
    spec.addPositional(several("RULE", "Name of a rule."));
    spec.usageMessage()
        .customSynopsis("rimefast explain RULE... --standard NAME-or-FILE")
        .description(
            "",
            "Says what a rule asks, from when, why and with which limits, and what each standard"
                + " that builds on another made of it.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.explain())
        .footer(
            "", "Example:", "  rimefast explain box-in-outer-bay --standard cold-steel-modules");
    return new CommandLine(spec);
  }

  static CommandLine languageServer() {
    CommandSpec spec = spec("rimefast language-server", Option.LANGUAGE_SERVER);
    spec.usageMessage()
        .customSynopsis("rimefast language-server")
        .description(
            "",
            "Speaks the Language Server Protocol over standard input and output, so that an editor"
                + " can show what is wrong with rules while they are written, and what could be"
                + " written. An editor starts it; it is of no use by hand.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.languageServer())
        .footer("", "Example:", "  rimefast language-server");
    return new CommandLine(spec);
  }

  static CommandLine standards() {
    CommandSpec spec = spec("rimefast standards", Option.STANDARDS);
    spec.usageMessage()
        .customSynopsis("rimefast standards")
        .description("", "Lists the shipped standards: name, edition, number of rules, title.", "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.standards())
        .footer("", "Example:", "  rimefast standards");
    return new CommandLine(spec);
  }

  static CommandLine cost() {
    CommandSpec spec = spec("rimefast cost", Option.COST);
    spec.addPositional(several("STANDARD", "Name of a shipped standard, or a file of rules."));
    spec.usageMessage()
        .customSynopsis("rimefast cost STANDARD")
        .description(
            "",
            "Tells for each rule how the work of checking it grows with a plan, in numbers of"
                + " elements: boxes x (studs near) looks at the studs near each box. What no index"
                + " serves is marked.",
            "")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodeWords.cost())
        .footer("", "Example:", "  rimefast cost cold-steel-modules");
    return new CommandLine(spec);
  }

  /** The command without a command. */
  static CommandLine root() {
    CommandSpec spec = spec("rimefast", Option.ROOT);
    spec.usageMessage()
        .customSynopsis("rimefast COMMAND ...")
        .description(
            "",
            "Checks the plans of corrugated steel modules for cold climates against a standard,"
                + " before foam locks everything where it is.",
            "",
            "Commands:",
            "  check         check plans against a standard",
            "  cases         run the cases of a standard",
            "  cost          tell how the work of each rule grows",
            "  document      write a standard as a page for people",
            "  explain       say what a rule asks and who changed it",
            "  format        lay files of rules out in one way",
            "  language-server",
            "                help in an editor while rules are written",
            "  pin           accept the rules that a file of rules amends",
            "  standards     list the shipped standards",
            "",
            "Options:")
        .footer(
            "",
            "Help of a command:",
            "  rimefast check --help",
            "",
            "Example:",
            "  rimefast check wet-lab.json --standard cold-steel-modules");
    return new CommandLine(spec);
  }

  static String help(CommandLine command) {
    return command.getUsageMessage(Ansi.OFF).replace("\r\n", "\n");
  }

  /**
   * Takes words apart.
   *
   * @throws UsageProblem if they are not what the command takes
   */
  static CommandLineWords parse(CommandLine command, List<String> words) throws UsageProblem {
    String name = command.getCommandSpec().name();
    try {
      return words(name, command.parseArgs(words.toArray(new String[0])));
    } catch (CommandLine.UnmatchedArgumentException e) {
      throw new UsageProblem(name, unmatched(e.getUnmatched().get(0), command));
    } catch (CommandLine.OverwrittenOptionException e) {
      throw new UsageProblem(name, longestName(e.getOverwritten()) + " is given twice.");
    } catch (CommandLine.MissingParameterException e) {
      throw new UsageProblem(
          name, longestName(e.getMissing().get(0)) + " needs a value behind it.");
    } catch (CommandLine.ParameterException e) {
      throw new UsageProblem(name, valueOfFlag(words, command));
    }
  }

  private static CommandLineWords words(String name, ParseResult result) {
    Map<String, List<String>> values = new HashMap<>();
    for (OptionSpec option : result.matchedOptions()) {
      boolean flag = option.arity().max() == 0;
      values.put(option.longestName(), flag ? List.of("") : option.stringValues());
    }
    List<String> none = List.of();
    List<String> parameters =
        result.hasMatchedPositional(0) ? result.matchedPositionalValue(0, none) : none;
    return new CommandLineWords(name, values, parameters);
  }

  private static String unmatched(String word, CommandLine command) {
    if (!word.startsWith("-")) {
      return "\"" + word + "\" is one word too many.";
    }
    int equals = word.indexOf('=');
    String option = equals < 0 ? word : word.substring(0, equals);
    List<String> known = new ArrayList<>();
    for (OptionSpec spec : command.getCommandSpec().options()) {
      known.add(spec.longestName());
    }
    return "there is no option " + option + NearestNames.ending(option, known);
  }

  /** With every value a text, all that is left to go wrong is a value for an option without one. */
  private static String valueOfFlag(List<String> words, CommandLine command) {
    for (OptionSpec option : command.getCommandSpec().options()) {
      String start = option.longestName() + "=";
      if (option.arity().max() == 0 && words.stream().anyMatch(word -> word.startsWith(start))) {
        return option.longestName() + " takes no value.";
      }
    }
    throw new IllegalStateException("a command line that is refused for no known reason: " + words);
  }

  private static String longestName(ArgSpec spec) {
    return spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
  }

  private static PositionalParamSpec several(String label, String description) {
    return PositionalParamSpec.builder()
        .index("0..*")
        .arity("0..*")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .paramLabel(label)
        .hideParamSyntax(true)
        .description(description)
        .build();
  }

  private static CommandSpec spec(String name, List<Option> options) {
    CommandSpec spec = CommandSpec.create().name(name);
    spec.parser().expandAtFiles(false).posixClusteredShortOptionsAllowed(false);
    spec.interpolateVariables(false);
    spec.usageMessage()
        .width(WIDTH)
        .sortOptions(false)
        .sortSynopsis(false)
        .synopsisHeading("Usage: ");
    for (Option option : options) {
      OptionSpec.Builder builder =
          OptionSpec.builder(option.name()).description(option.description());
      if (option.repeats()) {
        builder.type(List.class).auxiliaryTypes(String.class);
      } else {
        builder.type(option.takesValue() ? String.class : boolean.class);
      }
      spec.addOption(
          option.takesValue()
              ? builder.arity("1").paramLabel(option.label()).build()
              : builder.arity("0").build());
    }
    return spec;
  }
}
