package org.rimefast.lang.internal.complete;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Rule;

/**
 * What kind of text it is, and which rules it can speak of.
 *
 * @param file what the text is
 * @param standard the name of its standard; may be empty
 * @param rules the ids of all rules of the standard
 * @param base the rules of the standard that it builds on
 */
public record Setting(File file, String standard, List<String> rules, List<Rule> base) {
  /** What a text is. */
  public enum File {
    /** A standard's own file. */
    STANDARD,
    /** A file that a standard includes. */
    INCLUDED,
    CASES,
    WAIVERS
  }

  /** Copies the lists. */
  public Setting {
    rules = List.copyOf(rules);
    base = List.copyOf(base);
  }

  /** The same for another file. */
  public Setting of(File other) {
    return new Setting(other, standard, rules, base);
  }

  /** The words that statements of such a text begin with. */
  List<String> beginnings(boolean isNamed) {
    return switch (file) {
      case CASES -> List.of("case", "cases for");
      case WAIVERS -> List.of("waive", "waivers for");
      case STANDARD, INCLUDED -> {
        boolean named = isNamed || file == File.INCLUDED;
        List<String> own = List.of("let", "table", "rule", "inspect", "case", "include");
        List<String> first = named ? List.of() : List.of("standard", "cases for", "waivers for");
        List<String> amending = base.isEmpty() ? List.of() : List.of("in rule", "withdraw");
        yield List.of(first, own, amending).stream().flatMap(List::stream).toList();
      }
    };
  }

  /** A rule of the standard that it builds on. */
  Optional<Rule> ofBase(String id) {
    return base.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }
}
