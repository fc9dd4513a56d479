package org.rimefast.cli;

import java.util.List;

/**
 * An option of a command.
 *
 * @param name how it is written: {@code --stage}
 * @param label what stands for its value in help; empty for an option without one
 * @param description what it does
 * @param repeats whether it may stand there more than once
 */
record Option(String name, String label, String description, boolean repeats) {
  private static final Option DEBUG =
      flag("--debug", "Show the trace of a fault of rimefast itself (or RIMEFAST_DEBUG=1).");
  private static final Option HELP = flag("--help", "Show this help.");

  /** The options of {@code rimefast check}. */
  static final List<Option> CHECK =
      List.of(
          valued(
              "--standard",
              "NAME-or-FILE",
              "The standard to check against: the name of a shipped one, or a file of rules."),
          valued(
              "--stage",
              "STAGE",
              "Leave out rules that are due only after this stage of the work. All rules are"
                  + " asked if it is not given."),
          valued(
              "--as-of",
              "DATE",
              "The date that counts as today, such as 2026-11-25. It is never taken from the"
                  + " clock."),
          new Option(
              "--waivers",
              "FILE",
              "A file of waivers for the standard; may be given several times. Needs --as-of.",
              true),
          valued("--format", "FORMAT", "text for people (default), json for programs."),
          valued(
              "--fail-on",
              "SEVERITY",
              "Exit with 1 if a rule of this severity or a graver one is broken: hold, fix"
                  + " (default) or advise."),
          flag(
              "--strict",
              "Exit with 3 if nothing is broken, but a rule of that severity is undecided."),
          valued(
              "--threads",
              "NUMBER",
              "How many threads check a plan (default 1). The report is the same for any number."),
          DEBUG,
          HELP);

  /** The options of {@code rimefast format}. */
  static final List<Option> FORMAT =
      List.of(flag("--check", "Change nothing; list the files that would change."), DEBUG, HELP);

  /** The options of {@code rimefast cases}. */
  static final List<Option> CASES =
      List.of(
          valued(
              "--junit",
              "FILE",
              "Also write what came of the cases to this file, as XML that programs which run tests"
                  + " read."),
          flag(
              "--strength",
              "Also tell how well the cases pin the rules down: which small changes of a rule no case"
                  + " would notice, and what of it none has seen."),
          DEBUG,
          HELP);

  /** The options of {@code rimefast pin}. */
  static final List<Option> PIN =
      List.of(flag("--check", "Change nothing; tell what would be accepted."), DEBUG, HELP);

  /** The options of {@code rimefast explain}. */
  static final List<Option> EXPLAIN =
      List.of(
          valued(
              "--standard",
              "NAME-or-FILE",
              "The standard that has the rule: the name of a shipped one, or a file of rules."),
          DEBUG,
          HELP);

  /** The options of {@code rimefast document}. */
  static final List<Option> DOCUMENT =
      List.of(
          valued("--out", "FILE", "The file that gets the page; standard output if not given."),
          DEBUG,
          HELP);

  /** The options of {@code rimefast language-server}. */
  static final List<Option> LANGUAGE_SERVER = List.of(DEBUG, HELP);

  /** The options of {@code rimefast standards}. */
  static final List<Option> STANDARDS = List.of(DEBUG, HELP);

  /** The options of {@code rimefast cost}. */
  static final List<Option> COST = List.of(DEBUG, HELP);

  /** The options of {@code rimefast} alone. */
  static final List<Option> ROOT = List.of(HELP, flag("--version", "Show the version."));

  /** True if a value follows it. */
  boolean takesValue() {
    return !label.isEmpty();
  }

  private static Option flag(String name, String description) {
    return new Option(name, "", description, false);
  }

  private static Option valued(String name, String label, String description) {
    return new Option(name, label, description, false);
  }
}
