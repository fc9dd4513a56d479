package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.units.QuantityParser;

/** Keeps what could have stood at the furthest place that any reading reached. */
final class Misses {
  private static final int SHOWN = 6;

  private final List<Phrase.Item> items;
  private final Dictionary dictionary;
  private final ReadingObserver observer;
  private final List<Supplier<Collection<String>>> expected = new ArrayList<>();
  private int furthest = -1;

  Misses(Phrase phrase, Dictionary dictionary, ReadingObserver observer) {
    this.items = phrase.items();
    this.dictionary = dictionary;
    this.observer = observer;
  }

  void at(int place, Supplier<Collection<String>> words) {
    at(place, words, words);
  }

  /**
   * The same, where more than a message needs can be said.
   *
   * @param whole the words, each gone on with as far as is certain
   */
  void at(int place, Supplier<Collection<String>> words, Supplier<Collection<String>> whole) {
    if (place < items.size() && observer.asksAbout(items.get(place).span())) {
      observer.expected(whole.get());
    }
    if (place > furthest) {
      furthest = place;
      expected.clear();
    }
    if (place == furthest) {
      expected.add(words);
    }
  }

  /** Says that a reading was good up to here, so that what follows is what does not fit. */
  void endedAt(int place) {
    if (place > furthest) {
      furthest = place;
      expected.clear();
    }
  }

  Diagnostic diagnostic() {
    Set<String> words = new LinkedHashSet<>();
    expected.forEach(supplier -> words.addAll(supplier.get()));
    if (furthest >= items.size()) {
      Span last = items.get(items.size() - 1).span();
      return Problems.error(
          DiagnosticCode.UNFINISHED_PHRASE,
          new Span(last.end(), last.end()),
          "Something is missing after " + English.quoted(text(items.size() - 1)) + ".",
          list(words, false));
    }
    int place = Math.max(furthest, 0);
    Phrase.Item item = items.get(place);
    if (item instanceof Phrase.WordItem word) {
      return unknown(word, place, words);
    }
    if (place > 0 && (item instanceof Phrase.GroupItem || item instanceof Phrase.ConditionalItem)) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_WORD,
          item.span(),
          "These parentheses do not belong to what stands before them.",
          "After a noun they begin with \"where\": a stud (where depth > 2 in).");
    }
    if (place > 0 && item instanceof Phrase.QuantityItem quantity && text(place - 1).equals("of")) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_WORD,
          item.span(),
          English.sentence(quantity.quantity().text()) + " cannot stand here.",
          "Write \"= "
              + quantity.quantity().text()
              + "\" or \"of at least "
              + quantity.quantity().text()
              + "\".");
    }
    Optional<Diagnostic> fraction = spacedFraction(place);
    if (fraction.isPresent()) {
      return fraction.get();
    }
    return Problems.error(
        DiagnosticCode.UNKNOWN_WORD,
        item.span(),
        English.sentence(English.shortened(text(place))) + " cannot stand here.",
        list(words, true));
  }

  /** {@code 1 5/8 in}, which the reader of quantities knows how to put right. */
  private Optional<Diagnostic> spacedFraction(int place) {
    if (place > 0
        && items.get(place - 1) instanceof Phrase.QuantityItem whole
        && whole.quantity().unit().symbol().isEmpty()
        && items.get(place) instanceof Phrase.QuantityItem fraction
        && QuantityParser.parse(whole.quantity().text() + " " + fraction.quantity().text())
            instanceof QuantityParser.Parsed.Problem problem) {
      return Optional.of(
          Problems.error(
              DiagnosticCode.BAD_NUMBER,
              whole.span().to(fraction.span()),
              problem.message(),
              problem.help()));
    }
    return Optional.empty();
  }

  private Diagnostic unknown(Phrase.WordItem word, int place, Collection<String> words) {
    if (place > 0
        && items.get(place - 1) instanceof Phrase.QuantityItem number
        && number.quantity().unit().symbol().isEmpty()
        && !dictionary.knows(word.text())
        && QuantityParser.parse(number.quantity().text() + " " + word.text())
            instanceof QuantityParser.Parsed.Problem problem
        && !words.stream().anyMatch(w -> Nearest.to(word.text(), List.of(w)).size() == 1)) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_UNIT, word.span(), problem.message(), problem.help());
    }
    String slip = words.contains(word.text()) ? null : CommonSlips.help(word.text());
    List<String> near = slip == null ? nearest(place, words) : List.of();
    String headline =
        dictionary.knows(word.text()) || isSmall(word.text())
            ? English.quoted(English.shortened(word.text())) + " cannot stand here."
            : "The word "
                + English.quoted(English.shortened(word.text()))
                + " is not in the vocabulary here.";
    if (slip != null) {
      return Problems.error(DiagnosticCode.UNKNOWN_WORD, word.span(), headline, slip);
    }
    boolean article = word.text().equals("a") || word.text().equals("an");
    if (article && near.isEmpty()) {
      return Problems.fixable(
          DiagnosticCode.UNKNOWN_WORD,
          word.span(),
          headline,
          "Leave it out: \"a\" stands before an element, not before a value.",
          word.span(),
          "");
    }
    if (near.isEmpty()) {
      return Problems.error(
          DiagnosticCode.UNKNOWN_WORD, word.span(), headline, list(words, isValue(word)));
    }
    Span span = span(place, near.get(0));
    return Problems.fixable(
        DiagnosticCode.UNKNOWN_WORD,
        span,
        headline,
        "Did you mean " + English.either(near.stream().map(English::quoted).toList(), 3) + "?",
        span,
        near.get(0));
  }

  private static boolean isSmall(String word) {
    return List.of(
            "a", "an", "the", "it", "its", "of", "in", "on", "to", "each", "every", "some", "no",
            "another", "other", "by", "at", "more", "less")
        .contains(word);
  }

  /** Compares each expected phrase with as many words as it has. */
  private List<String> nearest(int place, Collection<String> words) {
    Set<String> near = new LinkedHashSet<>();
    int longest = words.stream().mapToInt(Misses::length).max().orElse(0);
    for (int length = 1; length <= Math.min(longest, 6); length++) {
      int count = length;
      List<String> same = words.stream().filter(w -> length(w) == count).toList();
      if (place + length <= items.size() && !same.isEmpty()) {
        near.addAll(Nearest.to(text(place, length), same));
      }
    }
    return near.stream().limit(3).toList();
  }

  private Span span(int place, String near) {
    int last = Math.min(place + length(near), items.size()) - 1;
    return items.get(place).span().to(items.get(last).span());
  }

  private static int length(String words) {
    return words.split(" ").length;
  }

  private String text(int place, int length) {
    List<String> texts = new ArrayList<>();
    for (int i = place; i < place + length; i++) {
      texts.add(text(i));
    }
    return String.join(" ", texts);
  }

  private String text(int place) {
    Phrase.Item item = items.get(place);
    if (item instanceof Phrase.WordItem word) {
      return word.text();
    }
    if (item instanceof Phrase.QuantityItem quantity) {
      return quantity.quantity().text();
    }
    if (item instanceof Phrase.BoundItem bound) {
      return bound.bound().words();
    }
    if (item instanceof Phrase.TextItem text) {
      return "\"" + text.text() + "\"";
    }
    return "(...)";
  }

  private boolean isValue(Phrase.WordItem word) {
    return dictionary.choiceWords().stream()
        .anyMatch(choice -> choice.equals(word.text()) || choice.startsWith(word.text() + " "));
  }

  private String list(Collection<String> words, boolean value) {
    if (words.isEmpty()) {
      return value ? "Before a value comes a sign, such as = or >=." : "Take it out.";
    }
    return "Here can stand: " + English.either(words, SHOWN) + ".";
  }
}
