package org.rimefast.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.check.Checker;

/** The command {@code rimefast}. */
public final class Main {
  private static final String NAME = "rimefast";
  private static final String CHECK = "check";
  private static final String CASES = "cases";
  private static final String COST = "cost";
  private static final String DOCUMENT = "document";
  private static final String EXPLAIN = "explain";
  private static final String FORMAT = "format";
  private static final String LANGUAGE_SERVER = "language-server";
  private static final String PIN = "pin";
  private static final String STANDARDS = "standards";

  private final Surroundings surroundings;
  private final Checks checks;
  private final Output out;
  private final Output err;

  Main(Surroundings surroundings, Checks checks) {
    this.surroundings = surroundings;
    this.checks = checks;
    this.out = new Output(surroundings.out());
    this.err = new Output(surroundings.err());
  }

  /** Runs the command and ends the process with its exit code. */
  @SuppressWarnings("SystemConsoleNull") // asked for below
  public static void main(String[] args) {
    // From Java 22 on, a console is there even if nobody looks on, unless this is asked for.
    System.setProperty("jdk.console", "java.base");
    Surroundings surroundings =
        new Surroundings(
            System.in,
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            System.console() != null,
            System.getenv());
    System.exit(new Main(surroundings, new SteelChecks()).run(List.of(args)));
  }

  /**
   * Runs the command as a program would: no terminal, no input, no environment.
   *
   * @param args the words behind {@code rimefast}
   * @param out gets the reports, as UTF-8
   * @param err gets what is wrong with the input, as UTF-8
   * @return the exit code
   */
  public static int run(String[] args, OutputStream out, OutputStream err) {
    Surroundings surroundings =
        new Surroundings(InputStream.nullInputStream(), out, err, false, Map.of());
    return new Main(surroundings, new SteelChecks()).run(List.of(args));
  }

  /** Runs the command; never throws. */
  int run(List<String> words) {
    try {
      int code = command(words);
      if (out.fault().isPresent()) {
        err.print(
            "rimefast: the report cannot be written: " + out.fault().get().getMessage() + "\n");
        return ExitCode.UNUSABLE;
      }
      return code;
    } catch (UsageProblem e) {
      err.print(e.lines());
      return ExitCode.USAGE;
    } catch (OutOfMemoryError e) {
      err.print("rimefast: out of memory; allow more with java -Xmx4g -jar rimefast.jar ...\n");
      return ExitCode.OUR_FAULT;
    } catch (RuntimeException | Error e) {
      boolean trace = words.contains("--debug") || surroundings.has("RIMEFAST_DEBUG");
      err.print(OwnFault.lines(e, trace));
      return ExitCode.OUR_FAULT;
    }
  }

  private int command(List<String> words) throws UsageProblem {
    if (words.isEmpty()) {
      err.print(Commands.help(Commands.root()));
      return ExitCode.USAGE;
    }
    List<String> rest = words.subList(1, words.size());
    return switch (words.get(0)) {
      case CHECK -> check(rest);
      case CASES -> cases(rest);
      case COST -> cost(rest);
      case DOCUMENT -> document(rest);
      case EXPLAIN -> explain(rest);
      case FORMAT -> format(rest);
      case LANGUAGE_SERVER -> languageServer(rest);
      case PIN -> pin(rest);
      case STANDARDS -> standards(rest);
      case "--help" -> print(Commands.help(Commands.root()));
      case "--version" -> print(Checker.ENGINE + "\n");
      default -> throw unknown(words.get(0));
    };
  }

  private int check(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.check()));
    }
    Optional<CommandLineWords> plain =
        CommandLineWords.plain("rimefast check", Option.CHECK, words);
    CommandLineWords parsed =
        plain.isPresent() ? plain.get() : Commands.parse(Commands.check(), words);
    CheckArguments arguments = CheckArguments.of(parsed, checks.stages());
    return new CheckCommand(arguments, checks, surroundings, out, err).run();
  }

  private int cost(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.cost()));
    }
    CommandLineWords parsed = Commands.parse(Commands.cost(), words);
    return new CostCommand(parsed, checks, surroundings, out, err).run();
  }

  private int format(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.format()));
    }
    Optional<CommandLineWords> plain =
        CommandLineWords.plain("rimefast format", Option.FORMAT, words);
    CommandLineWords parsed =
        plain.isPresent() ? plain.get() : Commands.parse(Commands.format(), words);
    return new FormatCommand(parsed, checks, surroundings, out, err).run();
  }

  private int cases(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.cases()));
    }
    Optional<CommandLineWords> plain =
        CommandLineWords.plain("rimefast cases", Option.CASES, words);
    CommandLineWords parsed =
        plain.isPresent() ? plain.get() : Commands.parse(Commands.cases(), words);
    return new CasesCommand(parsed, checks, surroundings, out, err).run();
  }

  private int document(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.document()));
    }
    CommandLineWords parsed = Commands.parse(Commands.document(), words);
    return new DocumentCommand(parsed, checks, surroundings, out, err).run();
  }

  private int explain(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.explain()));
    }
    CommandLineWords parsed = Commands.parse(Commands.explain(), words);
    return new ExplainCommand(parsed, checks, surroundings, out, err).run();
  }

  private int pin(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.pin()));
    }
    CommandLineWords parsed = Commands.parse(Commands.pin(), words);
    return new PinCommand(parsed, checks, surroundings, out, err).run();
  }

  private int standards(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.standards()));
    }
    Commands.parse(Commands.standards(), words);
    return new StandardsCommand(checks, out).run();
  }

  private int languageServer(List<String> words) throws UsageProblem {
    if (words.contains("--help")) {
      return print(Commands.help(Commands.languageServer()));
    }
    Commands.parse(Commands.languageServer(), words);
    return LanguageServerCommand.run(surroundings);
  }

  private int print(String text) {
    out.print(text);
    return ExitCode.SOUND;
  }

  private static UsageProblem unknown(String word) {
    List<String> known =
        List.of(
            CHECK,
            CASES,
            COST,
            DOCUMENT,
            EXPLAIN,
            FORMAT,
            LANGUAGE_SERVER,
            PIN,
            STANDARDS,
            "--help",
            "--version");
    String what = word.startsWith("-") ? "option " + word : "command \"" + word + "\"";
    return new UsageProblem(NAME, "there is no " + what + NearestNames.ending(word, known));
  }
}
