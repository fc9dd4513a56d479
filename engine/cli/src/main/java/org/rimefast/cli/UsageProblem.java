package org.rimefast.cli;

/** A command line that cannot be followed; the message says what is wrong with it. */
final class UsageProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String command;

  UsageProblem(String command, String message) {
    super(message, null, false, false);
    this.command = command;
  }

  /** What is wrong and where help is, two lines. */
  String lines() {
    return command + ": " + getMessage() + "\nHelp: " + command + " --help\n";
  }
}
