package org.rimefast.cli;

import java.io.PrintStream;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.languageserver.RuleLanguageServer;

/** {@code rimefast language-server}. */
final class LanguageServerCommand {
  private LanguageServerCommand() {}

  /** Serves, and gives the exit code that the protocol asks for. */
  static int run(Surroundings surroundings) {
    PrintStream before = System.out;
    // Standard output belongs to the protocol: one stray line on it, and the editor hangs up.
    System.setOut(System.err);
    try {
      Dictionary dictionary = SteelModules.dictionary();
      return RuleLanguageServer.run(
          surroundings.in(), surroundings.out(), dictionary.vocabulary(), new DiskHost(dictionary));
    } finally {
      System.setOut(before);
    }
  }
}
