package org.rimefast.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rimefast.check.CheckOptions;
import org.rimefast.lang.rule.Severity;

/**
 * What {@code rimefast check} was asked for.
 *
 * @param plans files, or {@code -} for standard input
 * @param standard a shipped name or a file
 * @param waivers files of waivers
 * @param options stage, date and threads
 * @param json whether programs read the report
 * @param least the least grave severity that makes the command fail
 * @param strict whether undecided makes it fail
 */
record CheckArguments(
    List<String> plans,
    String standard,
    List<String> waivers,
    CheckOptions options,
    boolean json,
    Severity least,
    boolean strict) {
  private static final int MOST_THREADS = 1024;

  /** Reads the values of options; the stages are those that the rules know. */
  static CheckArguments of(CommandLineWords words, List<String> stages) throws UsageProblem {
    List<String> plans = words.parameters();
    if (plans.isEmpty()) {
      throw words.problem("no plan is named; name one or more plan files, or - to read one.");
    }
    if (plans.indexOf("-") != plans.lastIndexOf("-")) {
      throw words.problem("standard input can be read only once, but - stands there twice.");
    }
    String standard = words.value("--standard").orElse("");
    if (standard.isBlank()) {
      throw words.problem(
          "no standard is named; give --standard and a name or file. The command \"rimefast"
              + " standards\" lists the shipped names.");
    }
    List<String> waivers = words.all("--waivers");
    Optional<LocalDate> date = date(words);
    if (!waivers.isEmpty() && date.isEmpty()) {
      throw words.problem(
          "--waivers needs --as-of and the date that counts as today, because waivers hold for a"
              + " time only.");
    }
    if (waivers.stream().distinct().count() < waivers.size()) {
      throw words.problem("--waivers names the same file twice.");
    }
    Optional<String> stage = Optional.empty();
    if (words.value("--stage").isPresent()) {
      stage = Optional.of(word(words, "--stage", "", stages));
    }
    Severity least =
        Severity.valueOf(word(words, "--fail-on", "fix", severities()).toUpperCase(Locale.ROOT));
    boolean json = word(words, "--format", "text", List.of("text", "json")).equals("json");
    return new CheckArguments(
        plans,
        standard,
        waivers,
        new CheckOptions(stage, date, threads(words)),
        json,
        least,
        words.has("--strict"));
  }

  private static List<String> severities() {
    List<String> words = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      words.add(severity.word());
    }
    return words;
  }

  private static String word(
      CommandLineWords words, String option, String otherwise, List<String> known)
      throws UsageProblem {
    String written = words.value(option).orElse(otherwise);
    if (!known.contains(written)) {
      throw words.problem(
          option
              + " is one of "
              + String.join(", ", known)
              + ", not \""
              + written
              + "\""
              + NearestNames.ending(written, known));
    }
    return written;
  }

  private static Optional<LocalDate> date(CommandLineWords words) throws UsageProblem {
    Optional<String> written = words.value("--as-of");
    if (written.isEmpty()) {
      return Optional.empty();
    }
    String text = written.get();
    try {
      if (isIsoDate(text)) {
        return Optional.of(
            LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10)));
      }
    } catch (DateTimeException e) {
      throw words.problem("--as-of: there is no day " + text + ".");
    }
    throw words.problem(
        "--as-of is a date such as 2026-11-25 (year-month-day), not \"" + text + "\".");
  }

  private static boolean isIsoDate(String text) {
    if (text.length() != 10) {
      return false;
    }
    for (int i = 0; i < 10; i++) {
      boolean hyphen = i == 4 || i == 7;
      if (hyphen ? text.charAt(i) != '-' : !isDigit(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static int threads(CommandLineWords words) throws UsageProblem {
    String text = words.value("--threads").orElse("1");
    boolean digits = !text.isEmpty() && text.length() <= 4;
    for (int i = 0; i < text.length(); i++) {
      digits &= isDigit(text.charAt(i));
    }
    int threads = digits ? number(text, 0, text.length()) : 0;
    if (threads < 1 || threads > MOST_THREADS) {
      throw words.problem(
          "--threads is a number from 1 to " + MOST_THREADS + ", not \"" + text + "\".");
    }
    return threads;
  }

  private static int number(String text, int start, int end) {
    return Integer.parseInt(text, start, end, 10);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
