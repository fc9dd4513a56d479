package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;

/** A vocabulary, indexed by first words. Immutable. */
public final class Dictionary {
  /** A word of the vocabulary and its pattern in parts; {@code _} marks a slot. */
  record Entry<T>(List<String> parts, T word) {}

  /** Entries by their first part. */
  static final class Table<T> {
    private final Map<String, List<Entry<T>>> byFirst = new HashMap<>();

    void add(String pattern, T word) {
      List<String> parts = List.of(pattern.strip().split("\\s+"));
      byFirst
          .computeIfAbsent(parts.get(0), first -> new ArrayList<>())
          .add(new Entry<>(parts, word));
    }

    List<Entry<T>> startingWith(String first) {
      return byFirst.getOrDefault(first, List.of());
    }
  }

  private final Vocabulary vocabulary;
  private final Table<Noun> singulars = new Table<>();
  private final Table<Noun> plurals = new Table<>();
  private final Table<Link> links = new Table<>();
  private final Table<Property> properties = new Table<>();
  private final Table<Relation> bases = new Table<>();
  private final Table<Relation> thirds = new Table<>();
  private final Table<Relation> states = new Table<>();
  private final Table<Stretch> stretches = new Table<>();
  private final Set<String> words = new HashSet<>();
  private final Set<String> phrases = new HashSet<>();
  private final Set<String> choices = new HashSet<>();

  /**
   * An index of a vocabulary.
   *
   * @throws IllegalArgumentException if a phrase holds a word that the language keeps for itself
   */
  public Dictionary(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    for (Noun noun : vocabulary.nouns()) {
      singulars.add(noun.singular(), noun);
      plurals.add(noun.plural(), noun);
      know(noun.singular());
      know(noun.plural());
    }
    for (Link link : vocabulary.links()) {
      links.add(link.phrase(), link);
      know(link.phrase());
    }
    for (Property property : vocabulary.properties()) {
      properties.add(property.pattern(), property);
      know(property.pattern());
      learn(property.type());
    }
    for (Relation relation : vocabulary.relations()) {
      if (relation.form() == Relation.Form.BE) {
        states.add(relation.pattern(), relation);
      } else {
        bases.add(relation.pattern(), relation);
        thirds.add(relation.third(), relation);
        know(relation.third(), true);
      }
      know(relation.pattern(), relation.form() == Relation.Form.VERB);
      relation.slots().stream()
          .filter(Slot.Of.class::isInstance)
          .forEach(slot -> learn(((Slot.Of) slot).type()));
    }
    for (Stretch stretch : vocabulary.stretches()) {
      stretches.add(stretch.pattern(), stretch);
      Reserved.checkStretch(stretch.pattern());
      words.addAll(List.of(stretch.pattern().split("\\s+")));
    }
  }

  private void know(String pattern) {
    know(pattern, false);
  }

  private void know(String pattern, boolean verb) {
    Reserved.check(pattern, verb);
    phrases.add(pattern);
    words.addAll(List.of(pattern.split("\\s+")));
  }

  private void learn(ValueType type) {
    if (type instanceof ValueType.Choice choice) {
      for (String word : choice.words()) {
        Reserved.check(word, false);
        choices.add(word);
        words.addAll(List.of(word.split("\\s+")));
      }
    }
  }

  /** The vocabulary. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** True if the word is part of any phrase of the vocabulary. */
  public boolean knows(String word) {
    return words.contains(word);
  }

  /** True if a noun, property, link or relation is called so. */
  public boolean hasPhrase(String phrase) {
    return phrases.contains(phrase) || choices.contains(phrase);
  }

  /** True if some element can be of both kinds. */
  boolean overlap(Noun a, Noun b) {
    return vocabulary.nouns().stream().anyMatch(noun -> noun.isA(a) && noun.isA(b));
  }

  /** Every word of every list. */
  public Set<String> choiceWords() {
    return choices;
  }

  Table<Noun> singulars() {
    return singulars;
  }

  Table<Noun> plurals() {
    return plurals;
  }

  Table<Link> links() {
    return links;
  }

  Table<Property> properties() {
    return properties;
  }

  Table<Relation> bases() {
    return bases;
  }

  Table<Relation> thirds() {
    return thirds;
  }

  Table<Relation> states() {
    return states;
  }

  Table<Stretch> stretches() {
    return stretches;
  }
}
