package org.rimefast.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A command line, taken apart.
 *
 * @param command whose words they are: {@code rimefast check}
 * @param values the options that stand there, by name, each with its values in order; the value of
 *     one without value is empty
 * @param parameters the words that belong to no option
 */
record CommandLineWords(String command, Map<String, List<String>> values, List<String> parameters) {

  /** Copies. */
  CommandLineWords {
    Map<String, List<String>> copies = new HashMap<>();
    values.forEach((name, all) -> copies.put(name, List.copyOf(all)));
    values = Map.copyOf(copies);
    parameters = List.copyOf(parameters);
  }

  /**
   * Takes words apart that are plainly right: known options, each with its value and once or as
   * often as it may stand there, and other words. Empty for all else, which {@link Commands#parse}
   * knows how to judge. It is there because the library behind that costs as much time at a cold
   * start as the whole check.
   */
  static Optional<CommandLineWords> plain(
      String command, List<Option> options, List<String> words) {
    Map<String, List<String>> values = new HashMap<>();
    List<String> parameters = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (!word.startsWith("-") || word.equals("-")) {
        parameters.add(word);
        continue;
      }
      int equals = word.indexOf('=');
      String name = equals < 0 ? word : word.substring(0, equals);
      Option option = find(options, name);
      if (option == null || (equals >= 0 && !option.takesValue())) {
        return Optional.empty();
      }
      String value = "";
      if (option.takesValue()) {
        value = equals < 0 ? after(words, ++i) : word.substring(equals + 1);
        if (value.isEmpty() || value.startsWith("-")) {
          return Optional.empty();
        }
      }
      List<String> all = values.computeIfAbsent(name, key -> new ArrayList<>());
      if (!all.isEmpty() && !option.repeats()) {
        return Optional.empty();
      }
      all.add(value);
    }
    return Optional.of(new CommandLineWords(command, values, parameters));
  }

  private static String after(List<String> words, int index) {
    return index < words.size() ? words.get(index) : "";
  }

  private static @Nullable Option find(List<Option> options, String name) {
    for (Option option : options) {
      if (option.name().equals(name)) {
        return option;
      }
    }
    return null;
  }

  /** The value of an option that stands there. */
  Optional<String> value(String option) {
    return all(option).stream().findFirst();
  }

  /** The values of an option that may stand there several times, in order. */
  List<String> all(String option) {
    return values.getOrDefault(option, List.of());
  }

  /** True if an option stands there. */
  boolean has(String option) {
    return values.containsKey(option);
  }

  /** A problem of this command line. */
  UsageProblem problem(String message) {
    return new UsageProblem(command, message);
  }
}
