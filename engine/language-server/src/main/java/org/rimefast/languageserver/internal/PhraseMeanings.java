package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;

/** The phrases of a vocabulary, and what each of them can stand for. */
final class PhraseMeanings {
  private final Vocabulary vocabulary;
  private final Map<String, List<Meaning>> byPhrase = new HashMap<>();

  PhraseMeanings(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    for (Noun noun : vocabulary.nouns()) {
      add(noun.singular(), new Meaning.OfNoun(noun));
      add(noun.plural(), new Meaning.OfNoun(noun));
    }
    for (Property property : vocabulary.properties()) {
      add(beforeSlot(property.pattern()), new Meaning.OfProperty(property));
      choice(property.type());
    }
    vocabulary.stretches().forEach(s -> add(beforeSlot(s.pattern()), new Meaning.OfStretch(s)));
    vocabulary.links().forEach(link -> add(link.phrase(), new Meaning.OfLink(link)));
    for (Relation relation : vocabulary.relations()) {
      add(beforeSlot(relation.pattern()), new Meaning.OfRelation(relation));
      add(beforeSlot(relation.third()), new Meaning.OfRelation(relation));
      for (Slot slot : relation.slots()) {
        if (slot instanceof Slot.Of value) {
          choice(value.type());
        }
      }
    }
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }

  /** What a phrase can stand for; for {@code pitch of its face}, what {@code pitch} can. */
  List<Meaning> of(String phrase) {
    int of = phrase.indexOf(" of ");
    List<Meaning> whole = byPhrase.getOrDefault(phrase, List.of());
    return !whole.isEmpty() || of < 0
        ? whole
        : byPhrase.getOrDefault(phrase.substring(0, of), List.of());
  }

  /** What a name of the standard stands for. */
  static List<Meaning> named(String name, Analysis analysis) {
    List<Meaning> found = new ArrayList<>();
    analysis.constants().stream()
        .filter(constant -> constant.name().equals(name))
        .forEach(constant -> found.add(new Meaning.OfConstant(constant)));
    analysis.terms().stream()
        .filter(term -> term.singular().equals(name) || term.plural().equals(name))
        .forEach(term -> found.add(new Meaning.OfTerm(term)));
    return found;
  }

  private void choice(ValueType type) {
    if (type instanceof ValueType.Choice list) {
      list.words().forEach(word -> add(word, new Meaning.OfChoice(word, list)));
    }
  }

  private void add(String phrase, Meaning meaning) {
    byPhrase.computeIfAbsent(phrase, key -> new ArrayList<>()).add(meaning);
  }

  private static String beforeSlot(String pattern) {
    int slot = pattern.indexOf('_');
    return slot < 0 ? pattern : pattern.substring(0, slot).strip();
  }
}
